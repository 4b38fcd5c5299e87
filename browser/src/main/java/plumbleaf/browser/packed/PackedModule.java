package plumbleaf.browser.packed;

import java.util.Arrays;

/**
 * A module packed for our own pages, a third smaller than by Brotli, which knows nothing of WebAssembly: each part of an instruction is told by how likely it is after what came
 * before, and what follows from the rest is not told. Both ways by the same steps: while it is packed, what comes next is there and told to the odds; while it is unpacked, they tell it.
 */
public final class PackedModule {
    public static final int SECTIONS = 14;
    static final int TYPES = 1;
    static final int IMPORTS = 2;
    static final int GLOBALS = 6;
    static final int CODE = 10;
    static final int WORDS = 11;

    /** Sections that are short and told as they are: imports, tables, tags, exports, start, and ours. */
    private static final int[] SHORT = {IMPORTS, 4, 13, 7, 8, 0};

    /** The others, but those that follow from them. */
    private static final int[] LONG = {TYPES, GLOBALS, CODE, WORDS};

    /** What comes next is looked at before it is known to be there. */
    private static final int PAST = 16;

    private final Odds odds;
    private final byte[][] sections;

    private PackedModule(Odds odds, byte[][] sections) {
        this.odds = odds;
        this.sections = sections;
    }

    /**
     * @param sections what each of the module's sections holds; empty ones where it is unpacked, full ones afterwards
     * @return the types of all functions
     */
    public static int[] tell(Odds odds, byte[][] sections, Bodies bodies) {
        return new PackedModule(odds, sections).tell(bodies);
    }

    /**
     * The module's size, which is told first.
     *
     * @param size any number while it is unpacked
     */
    public static int tellSize(Odds odds, int size) {
        return odds.number(Part.COUNT, size, 0, 0);
    }

    private int[] tell(Bodies bodies) {
        for (int section : SHORT) {
            room(section);
            plain(sections[section]);
        }
        for (int section : LONG) room(section);
        PackedTypes types = new PackedTypes(new ModuleBytes(sections[TYPES], 0), odds);
        types.tell();
        ModuleBytes code = new ModuleBytes(sections[CODE], 0);
        bodies.stand(code);
        int[] functionTypes =
                new PackedCode(odds, types, Imports.of(sections[IMPORTS]), bodies, code, sections[GLOBALS]).tell();
        for (int section : LONG) sections[section] = Arrays.copyOf(sections[section], sections[section].length - PAST);
        PackedWords.tell(sections[WORDS], odds);
        return functionTypes;
    }

    private void room(int section) {
        int size = odds.number(Part.COUNT, sections[section].length, 0, 0);
        boolean isLong = section == TYPES || section == GLOBALS || section == CODE || section == WORDS;
        sections[section] = Arrays.copyOf(sections[section], size + (isLong ? PAST : 0));
    }

    private void plain(byte[] section) {
        int last = 0;
        int before = 0;
        for (int i = 0; i < section.length; i++) {
            odds.context(Part.OCTET, last);
            odds.context(Part.OCTET, last, before);
            odds.context(Part.OCTET, 9, 9, 9);
            before = last;
            last = odds.octet(Part.OCTET, section[i] & 255);
            section[i] = (byte) last;
        }
    }
}
