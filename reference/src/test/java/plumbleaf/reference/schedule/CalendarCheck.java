package plumbleaf.reference.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.schedule.Booking;
import plumbleaf.jobfile.calendar.CalendarDate;
import plumbleaf.jobfile.calendar.CalendarFile;

/**
 * The calendar is read back by a general library and holds what was booked.
 *
 * <p>Source: RFC 5545 (2009), sections 3.1, 3.3.11, 3.6.1; read by the biweekly library, which was written to that text.
 *
 * <p>Tolerance: none; days and words must be the same.
 */
class CalendarCheck {
    private static final LocalDate MONDAY = LocalDate.of(2027, 4, 19);

    @Test
    void everyBookingComesBackWithItsDaysAndWords() {
        List<Booking> bookings = List.of(
                new Booking(
                        "Kiln yard; Tarn Steps, the long lane behind the old lime works, gate \\ fence — größer",
                        "set",
                        "dig and set posts",
                        "crew 1",
                        MONDAY,
                        false,
                        MONDAY.plusDays(2),
                        false,
                        List.of(),
                        List.of()),
                new Booking(
                        "Kiln yard",
                        "cure",
                        "concrete cures",
                        "",
                        MONDAY.plusDays(3),
                        false,
                        MONDAY.plusDays(5),
                        false,
                        List.of(),
                        List.of()),
                new Booking(
                        "Kiln yard",
                        "hang",
                        "hang the gate",
                        "crew 2",
                        MONDAY.plusDays(7),
                        true,
                        MONDAY.plusDays(7),
                        false,
                        List.of(),
                        List.of()));
        String text = CalendarFile.of(
                bookings,
                List.of(new CalendarDate("Kiln yard", MONDAY.plusDays(20), "preliminary notice: the last day", true)),
                MONDAY.minusDays(4),
                List.of("Call before you dig; ticket 1, 2."));
        ICalendar read = Biweekly.parse(text).first();
        assertThat(read.validate(read.getVersion()).getWarnings()).isEmpty();
        List<String> summaries = new ArrayList<>();
        for (VEvent event : read.getEvents()) summaries.add(event.getSummary().getValue());
        assertThat(summaries)
                .containsExactly(
                        bookings.get(0).job() + ": dig and set posts",
                        "Kiln yard: concrete cures",
                        "Kiln yard: hang the gate (afternoon)",
                        "Kiln yard: preliminary notice: the last day");
        assertThat(day(read.getEvents().get(3).getDateStart().getValue())).isEqualTo(MONDAY.plusDays(20));
        for (int i = 0; i < bookings.size(); i++) {
            VEvent event = read.getEvents().get(i);
            assertThat(day(event.getDateStart().getValue()))
                    .isEqualTo(bookings.get(i).first());
            assertThat(day(event.getDateEnd().getValue()))
                    .isEqualTo(bookings.get(i).last().plusDays(1));
            assertThat(event.getDateStart().getValue().hasTime()).isFalse();
        }
        assertThat(read.getEvents().get(0).getDescription().getValue())
                .isEqualTo("crew 1. Call before you dig; ticket 1, 2.");
    }

    @Test
    void noLineIsLongerThanSeventyFiveOctets() {
        String text = CalendarFile.of(
                List.of(new Booking(
                        "ü".repeat(120), "set", "dig", "crew 1", MONDAY, false, MONDAY, false, List.of(), List.of())),
                List.of(),
                MONDAY,
                List.of());
        for (String line : text.split("\r\n", -1))
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
        assertThat(Biweekly.parse(text).first().getEvents().get(0).getSummary().getValue())
                .startsWith("ü".repeat(120));
    }

    private static LocalDate day(Date date) {
        return date.toInstant().atZone(ZoneId.systemDefault()).toLocalDate();
    }
}
