package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.job.Leg;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Taped;
import plumbleaf.engine.quantity.Length;

/**
 * How the tape lay on each leg: what one along the ground comes to in plan, and where nobody said and the ground is steep enough for it to matter, the question with
 * both answers. Check: TapedPointCheck.
 */
final class TapedLegs {
    private TapedLegs() {}

    static List<Finding> of(Run run, PlanLine line, Profile profile, LineFindings say) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < run.legs().size(); i++) {
            Leg leg = run.legs().get(i);
            if (leg.chord().isSaid()) continue;
            Length level = line.lengths().get(i);
            Length along = profile.levelLength(line.stationOfVertex(i), leg.length());
            boolean matters = less(leg.length(), along).compareTo(TapedCorners.allowed(leg.length())) > 0;
            if (leg.taped() == Taped.SLOPE) findings.add(say.tapedAlong(run.id(), i, leg.length(), level));
            else if (!leg.tape().isSaid() && matters) findings.add(say.tapeUnsaid(run.id(), i, leg.length(), along));
        }
        return findings;
    }

    /** What a tape along the ground loses in plan; a hair below nothing is rounding. */
    static Length less(Length tape, Length level) {
        return new Length(Math.max(0, tape.inches() - level.inches()));
    }
}
