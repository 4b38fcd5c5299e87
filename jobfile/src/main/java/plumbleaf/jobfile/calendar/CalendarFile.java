package plumbleaf.jobfile.calendar;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import plumbleaf.engine.schedule.Booking;

/**
 * Booked days as an iCalendar: one all-day event for each work or wait. Lines end in CR LF and are folded at 75 octets; the same bookings make the same bytes, so the
 * stamp is a day that is given. Source: RFC 5545, sections 3.1 (folding), 3.3.4 and 3.6.1 (all-day events, the end is the day after), 3.3.11 (escapes).
 */
public final class CalendarFile {
    private static final int LONGEST_LINE = 75;
    private static final String END = "\r\n";

    private CalendarFile() {}

    /**
     * @param dates days to keep, each an event of its own that keeps nobody busy
     * @param stamp the day this calendar was issued
     * @param notes words for an event beside its name; may be empty
     */
    public static String of(List<Booking> bookings, List<CalendarDate> dates, LocalDate stamp, List<String> notes) {
        StringBuilder out = new StringBuilder();
        line(out, "BEGIN:VCALENDAR");
        line(out, "VERSION:2.0");
        line(out, "PRODID:-//Plumbleaf//Work days//EN");
        line(out, "CALSCALE:GREGORIAN");
        int number = 0;
        for (Booking booking : bookings) {
            line(out, "BEGIN:VEVENT");
            line(out, "UID:" + uid(booking, ++number));
            line(out, "DTSTAMP:" + digits(stamp) + "T000000Z");
            line(out, "DTSTART;VALUE=DATE:" + digits(booking.first()));
            line(out, "DTEND;VALUE=DATE:" + digits(booking.last().plusDays(1)));
            line(out, "SUMMARY:" + escaped(booking.job() + ": " + booking.name() + hours(booking)));
            String words = booking.who().isEmpty() ? "" : booking.who() + ". ";
            if (!booking.machines().isEmpty()) words += "Takes " + String.join(", ", booking.machines()) + ". ";
            words += String.join(" ", booking.notes()) + (booking.notes().isEmpty() ? "" : " ");
            words += String.join(" ", notes);
            if (!words.isBlank()) line(out, "DESCRIPTION:" + escaped(words.strip()));
            line(out, "TRANSP:" + (booking.who().isEmpty() ? "TRANSPARENT" : "OPAQUE"));
            line(out, "END:VEVENT");
        }
        for (CalendarDate date : dates) {
            line(out, "BEGIN:VEVENT");
            line(out, "UID:" + slug(date.job()) + "-day-" + ++number + "@plumbleaf");
            line(out, "DTSTAMP:" + digits(stamp) + "T000000Z");
            line(out, "DTSTART;VALUE=DATE:" + digits(date.day()));
            line(out, "DTEND;VALUE=DATE:" + digits(date.day().plusDays(1)));
            line(out, "SUMMARY:" + escaped(date.job() + ": " + date.words()));
            line(out, "TRANSP:TRANSPARENT");
            line(out, "END:VEVENT");
        }
        line(out, "END:VCALENDAR");
        return out.toString();
    }

    /** Half days cannot be told by dates alone. */
    private static String hours(Booking booking) {
        if (booking.who().isEmpty()) return "";
        if (booking.first().equals(booking.last())) {
            if (booking.afternoon()) return " (afternoon)";
            return booking.untilNoon() ? " (morning)" : "";
        }
        String from = booking.afternoon() ? " (from noon" : "";
        String until = booking.untilNoon() ? "until noon of the last day" : "";
        if (from.isEmpty() && until.isEmpty()) return "";
        return from.isEmpty() ? " (" + until + ")" : from + (until.isEmpty() ? "" : ", " + until) + ")";
    }

    private static String uid(Booking booking, int number) {
        return slug(booking.job()) + "-" + booking.key() + "-" + number + "@plumbleaf";
    }

    private static String slug(String text) {
        StringBuilder id = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
            id.append(plain ? c : '-');
        }
        return id.toString();
    }

    private static String digits(LocalDate day) {
        return day.toString().replace("-", "");
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r", "")
                .replace("\n", "\\n");
    }

    /** Folds between characters, so that none is torn apart; a folded line goes on with a space, which counts. */
    private static void line(StringBuilder out, String text) {
        int octets = 0;
        for (int i = 0; i < text.length(); ) {
            int point = text.codePointAt(i);
            String character = Character.toString(point);
            int size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LONGEST_LINE) {
                out.append(END).append(' ');
                octets = 1;
            }
            out.append(character);
            octets += size;
            i += Character.charCount(point);
        }
        out.append(END);
    }
}
