package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import plumbleaf.engine.labour.Phase;

/**
 * Several jobs side by side: no crew is in two places, the shop builds one leaf after another, nothing hangs on green concrete or before its leaf is made. Jobs are
 * laid in the order they are given, each work at the earliest half days some crew has free in one stretch; of crews that are through at the same time the lower number.
 * A crew may work elsewhere while concrete cures. Not the shortest plan there is: that one would move every job each time another comes in.
 */
public final class YardCalendar {
    private final WorkingDays days;
    private final List<TreeSet<Integer>> crews = new ArrayList<>();
    private final TreeSet<Integer> shop = new TreeSet<>();
    private final List<Booking> bookings = new ArrayList<>();

    private YardCalendar(WorkingDays days, int crews) {
        this.days = days;
        for (int i = 0; i < crews; i++) this.crews.add(new TreeSet<>());
    }

    /** @param crews that work at the same time; at least one */
    public static List<Booking> of(List<JobPlan> jobs, WorkingDays days, int crews) {
        if (crews < 1) throw new IllegalArgumentException("Somebody has to do the work; crews: " + crews);
        YardCalendar calendar = new YardCalendar(days, crews);
        for (JobPlan job : jobs) calendar.lay(job);
        return List.copyOf(calendar.bookings);
    }

    private void lay(JobPlan job) {
        int start = days.halfAt(job.notBefore());
        int leafDone = start;
        int next = start;
        for (PlannedTask task : job.schedule().tasks()) {
            int halves = (int) Math.round(task.days() * 2);
            if (task.hours() == 0) {
                next = waiting(job, task, next);
            } else if (task.key().equals(Phase.SHOP.key())) {
                leafDone = book(job, task, "shop", shop, free(shop, start, halves), halves);
            } else {
                int from = next;
                if (task.key().equals(Phase.SET.key())) from = Math.max(from, days.halfAt(job.digFrom()));
                if (task.key().equals(Phase.HANG.key())) from = Math.max(from, leafDone);
                next = onSite(job, task, from, halves);
            }
        }
    }

    /** Whole calendar days after the last one worked; returns the first half day after them. */
    private int waiting(JobPlan job, PlannedTask task, int next) {
        LocalDate poured = next == 0 ? job.notBefore() : days.dayOf(next - 1);
        LocalDate last = poured.plusDays(Math.round(task.days()));
        bookings.add(new Booking(job.job(), task.key(), task.name(), "", poured.plusDays(1), false, last, false));
        return Math.max(next, days.halfAt(last.plusDays(1)));
    }

    private int onSite(JobPlan job, PlannedTask task, int from, int halves) {
        int best = 0;
        int start = Integer.MAX_VALUE;
        for (int crew = 0; crew < crews.size(); crew++) {
            int at = free(crews.get(crew), from, halves);
            if (at < start) {
                start = at;
                best = crew;
            }
        }
        return book(job, task, "crew " + (best + 1), crews.get(best), start, halves);
    }

    private int book(JobPlan job, PlannedTask task, String who, NavigableSet<Integer> taken, int start, int halves) {
        for (int half = start; half < start + halves; half++) taken.add(half);
        int last = start + halves - 1;
        bookings.add(new Booking(
                job.job(),
                task.key(),
                task.name(),
                who,
                days.dayOf(start),
                start % 2 == 1,
                days.dayOf(last),
                last % 2 == 0));
        return start + halves;
    }

    /** The first of so many free half days in one stretch. */
    private static int free(NavigableSet<Integer> taken, int from, int halves) {
        int start = from;
        Integer hit = taken.ceiling(start);
        while (hit != null && hit < start + halves) {
            start = hit + 1;
            hit = taken.ceiling(start);
        }
        return start;
    }
}
