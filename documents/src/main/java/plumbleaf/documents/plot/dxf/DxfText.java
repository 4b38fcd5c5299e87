package plumbleaf.documents.plot.dxf;

/** Lettering in the ASCII of the format: {@code %%c} for a diameter, {@code %%d} for a degree, {@code %%p} for plus or minus. */
final class DxfText {
    private DxfText() {}

    static String ascii(String text) {
        StringBuilder ascii = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) ascii.append(ascii(text.charAt(i)));
        return ascii.toString();
    }

    private static String ascii(char letter) {
        if (letter == '%') return "%%%";
        if (letter >= 0x20 && letter < 0x7f) return Character.toString(letter);
        return switch (letter) {
            case '\u2300', '\u00f8', '\u00d8' -> "%%c";
            case '\u00b0' -> "%%d";
            case '\u00b1' -> "%%p";
            case '\u2032', '\u2018', '\u2019' -> "'";
            case '\u2033', '\u201c', '\u201d' -> "\"";
            case '\u2013', '\u2014', '\u2212' -> "-";
            case '\u00d7' -> "x";
            case '\u00f7' -> "/";
            case '\u00b7', '\u2022' -> "*";
            case '\u2026' -> "...";
            case '\u00a0' -> " ";
            case '\u00bd' -> "1/2";
            case '\u00bc' -> "1/4";
            case '\u00be' -> "3/4";
            case '\u215b' -> "1/8";
            case '\u215c' -> "3/8";
            case '\u215d' -> "5/8";
            case '\u215e' -> "7/8";
            case '\u2264' -> "<=";
            case '\u2265' -> ">=";
            case '\u2192' -> "->";
            case '\u2190' -> "<-";
            case '\u2220' -> "angle ";
            case '\u2610', '\u2611' -> "[ ]";
            case '\u2713' -> "OK";
            case '\u00b2' -> "2";
            case '\u00b3' -> "3";
            default -> "?";
        };
    }
}
