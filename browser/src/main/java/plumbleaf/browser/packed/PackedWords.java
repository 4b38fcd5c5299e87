package plumbleaf.browser.packed;

/** The module's words and tables: each letter is told by the six before it, by four, and by fewer. */
final class PackedWords {
    private PackedWords() {}

    /** @param words all of them; while it is unpacked, room for them */
    static void tell(byte[] words, Odds odds) {
        int four = 0;
        int fourBefore = 0;
        for (int i = 0; i < words.length; i++) {
            odds.context(Part.WORDS, four & 0xFF);
            odds.context(Part.WORDS, four & 0xFFFF);
            odds.context(Part.WORDS, four & 0xFFFFFF);
            odds.context(Part.WORDS, four);
            odds.context(Part.WORDS, four, fourBefore & 0xFFFF);
            int letter = odds.octet(Part.WORDS, words[i] & 0xFF);
            words[i] = (byte) letter;
            fourBefore = (fourBefore << 8) | (four >>> 24);
            four = (four << 8) | letter;
        }
    }
}
