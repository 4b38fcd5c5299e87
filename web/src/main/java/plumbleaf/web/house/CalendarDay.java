package plumbleaf.web.house;

import java.util.List;

/**
 * A day with what is done on it.
 *
 * @param notes what the day asks for: frost, a ticket, a notice that has to go out
 */
public record CalendarDay(String date, List<String> lines, List<String> notes) {
    public CalendarDay {
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
    }
}
