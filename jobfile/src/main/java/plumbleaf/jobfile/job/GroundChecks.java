package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.ground.Breakline;
import plumbleaf.engine.ground.GroundBook;
import plumbleaf.engine.ground.Setup;
import plumbleaf.engine.ground.Shot;
import plumbleaf.engine.ground.ShotPlace;
import plumbleaf.engine.quantity.Length;

/** Shots, setups and breaklines: what they name must exist, must lie on its run, and must not go in a circle. */
final class GroundChecks {
    private static final String BENCHMARK = "benchmark";
    private static final int MOST_SHOTS = 20_000;

    private final GroundBook ground;
    private final JobChecks checks;
    private final Map<String, Shot> shots = new LinkedHashMap<>();
    private final Map<String, Setup> setups = new LinkedHashMap<>();

    GroundChecks(GroundBook ground, JobChecks checks) {
        this.ground = ground;
        this.checks = checks;
        for (Shot shot : ground.shots()) shots.putIfAbsent(shot.id(), shot);
        for (Setup setup : ground.setups()) setups.putIfAbsent(setup.id(), setup);
    }

    void all() {
        if (ground.shots().size() > MOST_SHOTS || ground.setups().size() > MOST_SHOTS) {
            checks.refuse("ground", "there are more than 20,000 shots or setups", "split the job");
            return;
        }
        for (int i = 0; i < ground.setups().size(); i++) {
            Setup setup = ground.setups().get(i);
            String at = "ground.setups[" + i + "]";
            checks.id(setup.id(), at);
            if (!setup.on().isEmpty() && !setup.on().equals(BENCHMARK) && !shots.containsKey(setup.on()))
                checks.refuse(
                        at + ".on",
                        "there is no shot " + setup.on(),
                        JobChecks.nearest(setup.on(), shots.keySet(), "write benchmark or a shot"));
        }
        for (int i = 0; i < ground.shots().size(); i++) names(ground.shots().get(i), "ground.shots[" + i + "]");
        for (int i = 0; i < ground.breaklines().size(); i++)
            breakline(ground.breaklines().get(i), "ground.breaklines[" + i + "]");
        circles();
        tapedInCircles();
        stations();
    }

    private void names(Shot shot, String at) {
        checks.id(shot.id(), at);
        shot.place()
                .match(
                        onRun -> checks.runThere(onRun.run(), at + ".run"),
                        after -> checks.runThere(after.run(), at + ".run")
                                && base(after.shot(), after.run(), at + ".after"),
                        plan -> true,
                        tapes -> tapes(tapes, at + ".tapes"));
        shot.height()
                .match(
                        rod -> isKnownOrEmpty(rod.setup(), setups.keySet())
                                || refuse(
                                        at + ".setup",
                                        "there is no setup " + rod.setup(),
                                        JobChecks.nearest(rod.setup(), setups.keySet(), "add it under setups")),
                        elevation -> true,
                        falls -> isKnownOrEmpty(falls.shot(), shots.keySet())
                                || refuse(
                                        at + ".from",
                                        "there is no shot " + falls.shot(),
                                        JobChecks.nearest(falls.shot(), shots.keySet(), "name a shot of this job")));
    }

    /** Three points that are there, the first two not one, and tapes that do not go in a circle. */
    private boolean tapes(ShotPlace.Tapes tapes, String at) {
        boolean first = tapeFrom(tapes.from(), at + ".from");
        boolean second = tapeFrom(tapes.and(), at + ".and");
        boolean third = tapes.check().isEmpty() || tapeFrom(tapes.check().get().from(), at + ".check");
        boolean known = first && second && third;
        if (known && tapes.from().equals(tapes.and()))
            return refuse(at + ".and", "both tapes begin at " + tapes.from(), "tape from two points");
        return known;
    }

    private boolean tapeFrom(String id, String field) {
        return isKnownOrEmpty(id, shots.keySet())
                || refuse(
                        field,
                        "there is no shot " + id,
                        JobChecks.nearest(id, shots.keySet(), "name a shot of this job"));
    }

    /** A place taped from points that are themselves taped from it can never be found. */
    private void tapedInCircles() {
        Set<String> placed = new LinkedHashSet<>();
        for (boolean more = true; more; ) {
            more = false;
            for (Shot shot : shots.values()) if (placed.containsAll(tapedFrom(shot))) more |= placed.add(shot.id());
        }
        for (int i = 0; i < ground.shots().size(); i++) {
            Shot shot = ground.shots().get(i);
            if (!placed.contains(shot.id()) && shots.keySet().containsAll(tapedFrom(shot)))
                checks.refuse(
                        "ground.shots[" + i + "].tapes",
                        shot.id() + " is taped from points that are taped from it",
                        "tape it from points that have a place of their own");
        }
    }

    private static List<String> tapedFrom(Shot shot) {
        return shot.place().match(onRun -> List.of(), after -> List.of(), plan -> List.of(), tapes -> {
            List<String> from = new ArrayList<>(List.of(tapes.from(), tapes.and()));
            tapes.check().ifPresent(check -> from.add(check.from()));
            return from;
        });
    }

    /** What was left empty has been said where it was read. */
    private static boolean isKnownOrEmpty(String id, Set<String> known) {
        return id.isEmpty() || known.contains(id);
    }

    private boolean refuse(String field, String problem, String cure) {
        checks.refuse(field, problem, cure);
        return false;
    }

    private boolean base(String id, String run, String field) {
        if (id.isEmpty()) return false;
        if (!shots.containsKey(id))
            return refuse(
                    field, "there is no shot " + id, JobChecks.nearest(id, shots.keySet(), "name a shot of this job"));
        boolean sameRun = shots.get(id)
                .place()
                .match(
                        onRun -> onRun.run().equals(run),
                        after -> after.run().equals(run),
                        plan -> false,
                        tapes -> false);
        return sameRun || refuse(field, id + " has no station on " + run, "name a shot on " + run);
    }

    private void breakline(Breakline line, String at) {
        if (line.shots().size() < 2) checks.refuse(at + ".shots", "a breakline needs two shots", "name them in order");
        for (int i = 0; i < line.shots().size(); i++) {
            String id = line.shots().get(i);
            if (!shots.containsKey(id))
                checks.refuse(
                        at + ".shots[" + i + "]",
                        "there is no shot " + id,
                        JobChecks.nearest(id, shots.keySet(), "name a shot of this job"));
        }
    }

    /** A height that rests on itself by way of others can never be found. */
    private void circles() {
        Set<String> found = new LinkedHashSet<>(List.of(BENCHMARK));
        boolean more = true;
        while (more) {
            more = false;
            for (Setup setup : ground.setups()) {
                if (found.contains(setup.on())) more |= found.add("setup " + setup.id());
            }
            for (Shot shot : ground.shots()) {
                if (found.contains(restsOn(shot))) more |= found.add(shot.id());
            }
        }
        for (int i = 0; i < ground.shots().size(); i++) {
            Shot shot = ground.shots().get(i);
            boolean namesExist = shot.height()
                    .match(
                            rod -> setups.containsKey(rod.setup())
                                    && shots.containsKey(setups.get(rod.setup()).on()),
                            elevation -> true,
                            falls -> shots.containsKey(falls.shot()));
            if (namesExist && !found.contains(shot.id()))
                checks.refuse(
                        "ground.shots[" + i + "]",
                        "the height of " + shot.id() + " rests on itself or on a height that is not there",
                        "give one shot of the chain an elevation");
        }
    }

    private static String restsOn(Shot shot) {
        return shot.height().match(rod -> "setup " + rod.setup(), elevation -> BENCHMARK, falls -> falls.shot());
    }

    private void stations() {
        Map<String, Length> known = new LinkedHashMap<>();
        boolean more = true;
        while (more) {
            more = false;
            for (Shot shot : shots.values()) {
                Optional<Length> station = known.containsKey(shot.id()) ? Optional.empty() : station(shot, known);
                if (station.isPresent()) {
                    known.put(shot.id(), station.get());
                    more = true;
                }
            }
        }
        for (int i = 0; i < ground.shots().size(); i++) {
            Shot shot = ground.shots().get(i);
            String at = "ground.shots[" + i + "]";
            String key = shot.place().match(onRun -> ".station", after -> ".over", plan -> "", tapes -> "");
            String run = shot.place().match(onRun -> onRun.run(), after -> after.run(), plan -> "", tapes -> "");
            if (key.isEmpty() || !checks.runLengths().containsKey(run)) continue;
            if (known.containsKey(shot.id())) checks.stationInside(run, known.get(shot.id()), at + key);
            else if (shots.containsKey(shot.place().match(onRun -> "", after -> after.shot(), plan -> "", tapes -> "")))
                checks.refuse(
                        at + ".after",
                        shot.id() + " lies after a shot whose station is not found",
                        "give one shot of the chain a station");
        }
    }

    /** Chains that run far beyond any job stop growing there. */
    private static Length further(Length base, Length over) {
        return base.compareTo(Length.feet(20 * 5280)) > 0 ? base : base.plus(over);
    }

    private static Optional<Length> station(Shot shot, Map<String, Length> known) {
        return shot.place()
                .match(
                        onRun -> Optional.of(onRun.station()),
                        after -> known.containsKey(after.shot())
                                ? Optional.of(further(known.get(after.shot()), after.over()))
                                : Optional.empty(),
                        plan -> Optional.empty(),
                        tapes -> Optional.empty());
    }
}
