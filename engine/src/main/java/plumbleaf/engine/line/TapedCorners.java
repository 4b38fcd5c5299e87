package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.job.CheckTape;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.Length;

/**
 * How well the corners of a run close: back on its own start where it goes round a yard, and on every tape taken straight across to check them. Nothing is shifted
 * to make it close.
 */
final class TapedCorners {
    /** A steel tape over grass. Common practice, no source. */
    private static final double ONE_IN = 500;

    /** Nobody reads a tape to a corner of a yard better than this. Judgement. */
    private static final Length LEAST = Length.inches(1);

    private TapedCorners() {}

    static List<Finding> of(Run run, PlanLine line, LineFindings say) {
        List<Finding> findings = new ArrayList<>();
        if (run.isRing()) {
            Length off = line.vertex(line.legs()).distanceTo(line.vertex(0));
            findings.add(say.closure(run.id(), off, line.length(), allowed(line.length())));
        }
        for (CheckTape tape : run.checks()) {
            Length drawn = line.pointAt(tape.from()).distanceTo(line.pointAt(tape.to()));
            findings.add(say.checkTape(run.id(), tape, drawn, allowed(tape.taped())));
        }
        return findings;
    }

    /** What a tape of this length may be off. */
    static Length allowed(Length taped) {
        return new Length(Math.max(LEAST.inches(), taped.inches() / ONE_IN));
    }
}
