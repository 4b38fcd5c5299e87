package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Half days on which people work: Monday to Friday, without the days off. Half days are numbered from the first one on; even numbers are mornings.
 *
 * @param from the first day that is numbered, or the next one worked
 * @param off days nobody works
 */
public record WorkingDays(LocalDate from, List<DayOff> off) {
    private static final int FRIDAY = 5;

    public WorkingDays {
        off = List.copyOf(off);
    }

    public boolean isWorked(LocalDate day) {
        // 1 January 1970 was a Thursday.
        long fromMonday = Math.floorMod(day.toEpochDay() + 3, 7L);
        return fromMonday < FRIDAY && off.stream().noneMatch(each -> each.holds(day));
    }

    /** The day of a half day. */
    LocalDate dayOf(int half) {
        LocalDate day = from;
        int left = half / 2;
        while (true) {
            if (isWorked(day) && left-- == 0) return day;
            day = day.plusDays(1);
        }
    }

    /** The first half day that is on this day or later. */
    int halfAt(LocalDate day) {
        int worked = 0;
        for (LocalDate each = from; each.isBefore(day); each = each.plusDays(1)) if (isWorked(each)) worked++;
        return 2 * worked;
    }

    /** Each day worked from one to another, both with them. */
    public List<LocalDate> between(LocalDate first, LocalDate last) {
        List<LocalDate> days = new ArrayList<>();
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) if (isWorked(day)) days.add(day);
        return days;
    }
}
