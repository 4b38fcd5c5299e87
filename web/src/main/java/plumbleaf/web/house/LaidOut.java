package plumbleaf.web.house;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.job.FrostMonths;
import plumbleaf.engine.schedule.Booking;
import plumbleaf.engine.schedule.HouseDays;
import plumbleaf.engine.schedule.JobPlan;
import plumbleaf.engine.schedule.YardCalendar;
import plumbleaf.jobfile.calendar.CalendarDate;

/**
 * All jobs laid out on days, the oldest first.
 *
 * @param dates days to keep, though nobody works for them
 * @param frosty days on which frost may come at one of the jobs
 */
record LaidOut(HouseDays house, List<Booking> bookings, List<CalendarDate> dates, Set<LocalDate> frosty) {
    /**
     * @param latest job first
     * @param seesMoney whether notices and validity are among the dates
     */
    static LaidOut of(List<Design> latest, HouseDays house, LocalDate first, boolean seesMoney) {
        List<JobPlan> plans = new ArrayList<>();
        List<CalendarDate> dates = new ArrayList<>();
        List<FrostMonths> frost = new ArrayList<>();
        for (int i = latest.size() - 1; i >= 0; i--) {
            Design design = latest.get(i);
            plans.add(JobPlan.of(design.job(), design.quote(), first));
            frost.add(design.job().site().frost().months());
            for (CalendarDate date : CalendarDate.of(design))
                if (!date.day().isBefore(first) && (seesMoney || !date.isMoney())) dates.add(date);
        }
        List<Booking> bookings = new ArrayList<>(YardCalendar.of(plans, house, first));
        bookings.sort(Comparator.comparing(Booking::first));
        Set<LocalDate> frosty = new TreeSet<>();
        for (Booking booking : bookings)
            for (LocalDate day = booking.first().withDayOfMonth(1);
                    !day.isAfter(booking.last());
                    day = day.plusDays(1)) {
                LocalDate each = day;
                if (frost.stream().anyMatch(months -> months.holds(each))) frosty.add(day);
            }
        dates.sort(Comparator.comparing(CalendarDate::day));
        return new LaidOut(house, bookings, dates, frosty);
    }

    /** Every day on which somebody works or something is due. */
    List<CalendarDay> days() {
        Set<LocalDate> all = new TreeSet<>();
        for (Booking booking : bookings)
            for (LocalDate day = booking.first(); !day.isAfter(booking.last()); day = day.plusDays(1)) all.add(day);
        for (CalendarDate date : dates) all.add(date.day());
        List<CalendarDay> days = new ArrayList<>();
        for (LocalDate day : all) {
            CalendarDay on = on(day);
            if (!on.lines().isEmpty() || !on.notes().isEmpty()) days.add(on);
        }
        return days;
    }

    private CalendarDay on(LocalDate day) {
        List<String> lines = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        boolean worked = house.working(day).isWorked(day);
        for (Booking booking : bookings) {
            boolean on = !day.isBefore(booking.first()) && !day.isAfter(booking.last());
            if (on && worked && !booking.isWait() && !house.isOff(booking.who(), day))
                lines.add(booking.who() + ": " + booking.job() + ", " + booking.name() + half(booking, day)
                        + (booking.machines().isEmpty() ? "" : " (" + String.join(", ", booking.machines()) + ")"));
            if (booking.key().equals("cure") && day.equals(booking.last()))
                lines.add(booking.job() + ": concrete has cured");
            if (day.equals(booking.first()))
                for (String note : booking.notes())
                    (booking.key().equals("rain") ? lines : notes).add(booking.job() + ": " + note);
        }
        for (CalendarDate date : dates) if (date.day().equals(day)) notes.add(date.job() + ": " + date.words());
        String name = day.getDayOfWeek().toString();
        return new CalendarDay(
                name.charAt(0) + name.substring(1, 3).toLowerCase(Locale.ROOT) + " " + day, lines, notes);
    }

    private static String half(Booking booking, LocalDate day) {
        if (day.equals(booking.first()) && booking.afternoon()) return ", afternoon";
        return day.equals(booking.last()) && booking.untilNoon() ? ", morning" : "";
    }
}
