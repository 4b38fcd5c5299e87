package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The heights of a ground book: rod readings and falls carried back to the benchmark. A rod reading whose note is {@code benchmark}, or the mark's own words,
 * was taken on the benchmark again, one at the very place of an earlier shot and from another setup on that shot again: it closes the loop and is no point of the
 * ground.
 *
 * @param shots whose heights are known, in the book's order, without the closing ones
 * @param levels each setup with its height of instrument
 */
public record Levelled(List<LevelledShot> shots, List<StandingLevel> levels, List<Finding> findings) {
    /** As setups name the benchmark. */
    public static final String BENCHMARK = "benchmark";

    public Levelled {
        shots = List.copyOf(shots);
        levels = List.copyOf(levels);
        findings = List.copyOf(findings);
    }

    public static Levelled of(GroundBook book) {
        return of(book, DisplayUnits.US);
    }

    /** @param display units that its findings tell lengths in */
    public static Levelled of(GroundBook book, DisplayUnits display) {
        return new Reducing(book, display).levelled();
    }

    public Optional<LevelledShot> shot(String id) {
        return shots.stream().filter(shot -> shot.id().equals(id)).findFirst();
    }

    /** Station of a shot that names its run, directly or through the shots it was taped on from. */
    public Optional<Offset> stationOf(Shot shot) {
        return stationOf(shot, new TreeSet<>());
    }

    private Optional<Offset> stationOf(Shot shot, Set<String> asked) {
        if (!asked.add(shot.id())) return Optional.empty();
        return shot.place()
                .match(
                        on -> Optional.of(on.station().asOffset()),
                        after -> shot(after.shot())
                                .flatMap(before -> stationOf(before.shot(), asked))
                                .map(station ->
                                        station.plus(levelOver(shot, after).asOffset())),
                        at -> Optional.empty(),
                        tapes -> Optional.empty());
    }

    /** How far in plan a shot lies beyond the one it was taped from. */
    Length levelOver(Shot shot, ShotPlace.After after) {
        return after.lay().isAlongGround() ? alongGround(shot, after) : after.over();
    }

    /**
     * What a tape along the ground comes to in plan: {@code sqrt(L^2 - dz^2)}; all of it where a height is not known, none of it where the ground rises by more than
     * the tape is long. Source: plane geometry. Check: TapeLayTest.
     */
    Length alongGround(Shot shot, ShotPlace.After after) {
        Optional<LevelledShot> from = shot(after.shot());
        Optional<LevelledShot> to = shot(shot.id());
        if (from.isEmpty() || to.isEmpty()) return after.over();
        double rise = to.get().elevation().inches() - from.get().elevation().inches();
        double over = after.over().inches();
        return Length.inches(Math.sqrt(Math.max(0, over * over - rise * rise)));
    }

    /**
     * The profile of a run from the shots that name it, before it is known where the run lies in plan: what a leg taped along the ground is reduced with.
     */
    public Profile profileByStation(String run) {
        List<ProfilePoint> points = new ArrayList<>();
        for (LevelledShot shot : shots) {
            if (!Placing.isOnLineOf(run, shot.shot())) continue;
            stationOf(shot.shot())
                    .ifPresent(station -> points.add(new ProfilePoint(shot.id(), station, shot.elevation())));
        }
        return Profile.of(run, points);
    }

    /** Follows each shot back to the benchmark. */
    private static final class Reducing {
        private final GroundBook book;
        private final GroundFindings say;
        private final Map<String, Setup> setups = new LinkedHashMap<>();
        private final Map<String, Shot> shots = new LinkedHashMap<>();
        private final Map<String, Offset> heights = new TreeMap<>();
        private final List<Finding> findings = new ArrayList<>();

        Reducing(GroundBook book, DisplayUnits display) {
            this.book = book;
            this.say = new GroundFindings(display);
            for (Setup setup : book.setups()) {
                if (setups.putIfAbsent(setup.id(), setup) != null) findings.add(say.sameId(setup.id()));
            }
            for (Shot shot : book.shots()) {
                if (shots.putIfAbsent(shot.id(), shot) != null) findings.add(say.sameId(shot.id()));
            }
        }

        Levelled levelled() {
            List<LevelledShot> known = new ArrayList<>();
            Map<ShotPlace, LevelledShot> places = new LinkedHashMap<>();
            for (Shot shot : shots.values()) {
                Optional<Offset> height = heightOf(shot.id(), new TreeSet<>());
                if (height.isEmpty()) {
                    findings.add(say.noHeight(shot.id()));
                    continue;
                }
                Optional<LevelledShot> before =
                        Optional.ofNullable(places.get(shot.place())).filter(first -> shotAgain(first.shot(), shot));
                LevelledShot here = new LevelledShot(shot, height.get());
                if (closes(shot))
                    findings.add(closure(here, "the benchmark", book.benchmark().elevation()));
                else if (before.isPresent())
                    findings.add(closure(here, before.get().id(), before.get().elevation()));
                else {
                    known.add(here);
                    places.putIfAbsent(shot.place(), here);
                }
            }
            List<StandingLevel> levels = new ArrayList<>();
            for (Setup setup : setups.values()) {
                instrument(setup.id(), new TreeSet<>()).ifPresent(hi -> levels.add(new StandingLevel(setup.id(), hi)));
            }
            return new Levelled(known, levels, findings);
        }

        private boolean closes(Shot shot) {
            boolean byRod = shot.height().match(rod -> true, elevation -> false, falls -> false);
            String note = shot.note().strip();
            return byRod
                    && !note.isEmpty()
                    && (note.equalsIgnoreCase(BENCHMARK)
                            || note.equalsIgnoreCase(book.benchmark().mark().strip()));
        }

        /** Whether a rod was read on a shot again after the level had moved: from the same setup it is the same reading twice. */
        private static boolean shotAgain(Shot first, Shot again) {
            String setup = setupOf(again);
            return !setup.isEmpty() && !setup.equals(setupOf(first));
        }

        private static String setupOf(Shot shot) {
            return shot.height().match(rod -> rod.setup(), elevation -> "", falls -> "");
        }

        private Finding closure(LevelledShot shot, String to, Offset known) {
            return say.closure(shot.id(), to, shot.elevation().minus(known).size(), setups.size());
        }

        private Optional<Offset> heightOf(String id, Set<String> asked) {
            if (id.equals(BENCHMARK)) return Optional.of(book.benchmark().elevation());
            Offset known = heights.get(id);
            if (known != null) return Optional.of(known);
            Shot shot = shots.get(id);
            if (shot == null || !asked.add(id)) return Optional.empty();
            Optional<Offset> height = shot.height()
                    .match(
                            rod -> instrument(rod.setup(), asked)
                                    .map(hi -> hi.minus(rod.reading().asOffset())),
                            elevation -> Optional.of(elevation.above()),
                            falls -> heightOf(falls.shot(), asked).map(from -> from.minus(falls.by())));
            height.ifPresent(value -> heights.put(id, value));
            return height;
        }

        private Optional<Offset> instrument(String id, Set<String> asked) {
            Setup setup = setups.get(id);
            if (setup == null) return Optional.empty();
            return heightOf(setup.on(), asked)
                    .map(on -> on.plus(setup.backsight().asOffset()));
        }
    }
}
