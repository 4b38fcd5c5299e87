package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.quantity.Offset;

/** Where a run meets a fence that is not ours: who agreed, and whether the tops meet. */
final class TieIns {
    private TieIns() {}

    static List<Finding> of(Run run, List<Bay> bays, Profile profile, LineFindings say) {
        if (bays.isEmpty()) return List.of();
        Bay first = bays.get(0);
        Bay last = bays.get(bays.size() - 1);
        List<Finding> findings = new ArrayList<>();
        findings.addAll(at(run.first(), run.id(), first.start(), first.topFrom(), profile, say));
        findings.addAll(at(run.last(), run.id(), last.end(), last.topTo(), profile, say));
        return findings;
    }

    private static List<Finding> at(
            RunEnd end, String run, Offset station, Offset top, Profile profile, LineFindings say) {
        return end.match(free -> List.of(), wall -> List.of(), joins -> List.of(), theirs -> {
            List<Finding> findings = new ArrayList<>();
            findings.add(say.tieIn(run, station, theirs));
            Offset ours = top.minus(profile.elevationAt(station));
            theirs.height().value().ifPresent(height -> findings.add(say.tieInHeight(run, station, ours, height)));
            return findings;
        });
    }
}
