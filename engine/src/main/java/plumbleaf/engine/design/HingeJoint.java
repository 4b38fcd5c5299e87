package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.CaseForces;

/**
 * One joint between leaf and post.
 *
 * @param id of its finding
 * @param link as the load path calls it
 * @param part what it belongs to: a hinge or a post
 * @param what it is made of, in a sentence
 * @param use how much of it a case uses
 * @param reserve what it is expected to carry over its allowable
 * @param lines of the calculation book
 */
record HingeJoint(
        String id,
        String link,
        String part,
        String what,
        Use use,
        Numbers numbers,
        String formula,
        String clause,
        double reserve,
        Lines lines) {

    /** The calculation line by line. */
    interface Lines {
        List<WorkedLine> of(HingePull pull);
    }

    /** How much of a joint a case uses: 1 is all. */
    interface Use {
        double of(HingePull pull);
    }

    /** The numbers put in. */
    interface Numbers {
        String of(HingePull pull);
    }

    /** The case that uses a joint most. */
    record Worst(CaseForces forces, double utilisation) {}

    Worst worst(List<CaseForces> cases, boolean withWind) {
        Worst worst = new Worst(cases.get(0), -1);
        for (CaseForces each : cases) {
            if (!withWind && each.combination().hasWind()) continue;
            double here = use.of(HingePull.of(each));
            if (Ties.isMore(here, worst.utilisation())) worst = new Worst(each, here);
        }
        return worst;
    }

    LinkUse link(List<CaseForces> cases) {
        Worst worst = worst(cases, true);
        return new LinkUse(
                link,
                part,
                worst.utilisation(),
                name(worst.forces()),
                new LinkWork(
                        formula,
                        numbers.of(HingePull.of(worst.forces())),
                        clause,
                        lines.of(HingePull.of(worst.forces()))));
    }

    /** Too weak without wind is a must-fix whatever the basis; too weak in wind is one on the engineered basis. */
    Finding finding(List<CaseForces> cases, DesignBasis basis) {
        Worst still = worst(cases, false);
        Worst windy = worst(cases, true);
        boolean stillFails = still.utilisation() > 1;
        Worst told = stillFails ? still : windy;
        Severity failed = stillFails || basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
        return Checked.of(
                id,
                failed,
                part,
                part + ": " + what + " carries " + DecimalText.fixed(told.utilisation(), 2) + " of what it may ("
                        + name(told.forces()) + "): " + numbers.of(HingePull.of(told.forces())) + ".",
                Basis.clause(clause),
                Measure.demand(told.utilisation(), 1, ""));
    }

    static String name(CaseForces forces) {
        String wind = forces.combination().hasWind() ? ", " + forces.wind().key() : "";
        return forces.combination().key() + ", leaf " + forces.state().key() + wind;
    }
}
