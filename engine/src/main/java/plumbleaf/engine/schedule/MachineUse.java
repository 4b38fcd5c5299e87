package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which jobs hold a machine of each kind on each day: one machine is on one job a day. */
final class MachineUse {
    private final HouseDays house;
    private final Map<String, Map<LocalDate, Set<Integer>>> jobs = new LinkedHashMap<>();

    MachineUse(HouseDays house) {
        this.house = house;
    }

    /** Those that a phase takes. */
    List<Machine> of(String phase) {
        return house.machines().stream().filter(each -> each.isFor(phase)).toList();
    }

    /** Whether one of each is left, or on this job already. */
    boolean isFree(List<Machine> needed, LocalDate day, int job) {
        for (Machine machine : needed) {
            Set<Integer> there = on(machine, day);
            if (there.size() + (there.contains(job) ? 0 : 1) > house.fit(machine, day)) return false;
        }
        return true;
    }

    /** Whether there is none at all that day, whoever has work: work goes on after it. */
    boolean isAway(List<Machine> needed, LocalDate day) {
        return needed.stream().anyMatch(machine -> machine.count() > 0 && house.fit(machine, day) == 0);
    }

    void take(List<Machine> needed, LocalDate day, int job) {
        for (Machine machine : needed) on(machine, day).add(job);
    }

    private Set<Integer> on(Machine machine, LocalDate day) {
        return jobs.computeIfAbsent(machine.name(), none -> new TreeMap<>())
                .computeIfAbsent(day, none -> new TreeSet<>());
    }
}
