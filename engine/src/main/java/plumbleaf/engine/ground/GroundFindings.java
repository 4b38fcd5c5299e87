package plumbleaf.engine.ground;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * What can be said about a ground book, in the words of the trade.
 *
 * @param display units that lengths are told in
 */
record GroundFindings(DisplayUnits display) {
    /** Allowed misclosure of one setup; it grows with the square root of their number. Common practice, no source. */
    static final Length CLOSURE_PER_SETUP = Length.inches(0.25);

    /** A shot this far off its neighbours is looked at again. Common practice, no source. */
    static final Length BLUNDER = Length.feet(2);

    /** Shots further apart than this leave the ground between them unknown. Judgement. */
    static final Length GAP = Length.feet(50);

    /** Two shots at one place agree to this: what tape and line level can do. Common practice, no source. */
    static final Length REPEAT = Length.inches(0.5);

    Finding sameId(String id) {
        return Checked.note(
                "ground.same-id",
                Severity.MUST_FIX,
                id,
                "Two entries of the ground book are called " + id + "; only the first was used. Rename one.",
                Basis.job("ids are used once"));
    }

    Finding noHeight(String id) {
        return Checked.note(
                "ground.reference",
                Severity.CANNOT_SAY,
                id,
                "The height of shot " + id
                        + " does not lead back to the benchmark: its setup or the shot it falls from is missing, or "
                        + "they lead back to itself. The shot was left out.",
                Basis.job("ground book"));
    }

    Finding noPlace(String id) {
        return Checked.note(
                "ground.place",
                Severity.CANNOT_SAY,
                id,
                "Shot " + id + " lies on a run or beyond or taped from a shot that is not there. It was left out.",
                Basis.job("ground book"));
    }

    Finding beyondRun(String id, String run, Length station, Length end) {
        return Checked.note(
                "ground.beyond-run",
                Severity.CAUTION,
                id,
                "Shot " + id + " is at station " + text(station) + " of " + run + ", which ends at " + text(end)
                        + ". The last leg was taken straight on.",
                Basis.job("ground book"));
    }

    /** @param to what the level came back to: the benchmark, or a shot by its name */
    Finding closure(String id, String to, Length off, int setups) {
        double limitIn = CLOSURE_PER_SETUP.inches() * Math.sqrt(Math.max(1, setups));
        return Checked.of(
                "ground.closure",
                Severity.MUST_FIX,
                id,
                "The level comes back to " + to + " " + text(off) + " off after " + setups
                        + (setups == 1 ? " setup." : " setups."),
                Basis.commonPractice("1/4 in. times the square root of the setups"),
                Measure.demand(off.inches(), limitIn, "in"));
    }

    Finding onePlace(String first, String second, Length apart) {
        boolean agree = apart.compareTo(REPEAT) <= 0;
        return new Checked(
                "ground.one-place",
                agree ? Severity.CAUTION : Severity.MUST_FIX,
                second,
                "Shots " + first + " and " + second + " are at one place and their heights differ by " + text(apart)
                        + "; " + first + " was used. "
                        + (agree ? "Strike one." : "Shoot it again; at a step keep both apart by a hand's width."),
                Basis.commonPractice("repeat shots agree to 1/2 in."),
                Optional.of(Measure.demand(apart.inches(), REPEAT.inches(), "in")),
                List.of());
    }

    Finding blunder(String id, Length off) {
        return Checked.of(
                "ground.blunder",
                Severity.CAUTION,
                id,
                "Shot " + id + " is " + text(off)
                        + " off the line of its neighbors. Read it again before relying on it.",
                Basis.commonPractice("2 ft off its neighbors"),
                Measure.demand(off.inches(), BLUNDER.inches(), "in"));
    }

    Finding farOff(String id, Length nearest, Length others) {
        return Checked.note(
                "ground.far",
                Severity.CAUTION,
                id,
                "Shot " + id + " lies " + text(nearest) + " from the nearest other shot, and no other shot more than "
                        + text(others)
                        + " from its own. Read its place again: a digit of its northing or easting may be"
                        + " wrong.",
                Basis.judgement("four times as far off as any other, and 50 ft"));
    }

    Finding gap(String run, ProfilePoint from, ProfilePoint to) {
        Length apart = to.station().minus(from.station()).size();
        return Checked.of(
                "ground.gap",
                Severity.CAUTION,
                run,
                "No shot of " + run + " between " + from.shot() + " and " + to.shot() + ", " + text(apart)
                        + " apart: the ground is taken as straight there. Shoot every hollow and crest.",
                Basis.judgement("50 ft between shots"),
                Measure.demand(apart.inches(), GAP.inches(), "in"));
    }

    /** What two tapes may lack, or a third one be off, before somebody misread one. Common practice, no source. */
    private static final double TAPE_IN = 500;

    /** Nobody reads a tape to a point of the ground better than this. Judgement. */
    private static final Length TAPE_LEAST = Length.inches(1);

    /** Tapes that meet at less than 30 degrees, or at more than 150, double every error of theirs. Judgement. */
    private static final double FLAT = 0.5;

    /** What a tape along the ground comes to in plan; where it is none of it, one of the two readings is wrong. */
    Finding tapedAlong(String id, ShotPlace.After after, Length along) {
        boolean possible = !along.isZero();
        return Checked.note(
                "ground.tape",
                possible ? Severity.PASS : Severity.MUST_FIX,
                id,
                possible
                        ? "Shot " + id + " was taped along the ground from " + after.shot() + ": " + text(after.over())
                                + " on the tape are " + text(along) + " in plan."
                        : "Shot " + id + " was taped along the ground from " + after.shot()
                                + ", and lies further above or below it than the tape is long. Read both again.",
                Basis.clause("plane geometry, sqrt(L^2 - dz^2)"));
    }

    /** Nobody said, and it matters: the question, with both answers to press. */
    Finding tapeUnsaid(String id, ShotPlace.After after, Length along) {
        String edit = "ground.shots[" + id + "].taped=";
        return new Checked(
                "ground.tape",
                Severity.CAUTION,
                id,
                "How was the tape held from " + after.shot() + " to " + id
                        + "? Nobody said: it is taken as level. Had it lain along the ground, its "
                        + text(after.over()) + " would be " + text(along) + " in plan.",
                Basis.commonPractice("1 in 500 with a tape"),
                Optional.empty(),
                List.of(
                        Remedy.ofEdit("tape-level", "it was held level", edit + TapeLay.LEVEL.key()),
                        Remedy.ofEdit("tape-slope", "it lay along the ground", edit + TapeLay.SLOPE.key())));
    }

    /** How two tapes meet. */
    Finding tapes(String id, ShotPlace.Tapes tapes, TapedPoint point) {
        String where = "Shot " + id + " lies " + text(tapes.length()) + " from " + tapes.from() + " and "
                + text(tapes.andLength()) + " from " + tapes.and();
        if (!point.lacks().isZero())
            return Checked.of(
                    "ground.tapes",
                    Severity.MUST_FIX,
                    id,
                    where + ": the two tapes lack " + text(point.lacks())
                            + " to meet. It was put on the line between the two. Tape it again.",
                    Basis.commonPractice("1 in 500 with a tape"),
                    Measure.demand(
                            point.lacks().inches(),
                            allowed(tapes.length().plus(tapes.andLength())).inches(),
                            "in"));
        boolean flat = point.sine() < FLAT;
        return Checked.note(
                "ground.tapes",
                flat ? Severity.CAUTION : Severity.PASS,
                id,
                where
                        + (flat
                                ? ": the tapes meet at so flat an angle that an inch on a tape moves it "
                                        + DecimalText.upTo(1 / Math.max(point.sine(), 0.01), 1)
                                        + " in. Tape it from points further round."
                                : ", on the " + (tapes.left() ? "left" : "right")
                                        + " of the way from the first to the second"
                                        + (tapes.check().isPresent() ? "." : "; no third tape checks it.")),
                Basis.judgement("tapes that meet at 30 to 150 degrees"));
    }

    /** How a third tape closes. */
    Finding thirdTape(String id, ShotPlace.Tape tape, Length worked) {
        Length off = worked.asOffset().minus(tape.length().asOffset()).size();
        return Checked.of(
                "ground.third-tape",
                Severity.MUST_FIX,
                id,
                "From " + tape.from() + " to " + id + " the third tape read " + text(tape.length())
                        + "; the other two make it " + text(worked) + ", " + text(off) + " off.",
                Basis.commonPractice("1 in 500 with a tape"),
                Measure.demand(off.inches(), allowed(tape.length()).inches(), "in"));
    }

    static Length allowed(Length taped) {
        return new Length(Math.max(TAPE_LEAST.inches(), taped.inches() / TAPE_IN));
    }

    Finding unmeasured(String run) {
        return Checked.note(
                "ground.missing",
                Severity.CANNOT_SAY,
                run,
                "No shot lies on " + run + ": its ground is taken as level at the benchmark's zero.",
                Basis.job("ground book"));
    }

    Finding oneShot(String run, String shot) {
        return Checked.note(
                "ground.one-shot",
                Severity.CAUTION,
                run,
                "Only " + shot + " lies on " + run + ": its ground is taken as level.",
                Basis.job("ground book"));
    }

    Finding extrapolated(String run, Offset from, Offset to, Slope grade) {
        return Checked.note(
                "ground.extrapolated",
                Severity.CAUTION,
                run,
                "No shot of " + run + " from station " + text(from.size()) + " to " + text(to.size())
                        + ": the last grade, " + DecimalText.upTo(grade.inPercent(), 1)
                        + " %, was carried on. Take a shot at its end.",
                Basis.job("ground book"));
    }

    Finding lowPoint(String run, ProfilePoint low, Length deep) {
        return Checked.note(
                "ground.low-point",
                Severity.CAUTION,
                run,
                "The ground along " + run + " is lowest at " + low.shot() + ", station "
                        + text(low.station().size()) + ", "
                        + text(deep)
                        + " below both sides: water may cross or stand here. Raise the fence or put in a grate; do "
                        + "not plug it.",
                Basis.commonPractice("low points of the profile"));
    }

    Finding crossingLines(String first, String second) {
        return Checked.note(
                "ground.breaklines-cross",
                Severity.MUST_FIX,
                first,
                "The break line from " + first + " to " + second
                        + " crosses another line of the ground; the part that does was "
                        + "left out. Put a shot where they cross.",
                Basis.job("ground book"));
    }

    Finding unknownInBreakline(String what, String shot) {
        return Checked.note(
                "ground.breakline",
                Severity.CANNOT_SAY,
                shot,
                "The break line \"" + what + "\" names " + shot
                        + ", which is no point of the ground. The line was broken there.",
                Basis.job("ground book"));
    }

    Finding beyondShots(String part, Length far) {
        return Checked.note(
                "ground.extrapolated",
                Severity.CAUTION,
                part,
                "The ground at " + part + " is needed " + text(far)
                        + " beyond the outermost shots: the nearest triangle was carried " + "on. Take a shot there.",
                Basis.job("ground book"));
    }

    Finding crossSlopeAssumed(String run, Slope crossSlope) {
        return Checked.note(
                "ground.cross-slope",
                Severity.CAUTION,
                run,
                "Fewer than three shots off one line near the gate on " + run
                        + ": beside the run the ground is taken at a cross slope of "
                        + DecimalText.upTo(crossSlope.inPercent(), 1) + " %. Shoot the swing side.",
                Basis.job("ground book"));
    }

    private String text(Length length) {
        return display.length(length);
    }
}
