package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.LeafState;

/**
 * Bar and keeper of a latch: what the wind leans on the closed leaf, a person who throws their weight at it, and the leaf's own slam.
 *
 * @param windy the case in which the wind pushes hardest
 * @param slam peak force of the strike, zero where the leaf strikes no post
 */
record LatchCheck(LatchModel latch, CaseForces windy, Force person, Force slam) {
    static LatchCheck of(LatchModel latch, List<CaseForces> cases, Force person, Force slam) {
        CaseForces most = cases.get(0);
        double push = -1;
        for (CaseForces each : cases) {
            if (each.state() != LeafState.CLOSED
                    || !Ties.isMore(Math.abs(each.hold().pounds()), push)) continue;
            push = Math.abs(each.hold().pounds());
            most = each;
        }
        return new LatchCheck(latch, most, person, slam);
    }

    private double windLb() {
        return Math.abs(windy.hold().pounds());
    }

    /** Wind or person, whichever leans harder on it, over what it holds. */
    private double use() {
        return Math.max(windLb(), person.pounds()) / latch.holds().pounds();
    }

    List<LinkUse> links(String gate) {
        if (latch.holds().isZero()) return List.of();
        boolean wind = windLb() >= person.pounds();
        return List.of(new LinkUse(
                "latch",
                gate,
                use(),
                wind ? HingeJoint.name(windy) : "a person against the leaf",
                new LinkWork(
                        "F / what the latch's sheet says it holds",
                        DecimalText.whole(Math.max(windLb(), person.pounds())) + " lb of "
                                + DecimalText.whole(latch.holds().pounds()),
                        latch.source(),
                        List.of(WorkedLine.of("ratio", "max(Fw; Fp) / Fa")
                                .put("Fw", windLb(), "lb")
                                .put("Fp", person)
                                .put("Fa", latch.holds())
                                .note("wind, a person, what its sheet says")
                                .gives(use())))));
    }

    List<Finding> findings(String gate, DesignBasis basis) {
        if (latch.holds().isZero())
            return List.of(Checked.note(
                    "latch.unknown",
                    Severity.CANNOT_SAY,
                    gate,
                    gate + ": what " + latch.name() + " holds is not known; enter its maker's sheet.",
                    Basis.judgement("unknown is never a pass")));
        List<Finding> findings = new ArrayList<>();
        findings.add(push(
                "latch.wind",
                basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION,
                gate,
                "the wind leans on it with",
                windLb(),
                HingeJoint.name(windy)));
        findings.add(push(
                "latch.person",
                Severity.MUST_FIX,
                gate,
                "a person throws against it",
                person.pounds(),
                "their weight, judgement"));
        if (!slam.isZero())
            findings.add(push(
                    "latch.slam",
                    Severity.CAUTION,
                    gate,
                    "the leaf let slam strikes it with",
                    slam.pounds(),
                    "all of the leaf's energy taken by post and footing"));
        return findings;
    }

    private Finding push(String id, Severity failed, String gate, String what, double lb, String from) {
        return Checked.of(
                id,
                failed,
                gate,
                gate + ": the " + latch.name() + " holds "
                        + DecimalText.whole(latch.holds().pounds()) + " lb; " + what + " " + DecimalText.whole(lb)
                        + " lb (" + from + ").",
                Basis.judgement("push square on the leaf against the latch's rating; " + latch.source()),
                Measure.demand(lb, latch.holds().pounds(), "lb"));
    }
}
