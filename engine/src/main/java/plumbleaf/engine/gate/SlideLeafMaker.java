package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.Section;

/**
 * Draws the leaf of a cantilever slide gate out: two rails that run through from the end of the tail to the nose, uprights between them, and in every panel a
 * diagonal that rises towards the front rollers, so that it is drawn and not pressed while the nose hangs out. Cladding covers the opening and leaves the tail bare.
 */
final class SlideLeafMaker {
    /** r of the front upright's outer edge, where cladding begins: on the face of the opening. */
    private static final double CLAD_FROM_IN = 0;

    /** Whatever was asked for: its rails carry over the rollers and are not broken at the uprights. */
    static final Joint JOINT = Joint.BUTTED_RAILS;

    private final String id;
    private final Outline outline;
    private final GateParts parts;
    private final Section tube;
    private final FrameLines lines;
    private final LeafMembers made;
    private final double depthIn;

    private SlideLeafMaker(String id, Outline outline, GateParts parts) {
        this.id = id;
        this.outline = outline;
        this.parts = parts;
        this.tube = parts.frame();
        this.depthIn = tube.depth().inches();
        this.lines = FrameLines.of(outline, tube, 0, List.of());
        this.made = LeafMembers.begun(id, lines, tube, JOINT);
    }

    /**
     * @param uprights the most from one upright to the next
     * @param latchZ height of the latch from grade at the face
     */
    static Leaf make(String id, Hand hand, Outline outline, GateParts parts, Length uprights, Offset latchZ) {
        SlideLeafMaker maker = new SlideLeafMaker(id, outline, parts);
        maker.frame(uprights.inches());
        return maker.clad(hand, latchZ);
    }

    private void frame(double mostIn) {
        List<Double> at = new ArrayList<>();
        double tail = lines.hingeStileIn();
        double front = CLAD_FROM_IN + depthIn / 2;
        double nose = lines.latchStileIn();
        evenly(at, tail, front, mostIn);
        evenly(at, front, nose, mostIn);
        at.add(nose);
        upright(MemberRole.TAIL_UPRIGHT, tail);
        upright(MemberRole.NOSE_UPRIGHT, nose);
        rail(MemberRole.BOTTOM_RAIL, 0);
        rail(MemberRole.TOP_RAIL, 1);
        for (double r : at.subList(1, at.size() - 1)) upright(MemberRole.UPRIGHT, r);
        joints(at);
        diagonals(at);
        splices();
    }

    private static void evenly(List<Double> at, double from, double to, double mostIn) {
        int panels = Math.max(1, (int) Math.ceil((to - from) / mostIn - 1e-9));
        for (int i = 0; i < panels; i++) at.add(from + (to - from) * i / panels);
    }

    private String bottomId() {
        return made.members().get(2).id();
    }

    private void upright(MemberRole role, double r) {
        Cut low = new Cut(Angle.ZERO, id + ".m3");
        Cut high = new Cut(Angle.ZERO, id + ".m4");
        made.place(
                role,
                tube,
                Place.inPlane(r, lines.overRailIn(0, r)),
                Place.inPlane(r, lines.underRailIn(1, r)),
                new MemberEnd(List.of(low), tube.isRound()),
                new MemberEnd(List.of(high), tube.isRound()),
                EndsTurn.PARALLEL);
    }

    private void rail(MemberRole role, int rail) {
        double from = outline.hingeEdge().inches();
        double to = outline.latchEdge().inches();
        Cut open = new Cut(Angle.ZERO, "open");
        made.place(
                role,
                tube,
                Place.inPlane(from, lines.rails().get(rail).heightIn(from)),
                Place.inPlane(to, lines.rails().get(rail).heightIn(to)),
                MemberEnd.one(open),
                MemberEnd.one(open),
                EndsTurn.PARALLEL);
    }

    /** Two to an upright, the lower first: a rail runs through at both. */
    private void joints(List<Double> at) {
        for (int i = 0; i < at.size(); i++) {
            String upright = uprightAt(i, at.size()).id();
            for (int rail = 0; rail < 2; rail++) {
                Place where = Place.inPlane(at.get(i), lines.rails().get(rail).heightIn(at.get(i)));
                String joint = made.newJoint(
                        where, List.of(made.members().get(2 + rail).id(), upright));
                made.weldTee(joint, Angle.ZERO);
            }
        }
    }

    private Member uprightAt(int index, int count) {
        if (index == 0) return made.members().get(0);
        return made.members().get(index == count - 1 ? 1 : 3 + index);
    }

    /** In every panel; none over the opening where no diagonals were asked for. */
    private void diagonals(List<Double> at) {
        boolean overOpening = parts.bracing().diagonals() > 0;
        int count = at.size();
        for (int i = 0; i + 1 < count; i++) {
            boolean nose = at.get(i) > CLAD_FROM_IN;
            if (nose && !overOpening) continue;
            double from = at.get(i) + depthIn / 2;
            double to = at.get(i + 1) - depthIn / 2;
            double lowR = nose ? to : from;
            double highR = nose ? from : to;
            Place low = Place.inPlane(lowR, lines.overRailIn(0, lowR));
            Place high = Place.inPlane(highR, lines.underRailIn(1, highR));
            int lowUpright = nose ? i + 1 : i;
            int highUpright = nose ? i : i + 1;
            MemberEnd foot = point(low, high, uprightAt(lowUpright, count).id(), bottomId());
            MemberEnd head = point(
                    low,
                    high,
                    uprightAt(highUpright, count).id(),
                    made.members().get(3).id());
            Member brace = made.place(MemberRole.BRACE, tube, low, high, foot, head, EndsTurn.PARALLEL);
            join(2 * lowUpright, brace, foot);
            join(2 * highUpright + 1, brace, head);
        }
    }

    private void join(int joint, Member brace, MemberEnd end) {
        FrameJoint before = made.joints().get(joint);
        List<String> all = new ArrayList<>(before.members());
        all.add(brace.id());
        made.joints().set(joint, new FrameJoint(before.id(), before.at(), all));
        made.weldPoint(before.id(), end);
    }

    /** The point of a diagonal in a corner: a cut against the upright, then one against the rail. */
    private static MemberEnd point(Place low, Place high, String upright, String rail) {
        double run = Math.abs(high.r().inches() - low.r().inches());
        double climb = StrictMath.atan((high.z().inches() - low.z().inches()) / run);
        return new MemberEnd(
                List.of(new Cut(Angle.radians(climb), upright), new Cut(Angle.radians(Math.PI / 2 - climb), rail)),
                false);
    }

    /** Where a rail is longer than a stick, its pieces meet in a full-strength butt weld over a backing. */
    private void splices() {
        double round = Math.PI * depthIn;
        double flat = 2 * (depthIn + tube.width().inches());
        for (int rail = 2; rail <= 3; rail++) {
            Member member = made.members().get(rail);
            int cuts = Sticks.pieces(member).size() - 1;
            if (cuts > 0)
                made.weld(new Weld(
                        member.id(),
                        WeldKind.GROOVE,
                        Length.inches(cuts * (tube.isRound() ? round : flat)),
                        "splice of the rail, full penetration on a backing, all round, ground flush",
                        cuts,
                        true));
        }
    }

    private Leaf clad(Hand hand, Offset latchZ) {
        Outline face = new Outline(
                Offset.inches(CLAD_FROM_IN),
                outline.latchEdge(),
                outline.bottomAtPin(),
                outline.topAtPin(),
                outline.bottom(),
                outline.top(),
                outline.infillBelow(),
                outline.crest());
        FrameLines over = FrameLines.of(face, tube, 0, List.of());
        List<Member> frame = made.members();
        Infill infill = parts.cladding()
                .match(
                        open -> Infill.none(),
                        wood -> Infill.of(face, over, frame, wood, LeafMaker.bolts(over)),
                        pickets -> SteelPickets.in(id, face, over, frame, pickets),
                        mesh -> Panels.of(id, over, frame, mesh),
                        sheet -> Panels.of(id, over, frame, sheet));
        List<Member> members =
                LeafMaker.drilled(frame, List.of(), parts.hinge().fixing().toLeaf(), infill, parts.cladding());
        List<Weld> welds = new ArrayList<>(made.welds());
        welds.addAll(infill.welds());
        Place latch = Place.at(outline.latchEdge().inches(), 0, latchZ.inches());
        List<Fitting> fittings = new ArrayList<>();
        fittings.add(new Fitting("latch", latch, parts.latch().weight()));
        fittings.addAll(infill.bolts());
        return new Leaf(
                id,
                hand,
                outline,
                new LeafMake(tube, parts.bracing(), JOINT, parts.bracket()),
                members,
                made.joints(),
                List.of(),
                latch,
                outline.corners().get(1),
                welds,
                infill.nailers(),
                infill.pickets(),
                infill.trim(),
                infill.gap(),
                infill.panels(),
                infill.loads(),
                fittings,
                LeafWeights.of(members, infill, fittings));
    }
}
