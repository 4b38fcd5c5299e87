package plumbleaf.web.house;

import java.util.List;

/** A day with what is done on it. */
public record CalendarDay(String date, List<String> lines) {
    public CalendarDay {
        lines = List.copyOf(lines);
    }
}
