package plumbleaf.browser.pattern;

/**
 * The steps that a pattern is made of, each a {@code char}, with what it works on after it. Ways on are counted from the end of the step, so that a piece of a pattern may be
 * repeated as it is.
 */
final class Step {
    /** This character: {@code c}. */
    static final char IS = 0;

    /** One of a set, by its number. */
    static final char AMONG = 1;

    /** None of a set, by its number. */
    static final char BESIDE = 2;

    /** One of the three above again and again: at least, at most, whether the fewest are tried first. */
    static final char REPEAT = 3;

    /** What follows, else so much further on. */
    static final char EITHER = 4;

    /** So much further on, else what follows. */
    static final char LATER = 5;

    static final char GO = 6;

    /** Here a group begins or ends. */
    static final char MARK = 7;

    /** Whether what follows lies here: how far back it begins, whether it should, its length. */
    static final char LOOK = 8;

    /** The end of what is only looked at. */
    static final char SEEN = 9;

    /** The end of the text, or of its last line before the break that ends it. */
    static final char LAST = 10;

    /** Where a word begins or ends. */
    static final char EDGE = 11;

    static final char DONE = 12;

    /** At most: any number. */
    static final char ANY_NUMBER = 0xFFFF;

    private Step() {}
}
