package plumbleaf.engine.design;

/** Who waits for a search hears how far it is, and may give it up by throwing. */
public interface SearchTold {
    /** Nobody waits. */
    SearchTold NOBODY = (looked, lessDrop) -> {};

    /**
     * @param looked builds judged so far, of those in order of price
     * @param lessDrop builds measured so far for what less drop costs; none while the cheapest is still looked for
     */
    void looked(int looked, int lessDrop);
}
