package plumbleaf.benchmarks;

import java.lang.management.ManagementFactory;

/** What this thread has had of a processor: on a machine that others use too it says more of the program than the clock on the wall. */
final class Clock {
    private static final double NANOS = 1e9;

    private Clock() {}

    /** Seconds of a processor since the thread began. */
    static double processorSeconds() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / NANOS;
    }
}
