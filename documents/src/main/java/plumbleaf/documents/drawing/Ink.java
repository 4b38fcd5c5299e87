package plumbleaf.documents.drawing;

import java.util.Locale;

/**
 * What a mark is drawn with: its colour on white paper, on the dark sheet, and as a colour number of a drawing program. Buried lines
 * take the uniform colour code of ANSI Z535.1 as used by APWA (from memory), always with their letter beside.
 */
public enum Ink {
    INK("#22282B", "#E9E6DF", 7),
    SECOND("#5B646A", "#A9B1B6", 8),
    HAIR("#B9B2A1", "#4A5358", 9),
    CHALK("#1F5FA8", "#7DB2EC", 5),
    CAUTION("#8A5A00", "#E3B04B", 30),
    MUST_FIX("#B3261E", "#F2867F", 1),
    PAPER("#FFFFFF", "#171B1D", 255),
    TINT_STEEL("#D5DADD", "#3A4347", 254),
    TINT_WOOD("#F1E7D3", "#3B342A", 254),
    TINT_SOIL("#F0EADC", "#2C2922", 254),
    TINT_CONCRETE("#E6E6E2", "#34383A", 254),
    TINT_GATE("#E3ECF6", "#223040", 254),
    TINT_BAND("#F4F1EA", "#20262A", 254),
    ELECTRIC("#C4141B", "#FF7B7B", 1),
    GAS("#8C7400", "#F4D94A", 2),
    COMMUNICATION("#C25700", "#FF9F4A", 30),
    WATER("#1252B8", "#7FB0FF", 5),
    RECLAIMED("#7A2BA0", "#CF9BEA", 6),
    SEWER("#14703A", "#6CCB91", 3);

    private final String onWhite;
    private final String onDark;
    private final int number;

    Ink(String onWhite, String onDark, int number) {
        this.onWhite = onWhite;
        this.onDark = onDark;
        this.number = number;
    }

    public String onWhite() {
        return onWhite;
    }

    public String onDark() {
        return onDark;
    }

    /** Colour number of the common drawing exchange format: 1 red ... 7 black or white. */
    public int number() {
        return number;
    }

    public int red() {
        return Integer.parseInt(onWhite.substring(1, 3), 16);
    }

    public int green() {
        return Integer.parseInt(onWhite.substring(3, 5), 16);
    }

    public int blue() {
        return Integer.parseInt(onWhite.substring(5, 7), 16);
    }

    /** As a style sheet names it: {@code must-fix}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
