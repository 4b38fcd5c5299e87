package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * What a welded leaf needs before it is dipped in zinc: holes that let air out and zinc run off, where to hang it, and what it then weighs. A tube that is closed
 * bursts in the kettle.
 *
 * @param vents by member and end
 * @param hangPoints on the top rail, either side of the centre of gravity of the steel
 * @param steel weight of what is dipped: frame and steel infill, no wood, no hinges, no rods
 * @param zinc what it gains
 */
public record Galvanizing(List<Vent> vents, List<Place> hangPoints, Force steel, Force zinc) {
    /** Of the steel's weight: common practice, no source. */
    private static final double GAIN = 0.05;

    private static final double LEAST_IN = 3.0 / 8;

    /** In end sections, here the mitered corners. */
    private static final Length CORNER = Length.inches(0.5);

    private static final double SHARE = 0.25;

    public Galvanizing {
        vents = List.copyOf(vents);
        hangPoints = List.copyOf(hangPoints);
    }

    /**
     * Holes at one end of a member.
     *
     * @param count of holes, on opposite sides
     * @param where as the shop reads it
     */
    public record Vent(String member, int end, int count, Length diameter, String where) {}

    public static Galvanizing of(Leaf leaf) {
        List<Vent> vents = new ArrayList<>();
        double steel = 0;
        double moment = 0;
        for (Member member : leaf.members()) {
            if (member.role() == MemberRole.ROD) continue;
            steel += member.weight().pounds();
            moment += member.weight().pounds() * member.middle().r().inches();
            if (leaf.make().isBolted()) continue;
            vents(vents, member, 0, member.firstEnd());
            vents(vents, member, 1, member.lastEnd());
        }
        boolean steelPickets = leaf.nailers().isEmpty();
        if (steelPickets)
            for (Picket picket : leaf.pickets()) {
                steel += picket.wet().pounds();
                moment += picket.wet().pounds()
                        * (picket.r().inches() + picket.width().inches() / 2);
            }
        for (Panel panel : leaf.panels()) {
            steel += panel.weight().pounds();
            moment += panel.weight().pounds()
                    * (panel.corners().get(0).r().inches()
                            + panel.corners().get(1).r().inches())
                    / 2;
        }
        return new Galvanizing(
                vents, hangPoints(leaf, moment / steel), Force.pounds(steel), Force.pounds(steel * GAIN));
    }

    /**
     * A hole no smaller than 3/8 in. and a quarter of the inside: of the diameter of a pipe, of the diagonal of a square or rectangular tube, whose corners
     * trap air and zinc. Source: ASTM A385-20 as told by the American Galvanizers Association (3/8 in., edge within 1/2 in. of the weld, two at each end
     * 180 degrees apart, 1/2 in. in end sections; 25 % of the inside diameter); for square tube the diagonal by the design manual of the Galvanizers
     * Association of Australia. Check: GalvanizingCheck (CX35).
     */
    public static Length vent(Section tube) {
        double wall = 2 * tube.nominalWall().inches();
        double deep = tube.depth().inches() - wall;
        double wide = tube.width().inches() - wall;
        double inside = tube.isRound() ? deep : Math.sqrt(deep * deep + wide * wide);
        return Length.inches(Math.max(LEAST_IN, SHARE * inside));
    }

    private static void vents(List<Vent> vents, Member member, int end, MemberEnd how) {
        boolean open = how.cuts().stream().anyMatch(cut -> cut.against().equals("open"));
        if (open) {
            vents.add(new Vent(member.id(), end, 0, Length.ZERO, "leave the end open for the bath, cap it afterwards"));
            return;
        }
        boolean miter = !how.coped()
                && how.cuts().size() == 1
                && how.cuts().get(0).fromSquare().inDegrees() > 20
                && member.role() != MemberRole.BRACE;
        if (miter)
            vents.add(new Vent(
                    member.id(),
                    end,
                    1,
                    CORNER,
                    "in the miter, on the outside of the corner, within 1/2 in. of the weld"));
        else
            vents.add(new Vent(
                    member.id(),
                    end,
                    2,
                    vent(member.section()),
                    member.section().isRound()
                            ? "two, opposite each other, within 1/2 in. of the weld"
                            : "two, in opposite corners of the tube, within 1/2 in. of the weld"));
    }

    /** A quarter of the width either side of the centre of gravity, as far as the rail reaches. */
    private static List<Place> hangPoints(Leaf leaf, double centreIn) {
        Member top = leaf.of(MemberRole.TOP_RAIL).get(0);
        double quarter = leaf.width().inches() / 4;
        List<Place> points = new ArrayList<>();
        for (double r : List.of(centreIn - quarter, centreIn + quarter)) {
            double from = top.from().r().inches();
            double to = top.to().r().inches();
            double at = Math.min(Math.max(r, from), to);
            double z = top.from().z().inches()
                    + (at - from)
                            / (to - from)
                            * (top.to().z().inches() - top.from().z().inches());
            points.add(Place.inPlane(at, z));
        }
        return points;
    }
}
