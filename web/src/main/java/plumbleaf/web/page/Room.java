package plumbleaf.web.page;

import java.util.Locale;
import java.util.Optional;

/** The rooms of one job. The eighth, the desk, is where the jobs lie. */
public enum Room {
    GROUND("Ground"),
    LINE("Line"),
    GATES("Gates"),
    STRENGTH("Strength"),
    STOCK("Stock"),
    MONEY("Money"),
    PAPERS("Papers");

    private final String word;

    Room(String word) {
        this.word = word;
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
