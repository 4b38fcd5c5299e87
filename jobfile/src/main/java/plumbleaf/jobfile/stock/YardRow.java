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
 * @param state whether it is here, or out with a job
 * @param job that took it, or that left the offcut; nobody for what was counted in
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
        Taker job) {
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

    /** Where it is. */
    public enum State {
        HERE("here"),
        OUT("out");

        private final String key;

        State(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    YardRow with(int newCount) {
        return new YardRow(mark, item, kind, length, newCount, contents, of, state, job);
    }

    YardRow outWith(Taker byJob, int some) {
        return new YardRow(mark, item, kind, length, some, contents, of, State.OUT, byJob);
    }

    public boolean isHere() {
        return state == State.HERE;
    }
}
