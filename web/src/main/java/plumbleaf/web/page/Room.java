package plumbleaf.web.page;

import java.util.Locale;
import java.util.Optional;

/** The rooms of one job. The eighth, the desk, is where the jobs lie. */
public enum Room {
    GROUND("Ground", "measuring"),
    LINE("Line", "how-it-decides#2-line"),
    GATES("Gates", "how-it-decides#3-swing"),
    STRENGTH("Strength", "how-it-decides#7-strength"),
    STOCK("Stock", "how-it-decides#9-cut-plans"),
    MONEY("Money", "money"),
    PAPERS("Papers", "papers");

    private final String word;
    private final String chapter;

    Room(String word, String chapter) {
        this.word = word;
        this.chapter = chapter;
    }

    /** Where the guide tells of what this room does. */
    public String chapter() {
        return chapter;
    }

    /** As people read it. */
    public String word() {
        return word;
    }

    /** As an address has it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Room> of(String key) {
        for (Room room : values()) if (room.key().equals(key)) return Optional.of(room);
        return Optional.empty();
    }
}
