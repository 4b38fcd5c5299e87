package plumbleaf.engine.quantity;

/** White space between words. */
final class Blanks {
    private static final String WHITE = " \t\n\013\f\r";

    private Blanks() {}

    /** Each stretch of white space as one blank; the text itself where it has no other. */
    static String single(String text) {
        StringBuilder single = new StringBuilder(text.length());
        boolean inside = false;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            boolean white = WHITE.indexOf(letter) >= 0;
            if (!white) single.append(letter);
            else if (!inside) single.append(' ');
            inside = white;
        }
        return single.toString();
    }
}
