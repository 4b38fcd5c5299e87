package plumbleaf.launcher;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/** Ports of this machine. */
final class Port {
    static final int USUAL = 8147;

    private Port() {}

    /** The port asked for, or a free one where someone has it already. */
    static int freeFrom(int asked) {
        try (ServerSocket probe = new ServerSocket(asked, 1, InetAddress.getLoopbackAddress())) {
            return probe.getLocalPort();
        } catch (IOException taken) {
            return 0;
        }
    }
}
