package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import plumbleaf.engine.frame.Extreme;
import plumbleaf.engine.frame.Extremes;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Internal;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.Section;

/** A member of a leaf's frame where it is strained most, found over all pieces it is cut into by its nodes. */
final class StrainedMember {
    private StrainedMember() {}

    static List<MemberForce> all(Collection<Chain> chains, FrameSolution solved, String loadCase) {
        List<MemberForce> all = new ArrayList<>();
        for (Chain chain : chains) all.add(of(chain, solved, loadCase));
        return all;
    }

    static MemberForce of(Chain chain, FrameSolution solved, String loadCase) {
        Section section = chain.member.section();
        Internal most = new Internal(0, 0, 0, 0, 0, 0);
        double strain = -1;
        for (Chain.Piece piece : chain.pieces()) {
            Extremes extremes = solved.extremes(loadCase, piece.member());
            for (Extreme each : List.of(
                    extremes.mzMost(),
                    extremes.mzLeast(),
                    extremes.myMost(),
                    extremes.myLeast(),
                    extremes.bendingMost())) {
                double here = strain(section, each.forces());
                if (here > strain) {
                    strain = here;
                    most = each.forces();
                }
            }
        }
        List<Chain.Piece> pieces = chain.pieces();
        Chain.Piece last = pieces.get(pieces.size() - 1);
        MemberForce.End here = end(most);
        return new MemberForce(
                chain.member.id(),
                here.axial(),
                here.shear(),
                here.inPlane(),
                here.outOfPlane(),
                here.torsion(),
                List.of(
                        end(solved.internalAt(loadCase, pieces.get(0).member(), 0)),
                        end(solved.internalAt(loadCase, last.member(), solved.memberLengthIn(last.member())))));
    }

    private static MemberForce.End end(Internal forces) {
        return new MemberForce.End(
                Force.pounds(forces.nLb()),
                Force.pounds(Math.sqrt(forces.vyLb() * forces.vyLb() + forces.vzLb() * forces.vzLb())),
                Moment.poundInches(Math.abs(forces.mzLbIn())),
                Moment.poundInches(Math.abs(forces.myLbIn())),
                Moment.poundInches(Math.abs(forces.tLbIn())));
    }

    private static double strain(Section section, Internal forces) {
        return Math.abs(forces.nLb()) / section.areaIn2()
                + Math.abs(forces.mzLbIn()) / section.sxIn3()
                + Math.abs(forces.myLbIn()) / section.syIn3();
    }
}
