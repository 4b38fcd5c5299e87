package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.labour.Phase;

/**
 * Several jobs side by side: no crew is in two places, no machine on two jobs the same day, nobody works on a day off, the shop builds one leaf after another, nothing
 * hangs on green concrete or before its leaf is made. Jobs are laid in the order they are given, each work at the earliest half days some crew has free in one
 * stretch, days off between them; of crews that are through at the same time the lower number. A crew may work elsewhere while concrete cures. Digging waits for a
 * ticket that holds until it is done. Not the shortest plan there is: that one would move every job each time another comes in.
 */
public final class YardCalendar {
    /** Half days looked through before a plan is given up: ten years. A machine that the house has none of never comes. */
    private static final int FURTHEST = 5200;

    private final HouseDays house;
    private final WorkingDays days;
    private final MachineUse machines;
    private final List<Worker> crews = new ArrayList<>();
    private final Worker shop = new Worker("shop", new TreeSet<>());
    private final List<Booking> bookings = new ArrayList<>();

    /** Who works, and the half days that are taken. */
    private record Worker(String name, TreeSet<Integer> taken) {}

    /** Half days of one work: the first, and the last. */
    private record Stretch(Worker worker, int first, int last, List<Integer> halves) {}

    private YardCalendar(HouseDays house, LocalDate from) {
        this.house = house;
        this.days = house.working(from);
        this.machines = new MachineUse(house);
        for (int i = 1; i <= house.crews(); i++) crews.add(new Worker("crew " + i, new TreeSet<>()));
    }

    /** @param from the first day anyone is free */
    public static List<Booking> of(List<JobPlan> jobs, HouseDays house, LocalDate from) {
        YardCalendar calendar = new YardCalendar(house, from);
        for (int i = 0; i < jobs.size(); i++) calendar.lay(jobs.get(i), i);
        return List.copyOf(calendar.bookings);
    }

    private void lay(JobPlan job, int number) {
        int start = days.halfAt(job.notBefore());
        int leafDone = start;
        int next = start;
        for (PlannedTask task : job.schedule().tasks()) {
            if (task.hours() == 0) {
                next = waiting(job, task, next);
            } else if (task.key().equals(Phase.SHOP.key())) {
                leafDone = book(job, number, task, earliest(List.of(shop), task, start, number), List.of());
            } else if (isDigging(job, task)) {
                next = dig(job, number, task, next);
            } else {
                int from = task.key().equals(Phase.HANG.key()) ? Math.max(next, leafDone) : next;
                next = book(job, number, task, earliest(crews, task, from, number), finishing(job, task, from));
            }
        }
        rain(job, next);
    }

    private static boolean isDigging(JobPlan job, PlannedTask task) {
        return task.key().equals(Phase.SET.key())
                || (job.pullsConcrete() && task.key().equals(Phase.TEAR_OUT.key()));
    }

    /** On the first ticket that holds until the last hole is dug; else on the first, and said. */
    private int dig(JobPlan job, int number, PlannedTask task, int next) {
        List<String> notes = new ArrayList<>();
        Stretch stretch = earliest(crews, task, next, number);
        if (!job.tickets().isEmpty()) {
            stretch = onTicket(job.tickets().get(0), task, next, number);
            boolean covered = false;
            for (LocateTicket ticket : job.tickets()) {
                Stretch tried = onTicket(ticket, task, next, number);
                covered = !days.dayOf(tried.last()).isAfter(ticket.validThrough());
                if (!covered) continue;
                stretch = tried;
                notes.add("Locate ticket " + ticket.number() + " holds from " + ticket.digFrom() + " through "
                        + ticket.validThrough() + ".");
                break;
            }
            if (!covered) {
                notes.add("Digging runs past the locate ticket: renew it before "
                        + job.tickets().get(job.tickets().size() - 1).validThrough() + ", or do not dig.");
            }
        }
        LocalDate poured = days.dayOf(stretch.last());
        ColdWeather cold = cold(job);
        int usual = job.schedule().cureDays();
        boolean pours = task.key().equals(Phase.SET.key());
        if (pours && cold.isCold(poured, usual)) notes.add(cold.pouring(cold.cure(poured, usual)));
        return book(job, number, task, stretch, notes);
    }

    private Stretch onTicket(LocateTicket ticket, PlannedTask task, int next, int number) {
        return earliest(crews, task, Math.max(next, days.halfAt(ticket.digFrom())), number);
    }

    private List<String> finishing(JobPlan job, PlannedTask task, int from) {
        boolean cold = task.key().equals(Phase.FINISH.key()) && job.frost().holds(days.dayOf(from));
        return cold ? List.of(cold(job).finishing()) : List.of();
    }

    private ColdWeather cold(JobPlan job) {
        return new ColdWeather(job.frost(), house.coldCureDays());
    }

    /** Whole calendar days after the last one worked; returns the first half day after them. */
    private int waiting(JobPlan job, PlannedTask task, int next) {
        LocalDate poured = next == 0 ? job.notBefore() : days.dayOf(next - 1);
        boolean cures = task.key().equals("cure");
        int usual = job.schedule().cureDays();
        int wait = cures ? cold(job).cure(poured, usual) : (int) Math.round(task.days());
        LocalDate last = poured.plusDays(wait);
        List<String> notes =
                cures && wait > usual ? List.of(wait + " days instead of " + usual + ": frost may come.") : List.of();
        bookings.add(new Booking(
                job.job(), task.key(), task.name(), "", poured.plusDays(1), false, last, false, List.of(), notes));
        return Math.max(next, days.halfAt(last.plusDays(1)));
    }

    /** Days after the last work on which nobody is booked, so that rain moves nobody else. */
    private void rain(JobPlan job, int next) {
        int kept = house.rainDays(job.schedule().siteDays());
        if (kept == 0 || next == 0) return;
        int first = next + next % 2;
        LocalDate done = days.dayOf(next - 1);
        LocalDate last = days.dayOf(first + 2 * kept - 1);
        bookings.add(new Booking(
                job.job(),
                "rain",
                kept == 1 ? "a day kept for rain" : kept + " days kept for rain",
                "",
                days.dayOf(first),
                false,
                last,
                false,
                List.of(),
                List.of("Done on " + done + ", and by " + last + " if rain takes no more than that.")));
    }

    /** The worker who is through first; the first of them in order where several are. */
    private Stretch earliest(List<Worker> workers, PlannedTask task, int from, int job) {
        int halves = (int) Math.round(task.days() * 2);
        List<Machine> needed = machines.of(task.key());
        Stretch best = free(workers.get(0), from, halves, needed, job);
        for (Worker worker : workers.subList(1, workers.size())) {
            Stretch other = free(worker, from, halves, needed, job);
            if (other.last() < best.last()) best = other;
        }
        return best;
    }

    /** The first of so many free half days in one stretch; days off of the worker, and of a machine, lie between and are passed over. */
    private Stretch free(Worker worker, int from, int halves, List<Machine> needed, int job) {
        int start = from;
        while (start < from + FURTHEST) {
            List<Integer> taken = new ArrayList<>();
            int half = start;
            while (taken.size() < halves && half < from + FURTHEST) {
                LocalDate day = days.dayOf(half);
                if (!house.isOff(worker.name(), day) && !machines.isAway(needed, day)) {
                    if (worker.taken().contains(half) || !machines.isFree(needed, day, job)) break;
                    taken.add(half);
                }
                half++;
            }
            if (taken.size() == halves) return new Stretch(worker, taken.get(0), taken.get(halves - 1), taken);
            start = half + 1;
        }
        throw new IllegalArgumentException(worker.name() + " never finds the days for a work of " + halves
                + " half days; the house has none of a machine that it takes, or is off for ten years");
    }

    private int book(JobPlan job, int number, PlannedTask task, Stretch stretch, List<String> notes) {
        List<Machine> needed = machines.of(task.key());
        for (int half : stretch.halves()) {
            stretch.worker().taken().add(half);
            machines.take(needed, days.dayOf(half), number);
        }
        bookings.add(new Booking(
                job.job(),
                task.key(),
                task.name(),
                stretch.worker().name(),
                days.dayOf(stretch.first()),
                stretch.first() % 2 == 1,
                days.dayOf(stretch.last()),
                stretch.last() % 2 == 0,
                needed.stream().map(Machine::name).toList(),
                notes));
        return stretch.last() + 1;
    }
}
