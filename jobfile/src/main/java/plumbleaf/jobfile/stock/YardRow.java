package plumbleaf.jobfile.stock;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.takeoff.NetUnit;

/**
 * A row of the yard's file.
 *
 * @param mark what is written on it; with a job that took it, the mark of where it came from
 * @param kind bar, offcut or goods
 * @param length of a bar; zero for goods
 * @param contents what one of the goods holds, in {@code of}
 * @param state whether it is here for any job, kept here for one, or out with one
 * @param job that took it, that it came for, or that left it; nobody for what was counted in
 * @param neededBy the day the job needs it by, as files write days; empty where none is known
 */
public record YardRow(
        String mark,
        String item,
        Kind kind,
        Length length,
        int count,
        double contents,
        NetUnit of,
        State state,
        Taker job,
        String neededBy) {
    /** One thing and its length or contents: what makes two rows the same goods. */
    private boolean isSameGoods(YardRow other) {
        return item.equals(other.item)
                && kind == other.kind
                && length.equals(other.length)
                && Double.compare(contents, other.contents) == 0
                && of == other.of;
    }

    /** What it is. */
    public enum Kind {
        BAR("bar"),
        OFFCUT("offcut"),
        GOODS("goods");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /** Where it is, and for whom. */
    public enum State {
        HERE("here"),
        /** Here, and for one job alone. */
        KEPT("kept"),
        OUT("out");

        private final String key;

        State(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /** Bars or goods that came for a job and wait for it. */
    static YardRow kept(String mark, Delivered came, Taker job) {
        return new YardRow(
                mark,
                came.item(),
                came.bar() ? Kind.BAR : Kind.GOODS,
                came.length(),
                came.count(),
                came.contents(),
                came.of(),
                State.KEPT,
                job,
                came.neededBy());
    }

    YardRow with(int newCount) {
        return new YardRow(mark, item, kind, length, newCount, contents, of, state, job, neededBy);
    }

    YardRow outWith(Taker byJob, int some) {
        return new YardRow(mark, item, kind, length, some, contents, of, State.OUT, byJob, "");
    }

    /** Some of it free for any job, under a mark of its own, as left by the job that had it. */
    YardRow leftAs(String newMark, Taker byJob, int some) {
        return new YardRow(newMark, item, kind, length, some, contents, of, State.HERE, byJob, "");
    }

    /** Whether it is the same goods, in the same state, of the same job. */
    boolean isLike(YardRow other) {
        return state == other.state && job.is(other.job) && isSameGoods(other);
    }

    public boolean isHere() {
        return state == State.HERE;
    }

    public boolean isKept() {
        return state == State.KEPT;
    }

    public boolean isOut() {
        return state == State.OUT;
    }
}
