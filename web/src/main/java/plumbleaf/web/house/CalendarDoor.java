package plumbleaf.web.house;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.schedule.Booking;
import plumbleaf.engine.schedule.JobPlan;
import plumbleaf.engine.schedule.WorkingDays;
import plumbleaf.engine.schedule.YardCalendar;
import plumbleaf.jobfile.calendar.CalendarFile;
import plumbleaf.web.page.Pages;

/** The days of all jobs side by side: no crew in two places, no digging before its ticket. The oldest job goes first. Nothing here is money. */
@Controller
class CalendarDoor {
    private static final int MOST_CREWS = 20;

    private final AllDesigns designs;
    private final Pages pages;
    private final Clock clock;

    CalendarDoor(AllDesigns designs, Pages pages, Clock clock) {
        this.designs = designs;
        this.pages = pages;
        this.clock = clock;
    }

    @GetMapping("/calendar")
    ResponseEntity<String> calendar(
            HttpServletRequest request,
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "1") int crews) {
        LocalDate first = day(from);
        int atWork = Math.max(1, Math.min(MOST_CREWS, crews));
        return pages.html(
                HttpStatus.OK,
                "calendar.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Calendar"),
                        "from",
                        first.toString(),
                        "crews",
                        atWork,
                        "days",
                        days(bookings(first, atWork), first)));
    }

    @GetMapping("/calendar.ics")
    ResponseEntity<byte[]> file(
            @RequestParam(defaultValue = "") String from, @RequestParam(defaultValue = "1") int crews) {
        LocalDate first = day(from);
        String text = CalendarFile.of(
                bookings(first, Math.max(1, Math.min(MOST_CREWS, crews))),
                first,
                List.of("Call before you dig; check the locate ticket."));
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_TYPE, "text/calendar; charset=utf-8")
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"days.ics\"")
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    private List<Booking> bookings(LocalDate first, int crews) {
        List<JobPlan> plans = new ArrayList<>();
        List<AllDesigns.Of> latest = designs.latest();
        for (int i = latest.size() - 1; i >= 0; i--)
            plans.add(plan(latest.get(i).design(), first));
        List<Booking> bookings = new ArrayList<>(YardCalendar.of(plans, new WorkingDays(first, List.of()), crews));
        bookings.sort(Comparator.comparing(Booking::first));
        return bookings;
    }

    private static JobPlan plan(Design design, LocalDate first) {
        return JobPlan.of(design.job(), design.quote().schedule(), first);
    }

    private static List<CalendarDay> days(List<Booking> bookings, LocalDate from) {
        List<CalendarDay> days = new ArrayList<>();
        LocalDate last = bookings.stream()
                .map(Booking::last)
                .max(Comparator.naturalOrder())
                .orElse(from);
        WorkingDays working = new WorkingDays(from, List.of());
        for (LocalDate day : working.between(from, last)) {
            List<String> lines = new ArrayList<>();
            for (Booking booking : bookings) {
                boolean on = !booking.who().isEmpty() && !day.isBefore(booking.first()) && !day.isAfter(booking.last());
                if (on) lines.add(booking.who() + ": " + booking.job() + ", " + booking.name() + half(booking, day));
            }
            for (Booking booking : bookings) {
                if (booking.who().isEmpty() && day.equals(booking.last()))
                    lines.add(booking.job() + ": concrete has cured");
            }
            if (!lines.isEmpty())
                days.add(new CalendarDay(
                        day.getDayOfWeek().toString().charAt(0)
                                + day.getDayOfWeek().toString().substring(1, 3).toLowerCase(Locale.ROOT) + " " + day,
                        lines));
        }
        return days;
    }

    private static String half(Booking booking, LocalDate day) {
        if (day.equals(booking.first()) && booking.afternoon()) return ", afternoon";
        return day.equals(booking.last()) && booking.untilNoon() ? ", morning" : "";
    }

    private LocalDate day(String text) {
        try {
            if (!text.isEmpty()) return LocalDate.parse(text);
        } catch (DateTimeException notADay) {
            return today();
        }
        return today();
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
    }
}
