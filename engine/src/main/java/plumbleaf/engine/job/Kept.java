package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** What a fence keeps in or out, and the gap under it that does so. Common practice, no source; where a child's safety hangs on it the rules of barriers govern. */
public enum Kept {
    POULTRY("poultry", "poultry", 1),
    SMALL_DOG("small-dog", "a small dog", 2),
    LARGE_DOG("large-dog", "a large dog", 4),
    CHILD("child", "a small child", 3.5),
    DEER("deer", "deer", 8),
    LIVESTOCK("livestock", "cattle or horses", 16);

    private final String key;
    private final String words;
    private final double gapIn;

    Kept(String key, String words, double gapIn) {
        this.key = key;
        this.words = words;
        this.gapIn = gapIn;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    /** As a sentence has it. */
    public String words() {
        return words;
    }

    /** The largest gap under the fence. */
    public Length gap() {
        return new Length(gapIn);
    }
}
