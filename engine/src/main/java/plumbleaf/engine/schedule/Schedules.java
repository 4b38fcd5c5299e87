package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.labour.Phase;

/**
 * Lays tasks end to end on working days, Monday to Friday. Concrete cures in calendar days before anything hangs on a post. Each phase starts on a half day
 * where the one before ends at noon. The shop works beside the crew, from the same day on; a gate hangs when its leaf is made and its posts have cured. Wet wood
 * takes no finish: it waits some weeks, or until a meter says that it is dry.
 */
public final class Schedules {
    private static final List<Phase> ON_SITE =
            List.of(Phase.TEAR_OUT, Phase.SET, Phase.BUILD, Phase.HANG, Phase.FINISH);

    /** Weeks from building to finishing where nobody has a reading yet: common practice, no source. */
    private static final int DRYING_DAYS = 28;

    private Schedules() {}

    /**
     * @param dry whether a reading says that the wood is dry enough for its finish
     * @param cold where frost may come, concrete waits longer
     */
    public static Schedule of(Labour labour, Pace pace, Stated<LocalDate> start, boolean dry, ColdWeather cold) {
        List<PlannedTask> tasks = new ArrayList<>();
        Clock clock = new Clock(start);
        Clock shop = new Clock(start);
        double siteDays = 0;
        double shopHours = labour.hours(Phase.SHOP);
        if (shopHours > 0) tasks.add(shop.work(Phase.SHOP.key(), Phase.SHOP.words(), shopHours, pace.days(shopHours)));
        for (Phase phase : ON_SITE) {
            double hours = labour.hours(phase);
            if (hours == 0) continue;
            if (phase == Phase.HANG) clock.notBefore(shop);
            if (phase == Phase.FINISH && !dry)
                tasks.add(clock.waitFor("dry", "wood dries; a meter may say sooner", DRYING_DAYS));
            double days = pace.days(hours);
            siteDays += days;
            tasks.add(clock.work(phase.key(), phase.words(), hours, days));
            if (phase == Phase.SET && pace.cureDays() > 0)
                tasks.add(clock.waitFor("cure", "concrete cures", clock.cure(pace.cureDays(), cold)));
        }
        return new Schedule(tasks, siteDays, pace.cureDays());
    }

    /** Where the plan has come to: a day, and whether its morning is gone. */
    private static final class Clock {
        private final boolean dated;
        private LocalDate day;
        private boolean noon;

        Clock(Stated<LocalDate> start) {
            dated = start.isSaid();
            day = workingDay(start.or(LocalDate.of(2000, 1, 3)));
        }

        PlannedTask work(String key, String name, double hours, double days) {
            LocalDate first = day;
            LocalDate last = day;
            for (double left = days; left > 0; left -= 0.5) {
                last = day;
                if (noon) day = workingDay(day.plusDays(1));
                noon = !noon;
            }
            return new PlannedTask(key, name, hours, days, stated(first), stated(last));
        }

        /** Whole days after the last day worked. */
        PlannedTask waitFor(String key, String name, int days) {
            LocalDate poured = poured();
            LocalDate last = poured.plusDays(days);
            LocalDate after = workingDay(last.plusDays(1));
            PlannedTask task = new PlannedTask(key, name, 0, days, stated(poured.plusDays(1)), stated(last));
            if (after.isAfter(day)) {
                day = after;
                noon = false;
            }
            return task;
        }

        /** Longer where frost may come; as usual where nobody said when the work starts. */
        int cure(int usual, ColdWeather cold) {
            return dated ? cold.cure(poured(), usual) : usual;
        }

        private LocalDate poured() {
            return noon ? day : dayBefore();
        }

        /** Nothing starts before the other has come to its end. */
        void notBefore(Clock other) {
            boolean later = other.day.isAfter(day) || (other.day.equals(day) && other.noon && !noon);
            if (!later) return;
            day = other.day;
            noon = other.noon;
        }

        private LocalDate dayBefore() {
            LocalDate before = day.minusDays(1);
            while (isWeekend(before)) before = before.minusDays(1);
            return before;
        }

        private Stated<LocalDate> stated(LocalDate date) {
            return dated ? Stated.of(date) : Stated.open();
        }

        private static LocalDate workingDay(LocalDate date) {
            LocalDate working = date;
            while (isWeekend(working)) working = working.plusDays(1);
            return working;
        }

        /** 1 January 1970 was a Thursday. */
        private static boolean isWeekend(LocalDate date) {
            long fromMonday = Math.floorMod(date.toEpochDay() + 3, 7L);
            return fromMonday >= 5;
        }
    }
}
