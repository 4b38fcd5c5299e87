package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HingeForce;
import plumbleaf.engine.strength.WoodPostStrength;

/**
 * What the hinges of a leaf do in one case.
 *
 * @param hinges forces on the post, in the gate's axes, from the lowest up
 * @param open how far the leaf stands open
 * @param atGrade what the post brings to grade
 * @param duration CD of wood under it
 */
record HingePull(List<HingeForce> hinges, Angle open, BaseAction atGrade, double duration) {
    /** What bends a post where a hinge is fixed: along the run, and across it. */
    record Bent(Moment along, Moment across) {
        double sizeLbIn() {
            return Math.sqrt(along.poundInches() * along.poundInches() + across.poundInches() * across.poundInches());
        }
    }

    static HingePull of(CaseForces forces) {
        return new HingePull(
                forces.hinges(), forces.angle(), forces.hingePost(), WoodPostStrength.duration(forces.combination()));
    }

    /** A blend of two cases in the same state of the leaf: forces are linear. */
    static HingePull blend(CaseForces a, double ofA, CaseForces b, double ofB) {
        List<HingeForce> hinges = new ArrayList<>();
        for (int i = 0; i < a.hinges().size(); i++) {
            HingeForce one = a.hinges().get(i);
            HingeForce other = b.hinges().get(i);
            hinges.add(new HingeForce(
                    one.id(),
                    one.z(),
                    blend(one.horizontal(), ofA, other.horizontal(), ofB),
                    blend(one.across(), ofA, other.across(), ofB),
                    blend(one.down(), ofA, other.down(), ofB)));
        }
        return new HingePull(
                hinges,
                a.angle(),
                a.hingePost().times(ofA).plus(b.hingePost().times(ofB)),
                Math.max(WoodPostStrength.duration(a.combination()), WoodPostStrength.duration(b.combination())));
    }

    private static Force blend(Force a, double ofA, Force b, double ofB) {
        return Force.pounds(a.pounds() * ofA + b.pounds() * ofB);
    }

    double alongLb(int hinge) {
        return hinges.get(hinge).horizontal().pounds();
    }

    double acrossLb(int hinge) {
        return hinges.get(hinge).across().pounds();
    }

    double downLb(int hinge) {
        return hinges.get(hinge).down().pounds();
    }

    /** Sideways, both ways together. */
    double sidewaysLb(int hinge) {
        return Math.sqrt(alongLb(hinge) * alongLb(hinge) + acrossLb(hinge) * acrossLb(hinge));
    }

    /** The moment in the post at a hinge: of all above it, and at the lowest of all that stands on grade, less the shear times its height. */
    Bent bent(int hinge, double pinToAxisIn, double pinAcrossIn) {
        double z = hinges.get(hinge).z().inches();
        if (hinge == 0)
            return new Bent(
                    Moment.poundInches(atGrade.momentAlong().poundInches()
                            - atGrade.along().pounds() * z),
                    Moment.poundInches(atGrade.momentAcross().poundInches()
                            - atGrade.across().pounds() * z));
        double along = 0;
        double across = 0;
        for (int i = hinge; i < hinges.size(); i++) {
            double arm = hinges.get(i).z().inches() - z;
            along += alongLb(i) * arm + downLb(i) * pinToAxisIn;
            across += acrossLb(i) * arm + downLb(i) * pinAcrossIn;
        }
        return new Bent(Moment.poundInches(along), Moment.poundInches(across));
    }

    /** {@code 224 lb along, 12 lb across, 306 lb down}. */
    String words(int hinge) {
        return DecimalText.whole(alongLb(hinge)) + " lb along, " + DecimalText.whole(acrossLb(hinge)) + " lb across, "
                + DecimalText.whole(downLb(hinge)) + " lb down";
    }
}
