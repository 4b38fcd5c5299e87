package plumbleaf.engine.schedule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.takeoff.Cause;
import plumbleaf.engine.takeoff.LoadList;
import plumbleaf.engine.takeoff.LoadStage;
import plumbleaf.engine.takeoff.NeedBy;
import plumbleaf.engine.takeoff.PartGroup;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;

/**
 * The day each line of the order is needed by, from the day plan. What rides on no truck is for the shop; what fence and leaf share is needed by whichever comes
 * first.
 */
final class NeedDays {
    private final LoadList load;
    private final Schedule schedule;
    private final Set<String> leaves = new LinkedHashSet<>();

    private NeedDays(LoadList load, Schedule schedule) {
        this.load = load;
        this.schedule = schedule;
        for (LoadList.Load day : load.loads()) {
            if (day.stage() != LoadStage.HANG) continue;
            for (LoadList.LoadLine line : day.lines()) leaves.add(line.item());
        }
    }

    static Takeoff on(Takeoff takeoff, LoadList load, Schedule schedule) {
        NeedDays days = new NeedDays(load, schedule);
        List<TakeoffLine> lines = new ArrayList<>();
        for (TakeoffLine line : takeoff.lines()) lines.add(line.neededBy(days.of(line)));
        return new Takeoff(lines, takeoff.cutPlans(), takeoff.taken(), takeoff.findings());
    }

    private NeedBy of(TakeoffLine line) {
        Optional<PlannedTask> shop = task(Phase.SHOP);
        Optional<LoadStage> truck = truck(line);
        if (truck.isEmpty() || (isForALeaf(line) && shop.isPresent())) {
            if (shop.isPresent()) return need(shop.get());
        }
        return atOrAfter(truck.map(NeedDays::phase).orElse(Phase.HANG));
    }

    private static Phase phase(LoadStage stage) {
        return switch (stage) {
            case SET -> Phase.SET;
            case BUILD -> Phase.BUILD;
            case HANG -> Phase.HANG;
            case FINISH -> Phase.FINISH;
        };
    }

    /** The first day that has it on the truck. */
    private Optional<LoadStage> truck(TakeoffLine line) {
        for (LoadList.Load day : load.loads()) {
            for (LoadList.LoadLine loaded : day.lines()) {
                if (loaded.item().equals(line.item())) return Optional.of(day.stage());
            }
        }
        return Optional.empty();
    }

    /** Boards and wire that a leaf shares with the fence; hinges and latches go on when it hangs. */
    private boolean isForALeaf(TakeoffLine line) {
        return line.group() == PartGroup.FENCE
                && line.causes().stream().anyMatch(cause -> leaves.contains(Cause.whole(cause.part())));
    }

    /** The first work from this phase on that the job has. */
    private NeedBy atOrAfter(Phase first) {
        for (Phase phase : Phase.values()) {
            if (phase.compareTo(first) < 0) continue;
            Optional<PlannedTask> task = task(phase);
            if (task.isPresent()) return need(task.get());
        }
        return NeedBy.UNKNOWN;
    }

    private Optional<PlannedTask> task(Phase phase) {
        return schedule.tasks().stream()
                .filter(task -> task.key().equals(phase.key()))
                .findFirst();
    }

    private static NeedBy need(PlannedTask task) {
        return new NeedBy(task.name(), task.first());
    }
}
