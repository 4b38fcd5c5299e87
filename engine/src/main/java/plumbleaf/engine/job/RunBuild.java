package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** What is pinned of a run's build: section of its line posts, hole and depth. */
public record RunBuild(String run, Stated<String> post, Stated<Length> hole, Stated<Length> depth) {
    public RunBuild withPost(String section) {
        return new RunBuild(run, Stated.of(section), hole, depth);
    }

    public RunBuild withHole(Length diameter) {
        return new RunBuild(run, post, Stated.of(diameter), depth);
    }

    public RunBuild withDepth(Length deep) {
        return new RunBuild(run, post, hole, Stated.of(deep));
    }

    public static RunBuild open(String run) {
        return new RunBuild(run, Stated.open(), Stated.open(), Stated.open());
    }
}
