package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.quantity.Volume;

/**
 * Which holes are poured on which day. A hole is filled on the day it is dug, so that none stands open over night; the days of digging and setting share the
 * holes by their concrete, which is what digging and mixing grow with: after a share {@code d} of the work the holes are filled whose middle lies below
 * {@code d} of all concrete. Where it stops being true: a crew that digs all and pours from one truck. Common practice, no source.
 */
public final class PourDays {
    private PourDays() {}

    /**
     * One hole with its concrete.
     *
     * @param gate whether a gate hangs on or closes against its post: those are filled first, for they cure before anything hangs on them
     */
    public record Hole(String post, boolean gate, Volume concrete) {}

    /**
     * @param schedule of the job
     * @param walk its holes in the order of the walk
     * @return days with a pour, in order; a day of work that fills no hole is left out
     */
    public static List<PourDay> of(Schedule schedule, List<Hole> walk) {
        if (walk.isEmpty()) return List.of();
        List<Hole> holes = new ArrayList<>(walk);
        holes.sort(Comparator.comparing(hole -> !hole.gate()));
        List<Share> shares = shares(schedule);
        double work = shares.stream().mapToDouble(Share::days).sum();
        double all =
                holes.stream().mapToDouble(hole -> hole.concrete().cubicFeet()).sum();
        List<List<String>> posts = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) posts.add(new ArrayList<>());
        double filled = 0;
        for (Hole hole : holes) {
            double middle = all == 0 ? 0 : (filled + hole.concrete().cubicFeet() / 2) / all;
            filled += hole.concrete().cubicFeet();
            int day = 0;
            for (double done = shares.get(0).days(); day + 1 < shares.size() && middle * work > done; ) {
                day++;
                done += shares.get(day).days();
            }
            posts.get(day).add(hole.post());
        }
        List<PourDay> days = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++)
            if (!posts.get(i).isEmpty())
                days.add(new PourDay(i + 1, shares.get(i).date(), posts.get(i)));
        return List.copyOf(days);
    }

    /** A day on which posts are set, or the part of it that is left for that. */
    private record Share(Stated<LocalDate> date, double days) {}

    private static List<Share> shares(Schedule schedule) {
        Optional<PlannedTask> set = task(schedule);
        if (set.isEmpty()) return List.of(new Share(Stated.open(), 1));
        double left = set.get().days();
        Optional<LocalDate> first = set.get().first().value();
        List<LocalDate> dates = first.map(day -> new WorkingDays(day, List.of())
                        .between(day, set.get().last().or(day)))
                .orElse(List.of());
        boolean fromNoon = beginsAtNoon(schedule, set.get());
        List<Share> shares = new ArrayList<>();
        while (left > 1e-9) {
            double here = Math.min(left, shares.isEmpty() && fromNoon ? 0.5 : 1);
            int at = shares.size();
            shares.add(new Share(at < dates.size() ? Stated.of(dates.get(at)) : Stated.open(), here));
            left -= here;
        }
        return shares.isEmpty() ? List.of(new Share(set.get().first(), 1)) : shares;
    }

    private static Optional<PlannedTask> task(Schedule schedule) {
        return schedule.tasks().stream()
                .filter(task -> task.key().equals(Phase.SET.key()))
                .findFirst();
    }

    /** Where the old fence comes down until noon of the same day. */
    private static boolean beginsAtNoon(Schedule schedule, PlannedTask set) {
        return schedule.tasks().stream()
                .filter(task -> task.key().equals(Phase.TEAR_OUT.key()))
                .anyMatch(task -> task.days() != StrictMath.floor(task.days()) && task.days() > 0 && set.days() > 0);
    }
}
