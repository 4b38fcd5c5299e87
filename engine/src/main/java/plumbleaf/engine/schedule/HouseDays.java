package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.labour.Phase;

/**
 * Who and what the house has to work with, and when not.
 *
 * @param crews that work at the same time
 * @param coldCureDays between pouring and hanging while it may freeze
 * @param rain share of a job's days on site that is kept for rain: 0.1 for one in ten; nobody is booked on them
 */
public record HouseDays(int crews, int coldCureDays, double rain, List<Machine> machines, List<DayOff> off) {
    public HouseDays {
        if (crews < 1 || coldCureDays < 0 || !(rain >= 0 && rain <= 1))
            throw new IllegalArgumentException("Somebody has to do the work; crews: " + crews);
        machines = List.copyOf(machines);
        off = List.copyOf(off);
    }

    /** A truck for each crew, one auger, one welder, a day in ten kept for rain: common practice, no source. */
    public static HouseDays usual(int crews) {
        return new HouseDays(
                crews,
                ColdWeather.USUAL_CURE_DAYS,
                0.1,
                List.of(
                        new Machine("auger", 1, List.of(Phase.SET)),
                        new Machine("welder", 1, List.of(Phase.SHOP)),
                        new Machine(
                                "truck",
                                crews,
                                List.of(Phase.TEAR_OUT, Phase.SET, Phase.BUILD, Phase.HANG, Phase.FINISH))),
                List.of());
    }

    /** The same house with other days off for all, such as those given on the command line. */
    public HouseDays alsoOff(List<LocalDate> days) {
        List<DayOff> all = new ArrayList<>(off);
        for (LocalDate day : days) all.add(new DayOff(DayOff.EVERYONE, day, day, ""));
        return new HouseDays(crews, coldCureDays, rain, machines, all);
    }

    public HouseDays withCrews(int others) {
        return new HouseDays(others, coldCureDays, rain, machines, off);
    }

    public HouseDays withMachines(List<Machine> others) {
        return new HouseDays(crews, coldCureDays, rain, others, off);
    }

    public HouseDays withOff(List<DayOff> others) {
        return new HouseDays(crews, coldCureDays, rain, machines, others);
    }

    public boolean isOff(String who, LocalDate day) {
        return off.stream().anyMatch(each -> each.who().equals(who) && each.holds(day));
    }

    /** How many of a machine are fit for work on a day. */
    int fit(Machine machine, LocalDate day) {
        int away = 0;
        for (DayOff each : off) if (each.who().equals(machine.name()) && each.holds(day)) away++;
        return Math.max(0, machine.count() - away);
    }

    /** Days kept for rain beside so many on site, whole. */
    int rainDays(double siteDays) {
        return (int) Math.ceil(siteDays * rain - 1e-9);
    }

    /** Half days on which the house works at all. */
    public WorkingDays working(LocalDate from) {
        return new WorkingDays(
                from,
                off.stream().filter(each -> each.who().equals(DayOff.EVERYONE)).toList());
    }
}
