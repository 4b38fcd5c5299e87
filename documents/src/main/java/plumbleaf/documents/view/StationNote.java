package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.job.ArcChord;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Offset;

/**
 * What an unrolled profile hides or leaves to the eye: corners and curves, which it straightens; runs that meet it; low ground that water crosses.
 *
 * @param to beyond {@code from} for a curve alone
 * @param low whether it is about the ground rather than the line
 */
public record StationNote(Offset from, Offset to, String words, boolean low) {
    /** A bend flatter than this is set out by eye along the string. Judgement. */
    private static final double LEAST_TURN_DEG = 0.5;

    /** Of a run, by station. */
    public static List<StationNote> of(Job job, Layout layout, RunLayout laid, Profile profile) {
        List<StationNote> notes = new ArrayList<>();
        corners(job.run(laid.run()), laid.line().line(), job, notes);
        tees(job, layout, laid, notes);
        for (Profile.LowPoint low : profile.lowPoints())
            notes.add(at(low.at().station(), "low point, " + job.display().length(low.deep()) + " deep", true));
        notes.sort(Comparator.comparing(StationNote::from).thenComparing(StationNote::words));
        return merged(notes);
    }

    /** What lies at one place of the line is told in one note. */
    private static List<StationNote> merged(List<StationNote> notes) {
        List<StationNote> merged = new ArrayList<>();
        for (StationNote note : notes) {
            StationNote last = merged.isEmpty() ? note : merged.get(merged.size() - 1);
            boolean together = !merged.isEmpty() && last.isPointAt(note.from()) && note.isPointAt(note.from());
            if (together) merged.set(merged.size() - 1, at(note.from(), last.words() + "; " + note.words(), false));
            else merged.add(note);
        }
        return List.copyOf(merged);
    }

    private boolean isPointAt(Offset station) {
        return !low && from.equals(to) && Math.abs(from.inches() - station.inches()) < 0.5;
    }

    private static StationNote at(Offset station, String words, boolean low) {
        return new StationNote(station, station, words, low);
    }

    private static void corners(Run run, PlanLine line, Job job, List<StationNote> notes) {
        for (int leg = 0; leg < line.legs(); leg++) {
            Optional<ArcChord> chord = run.legs().get(leg).chord().value();
            Offset station = line.stationOfVertex(leg).asOffset();
            double turn = leg == 0 ? 0 : line.turnAt(leg).inDegrees();
            boolean straight = leg > 0
                    && chord.isEmpty()
                    && run.legs().get(leg - 1).chord().value().isEmpty();
            if (straight && Math.abs(turn) >= LEAST_TURN_DEG)
                notes.add(at(
                        station,
                        "corner, " + DecimalText.upTo(Math.abs(turn), 1) + "\u00b0 to the "
                                + (turn > 0 ? "left" : "right"),
                        false));
            if (chord.isEmpty() || chord.get().index() > 0) continue;
            ArcChord is = chord.get();
            notes.add(new StationNote(
                    station,
                    line.stationOfVertex(leg + is.count()).asOffset(),
                    "curve, radius " + job.display().length(is.arc().radius()) + ", in " + is.count()
                            + (is.count() == 1 ? " chord" : " chords"),
                    false));
        }
    }

    /** Runs that begin or end at a post of this one, and the run that this one meets. */
    private static void tees(Job job, Layout layout, RunLayout laid, List<StationNote> notes) {
        for (RunLayout other : layout.runs()) {
            if (other.run().equals(laid.run()) || other.bays().isEmpty()) continue;
            Run its = job.run(other.run());
            Bay last = other.bays().get(other.bays().size() - 1);
            if (joins(its.first(), laid)) tee(laid, other.bays().get(0).from(), other.run() + " begins here", notes);
            if (joins(its.last(), laid)) tee(laid, last.to(), other.run() + " ends here", notes);
        }
        Run own = job.run(laid.run());
        Offset end = laid.line().line().length().asOffset();
        theirs(own.first(), job).ifPresent(words -> notes.add(at(Offset.ZERO, words, false)));
        theirs(own.last(), job).ifPresent(words -> notes.add(at(end, words, false)));
        meets(own.first()).ifPresent(run -> notes.add(at(Offset.ZERO, "on run " + run, false)));
        if (!own.isRing()) meets(own.last()).ifPresent(run -> notes.add(at(end, "on run " + run, false)));
        else notes.add(at(end, "back at its start", false));
    }

    private static Optional<String> meets(RunEnd end) {
        return end.match(
                free -> Optional.empty(),
                wall -> Optional.empty(),
                joins -> Optional.of(joins.run()),
                theirs -> Optional.empty());
    }

    private static Optional<String> theirs(RunEnd end, Job job) {
        return end.match(
                free -> Optional.empty(),
                wall -> Optional.empty(),
                joins -> Optional.empty(),
                fence -> Optional.of(String.join(", ", EndMarks.words(fence, job.display()))));
    }

    private static boolean joins(RunEnd end, RunLayout laid) {
        return meets(end).filter(laid.run()::equals).isPresent();
    }

    private static void tee(RunLayout laid, String post, String words, List<StationNote> notes) {
        for (Post own : laid.posts()) if (own.id().equals(post)) notes.add(at(own.station(), words, false));
    }
}
