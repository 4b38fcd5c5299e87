package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.Section;

/**
 * Ice on a leaf, as it weighs on its frame.
 *
 * @param thickness of design, all round: {@code t_d}
 * @param onMembers weight on each member of the leaf, in their order; empty where there is no ice
 * @param onRails weight of the ice on the infill, where it lands
 */
public record IceCoat(Length thickness, List<Force> onMembers, List<RailLoad> onRails) {
    public static final IceCoat NONE = new IceCoat(Length.ZERO, List.of(), List.of());

    /** Glaze, 56 pcf. Source: ASCE 7-16 10.4.1, from memory. */
    private static final double ICE_LB_PER_IN3 = 56 / 1728.0;

    /** A plate that stands plumb takes this share of a ball's coat. Source: ASCE 7-16 10.4.1, from memory. */
    private static final double PLUMB_PLATE = 0.8;

    /** A piece cut in between two rails ends this near to their centrelines, beside half their depth. */
    private static final double NEAR_RAIL_IN = 1;

    public IceCoat {
        onMembers = List.copyOf(onMembers);
        onRails = List.copyOf(onRails);
    }

    public boolean isNone() {
        return thickness.isZero();
    }

    /**
     * Ice on a leaf: on members and steel pickets {@code pi t (D + t)} of their length, D of the circle round the section; on boards, mesh and sheet as plates
     * that stand plumb {@code 0.8 pi t} of one face, mesh as if it had frozen shut. Nailers lie under the boards' coat; hinges and latch carry none. It weighs as
     * the standard asks of a lone member, so that of boards nearer together than twice the coat is counted a little too much.
     * Source: ASCE 7-16 equations 10.4-1 and 10.4-2, from memory; which part is which, judgement. Check: IceCoatTest.
     *
     * @param thickness of design; zero for no ice
     */
    public static IceCoat on(Leaf leaf, Length thickness) {
        if (thickness.isZero()) return NONE;
        double t = thickness.inches();
        List<Force> members = new ArrayList<>();
        for (Member member : leaf.members())
            members.add(Force.pounds(
                    roundLb(circleIn(member.section()), t) * member.cutLength().inches()));
        List<RailLoad> rails = new ArrayList<>();
        boolean boards = !leaf.nailers().isEmpty();
        for (Picket picket : leaf.pickets()) {
            double wide = picket.width().inches();
            double tall = picket.length().inches();
            double pounds = boards ? plateLb(wide * tall, t) : roundLb(wide * Math.sqrt(2), t) * tall;
            double middle = picket.middle().inches();
            double from = picket.r().inches();
            share(leaf, rails, pounds, from, from + wide, picket.n(), middle - tall / 2, middle + tall / 2);
        }
        for (Panel panel : leaf.panels()) {
            double from = panel.corners().get(0).r().inches();
            double to = panel.corners().get(1).r().inches();
            double pounds = plateLb(panel.area().squareInches(), t);
            share(leaf, rails, pounds, from, to, Offset.ZERO, panel.bottomIn(0.5), panel.topIn(0.5));
        }
        return new IceCoat(thickness, members, rails);
    }

    public Force weight() {
        Force sum = Force.ZERO;
        for (Force member : onMembers) sum = sum.plus(member);
        for (RailLoad load : onRails) sum = sum.plus(load.wet());
        return sum;
    }

    /** Its weight line by line, for the calculation book. */
    public List<WorkedLine> lines(Leaf leaf) {
        return IceLines.of(leaf, this);
    }

    static double roundLb(double circleIn, double t) {
        return ICE_LB_PER_IN3 * Math.PI * t * (circleIn + t);
    }

    static double plateLb(double faceIn2, double t) {
        return ICE_LB_PER_IN3 * PLUMB_PLATE * Math.PI * t * faceIn2;
    }

    static double circleIn(Section section) {
        double d = section.depth().inches();
        double w = section.width().inches();
        return section.isRound() ? d : Math.sqrt(d * d + w * w);
    }

    /** A piece's ice lies alike on the rails it crosses or ends at. */
    private static void share(
            Leaf leaf,
            List<RailLoad> loads,
            double pounds,
            double from,
            double to,
            Offset n,
            double bottomIn,
            double topIn) {
        List<Member> rails = new ArrayList<>();
        for (Member rail : leaf.rails()) {
            double reach = rail.section().depth().inches() / 2 + NEAR_RAIL_IN;
            double z = heightIn(rail, (from + to) / 2);
            if (z > bottomIn - reach && z < topIn + reach) rails.add(rail);
        }
        if (rails.isEmpty()) rails.addAll(leaf.rails());
        Force each = Force.pounds(pounds / rails.size());
        for (Member rail : rails)
            loads.add(new RailLoad(rail.id(), Offset.inches(from), Offset.inches(to), n, each, each));
    }

    private static double heightIn(Member rail, double r) {
        double from = rail.from().r().inches();
        double share = (r - from) / (rail.to().r().inches() - from);
        return rail.from().z().inches()
                + share * (rail.to().z().inches() - rail.from().z().inches());
    }
}
