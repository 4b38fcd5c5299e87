/**
 * How long things take and how much room they need. Knows everything the program is made of, and is known by nobody; the tests never ask it for a time.
 *
 * <p>Reading order: {@link plumbleaf.benchmarks.Yards} (what is worked on), {@link plumbleaf.benchmarks.EngineBenchmark},
 * {@link plumbleaf.benchmarks.CutBenchmark}, {@link plumbleaf.benchmarks.PaperBenchmark} (inside one process), {@code plumbleaf.benchmarks.Measure} (all of it,
 * with whole processes and the general solvers, written as a page).
 */
@NullMarked
package plumbleaf.benchmarks;

import org.jspecify.annotations.NullMarked;
