package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.RodRuns;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.section.Section;

/** Cuts the members of a leaf's frame: stiles, rails and braces, with joints and welds. */
final class LeafMembers {
    private final String leaf;
    private final FrameLines lines;
    private final Section tube;
    private final Joint joint;
    private final double depthIn;
    private final List<Member> members = new ArrayList<>();
    private final List<FrameJoint> joints = new ArrayList<>();
    private final List<Weld> welds = new ArrayList<>();
    private final List<Fitting> fittings = new ArrayList<>();

    /** A pressed steel corner with its four bolts. Judgement; its maker says. */
    private static final Force BRACKET = Force.pounds(1.5);

    private LeafMembers(String leaf, FrameLines lines, Section tube, Joint joint) {
        this.leaf = leaf;
        this.lines = lines;
        this.tube = tube;
        this.joint = joint;
        this.depthIn = tube.depth().inches();
    }

    /** Nothing cut yet: for a frame that is made up member by member. */
    static LeafMembers begun(String leaf, FrameLines lines, Section tube, Joint joint) {
        return new LeafMembers(leaf, lines, tube, joint);
    }

    static LeafMembers cut(String leaf, FrameLines lines, Section tube, Joint joint, Bracing bracing) {
        LeafMembers made = new LeafMembers(leaf, lines, tube, joint);
        made.stile(MemberRole.HINGE_STILE, lines.hingeStileIn());
        made.stile(MemberRole.LATCH_STILE, lines.latchStileIn());
        for (int rail = 0; rail < lines.rails().size(); rail++) made.rail(rail);
        made.jointsOfRails();
        made.keptSquare(bracing);
        return made;
    }

    private void keptSquare(Bracing bracing) {
        boolean known = bracing.match(this::tubes, this::crossed, this::rods);
        if (!known) throw new IllegalStateException("A bracing was not cut");
    }

    private boolean tubes(Bracing.Tubes tubes) {
        if (tubes.count() == 2 && lines.rails().size() == 2) bracesToTheLatchStile();
        else for (int panel = 0; panel < tubes.count(); panel++) brace(panel);
        return true;
    }

    private boolean crossed(Bracing.Cross cross) {
        brace(0);
        new CrossBrace(this, members.get(members.size() - 1)).cut();
        return true;
    }

    private boolean rods(Bracing.Rod rod) {
        RodBrace rods = new RodBrace(this, rod);
        if (rod.runs() != RodRuns.FROM_LOW_HINGE) rods.fromTopHinge();
        if (rod.runs() != RodRuns.FROM_TOP_HINGE) rods.fromLowHinge();
        return true;
    }

    /** Brackets, and what belongs to a rod. */
    List<Fitting> fittings() {
        return fittings;
    }

    void fit(Fitting fitting) {
        fittings.add(fitting);
    }

    FrameLines lines() {
        return lines;
    }

    double depthIn() {
        return depthIn;
    }

    Section tube() {
        return tube;
    }

    FrameJoint jointAt(int stile, int rail) {
        return joints.get(2 * rail + stile);
    }

    /** Adds a member whose ends are known. */
    Member place(
            MemberRole role, Section section, Place from, Place to, MemberEnd first, MemberEnd last, EndsTurn ends) {
        add(role, section, from, to, first, last, ends);
        return members.get(members.size() - 1);
    }

    /** A joint of its own, the member that runs through first. */
    String newJoint(Place at, List<String> meeting) {
        String name = leaf + ".j" + (joints.size() + 1);
        joints.add(new FrameJoint(name, at, meeting));
        return name;
    }

    void weld(Weld weld) {
        welds.add(weld);
    }

    void joins(int stile, int rail, Member member) {
        int which = 2 * rail + stile;
        FrameJoint corner = joints.get(which);
        List<String> all = new ArrayList<>(corner.members());
        all.add(member.id());
        joints.set(which, new FrameJoint(corner.id(), corner.at(), all));
    }

    List<Member> members() {
        return members;
    }

    List<FrameJoint> joints() {
        return joints;
    }

    List<Weld> welds() {
        return welds;
    }

    /** How far a member's long point at its first end lies before its centreline's beginning. */
    static double datumBeforeIn(Member member) {
        return beyondIn(member.section(), member.firstEnd());
    }

    /** A coped end reaches with its two ears to the axis of the tube it meets: {@code R / cos a} beyond that tube's face. */
    private static double beyondIn(Section tube, MemberEnd end) {
        if (end.cuts().size() != 1) return 0;
        if (end.coped())
            return tube.depth().inches()
                    / 2
                    / StrictMath.cos(end.cuts().get(0).fromSquare().radians());
        return MiterCuts.beyondCentreline(tube.depth(), end.fromSquare()).inches();
    }

    private void stile(MemberRole role, double r) {
        boolean atHinge = role == MemberRole.HINGE_STILE;
        Slope away = Slope.ratio(atHinge ? bottom().slope() : -bottom().slope());
        Slope awayAtTop = Slope.ratio(atHinge ? top().slope() : -top().slope());
        if (joint == Joint.MITERED) {
            Angle low = MiterCuts.miter(MiterCuts.corner(away, false));
            Angle high = MiterCuts.miter(MiterCuts.corner(awayAtTop, true));
            add(
                    role,
                    Place.inPlane(r, bottom().heightIn(r)),
                    Place.inPlane(r, top().heightIn(r)),
                    MemberEnd.one(new Cut(low, id(2))),
                    MemberEnd.one(new Cut(high, id(lines.rails().size() + 1))),
                    EndsTurn.OPPOSED);
            return;
        }
        double low = lines.outline().bottom().ratio();
        double high = lines.outline().top().ratio();
        if (joint.railsRunThrough()) {
            MemberEnd foot = new MemberEnd(List.of(new Cut(slant(low), id(2))), tube.isRound());
            MemberEnd head =
                    new MemberEnd(List.of(new Cut(slant(high), id(lines.rails().size() + 1))), tube.isRound());
            add(
                    role,
                    Place.inPlane(r, lines.overRailIn(0, r)),
                    Place.inPlane(r, lines.underRailIn(lines.rails().size() - 1, r)),
                    foot,
                    head,
                    low * high < 0 ? EndsTurn.OPPOSED : EndsTurn.PARALLEL);
            return;
        }
        add(
                role,
                Place.inPlane(r, lines.outline().bottomIn(r)),
                Place.inPlane(r, lines.outline().topIn(r)),
                MemberEnd.one(new Cut(slant(low), "open")),
                MemberEnd.one(new Cut(slant(high), "open")),
                low * high < 0 ? EndsTurn.OPPOSED : EndsTurn.PARALLEL);
    }

    private void rail(int rail) {
        FrameLines.RailLine line = lines.rails().get(rail);
        boolean isBottom = rail == 0;
        boolean isTop = rail == lines.rails().size() - 1;
        MemberRole role = isBottom ? MemberRole.BOTTOM_RAIL : isTop ? MemberRole.TOP_RAIL : MemberRole.MID_RAIL;
        if (joint == Joint.MITERED && (isBottom || isTop)) {
            double from = lines.hingeStileIn();
            double to = lines.latchStileIn();
            Angle first = MiterCuts.miter(MiterCuts.corner(Slope.ratio(line.slope()), isTop));
            Angle last = MiterCuts.miter(MiterCuts.corner(Slope.ratio(-line.slope()), isTop));
            add(
                    role,
                    Place.inPlane(from, line.heightIn(from)),
                    Place.inPlane(to, line.heightIn(to)),
                    MemberEnd.one(new Cut(first, id(0))),
                    MemberEnd.one(new Cut(last, id(1))),
                    EndsTurn.OPPOSED);
            return;
        }
        Angle end = slant(line.slope());
        if (joint.railsRunThrough() && (isBottom || isTop)) {
            double first = lines.outline().hingeEdge().inches();
            double last = lines.outline().latchEdge().inches();
            add(
                    role,
                    Place.inPlane(first, line.heightIn(first)),
                    Place.inPlane(last, line.heightIn(last)),
                    MemberEnd.one(new Cut(end, "open")),
                    MemberEnd.one(new Cut(end, "open")),
                    EndsTurn.PARALLEL);
            return;
        }
        double from = lines.hingeFaceIn();
        double to = lines.latchFaceIn();
        boolean coped = tube.isRound() && joint != Joint.BRACKETED;
        add(
                role,
                Place.inPlane(from, line.heightIn(from)),
                Place.inPlane(to, line.heightIn(to)),
                new MemberEnd(List.of(new Cut(end, id(0))), coped),
                new MemberEnd(List.of(new Cut(end, id(1))), coped),
                EndsTurn.PARALLEL);
    }

    /** From the lower hinge corner of a panel up to its upper latch corner, inner corner to inner corner: a tube that is pressed. */
    private void brace(int panel) {
        double from = lines.hingeFaceIn();
        double to = lines.latchFaceIn();
        Place low = Place.inPlane(from, lines.overRailIn(panel, from));
        Place high = Place.inPlane(to, lines.underRailIn(panel + 1, to));
        add(MemberRole.BRACE, low, high, point(low, high, 0, panel), point(low, high, 1, panel + 1), EndsTurn.PARALLEL);
        Member made = members.get(members.size() - 1);
        joinCorner(0, panel, made, made.firstEnd());
        joinCorner(1, panel + 1, made, made.lastEnd());
    }

    /** Two braces in a leaf without a mid rail: from both hinge corners to the middle of the latch stile, one above the other. */
    private void bracesToTheLatchStile() {
        double from = lines.hingeFaceIn();
        double to = lines.latchFaceIn();
        double middle = (lines.overRailIn(0, to) + lines.underRailIn(1, to)) / 2;
        legOfK(Place.inPlane(from, lines.overRailIn(0, from)), to, middle, -1, 0);
        legOfK(Place.inPlane(from, lines.underRailIn(1, from)), to, middle, 1, 1);
    }

    private void legOfK(Place corner, double to, double middle, int side, int rail) {
        double run = to - corner.r().inches();
        double z = middle;
        for (int turn = 0; turn < 40; turn++) {
            double rise = z - corner.z().inches();
            z = middle + side * depthIn / 2 * Math.sqrt(run * run + rise * rise) / run;
        }
        Place end = Place.inPlane(to, z);
        Angle cut = slant((z - corner.z().inches()) / run);
        add(
                MemberRole.BRACE,
                corner,
                end,
                point(corner, end, 0, rail),
                MemberEnd.one(new Cut(cut, id(1))),
                EndsTurn.PARALLEL);
        Member made = members.get(members.size() - 1);
        joinCorner(0, rail, made, made.firstEnd());
        weldTee(newJoint(Place.inPlane(lines.latchStileIn(), z), List.of(id(1), made.id())), cut);
    }

    /** The point of a brace in a corner: it meets the stile's plumb face and the rail's sloping one. */
    MemberEnd point(Place hinge, Place latch, int stile, int rail) {
        double run = latch.r().inches() - hinge.r().inches();
        double climb = StrictMath.atan((latch.z().inches() - hinge.z().inches()) / run);
        double railClimb = StrictMath.atan(lines.rails().get(rail).slope());
        return new MemberEnd(
                List.of(
                        new Cut(Angle.radians(Math.abs(climb)), id(stile)),
                        new Cut(Angle.radians(Math.PI / 2 - Math.abs(climb - railClimb)), id(rail + 2))),
                false);
    }

    private void jointsOfRails() {
        for (int rail = 0; rail < lines.rails().size(); rail++) {
            boolean edge = rail == 0 || rail == lines.rails().size() - 1;
            for (int stile = 0; stile < 2; stile++) {
                double r = stile == 0 ? lines.hingeStileIn() : lines.latchStileIn();
                String name = leaf + ".j" + (joints.size() + 1);
                List<String> meeting = joint.railsRunThrough() && edge
                        ? List.of(id(rail + 2), id(stile))
                        : List.of(id(stile), id(rail + 2));
                joints.add(new FrameJoint(
                        name, Place.inPlane(r, lines.rails().get(rail).heightIn(r)), meeting));
                if (joint == Joint.BRACKETED) {
                    fit(new Fitting(
                            "corner bracket", joints.get(joints.size() - 1).at(), BRACKET));
                    continue;
                }
                MemberEnd end = stile == 0
                        ? members.get(rail + 2).firstEnd()
                        : members.get(rail + 2).lastEnd();
                if (joint == Joint.MITERED && edge) weldMiter(name, end.fromSquare());
                else weldTee(name, slant(lines.rails().get(rail).slope()));
            }
        }
    }

    private void weldMiter(String at, Angle cut) {
        if (tube.isRound()) {
            welds.add(new Weld(at, WeldKind.GROOVE, MiterCuts.ellipse(tube.depth(), cut), "all round", 1, true));
            return;
        }
        double across = tube.width().inches();
        double slanted = depthIn / StrictMath.cos(cut.radians());
        welds.add(new Weld(
                at,
                WeldKind.GROOVE,
                Length.inches(2 * slanted + across),
                "both faces and the outer corner, ground flush",
                3,
                true));
        welds.add(new Weld(at, WeldKind.FILLET, tube.width(), "inner corner", 1, false));
    }

    void weldTee(String at, Angle cut) {
        if (tube.isRound()) {
            welds.add(new Weld(
                    at,
                    WeldKind.FILLET,
                    Length.inches(MiterCuts.saddle(tube.depth()).inches() / StrictMath.cos(cut.radians())),
                    "all round",
                    1,
                    false));
            return;
        }
        double slanted = depthIn / StrictMath.cos(cut.radians());
        welds.add(new Weld(at, WeldKind.FLARE_BEVEL, Length.inches(2 * slanted), "both faces, flush", 2, true));
        welds.add(new Weld(at, WeldKind.FILLET, tube.width().times(2), "above and below", 2, false));
    }

    void joinCorner(int stile, int rail, Member brace, MemberEnd end) {
        joins(stile, rail, brace);
        weldPoint(jointAt(stile, rail).id(), end);
    }

    /** The welds of a brace's point in a corner. */
    void weldPoint(String at, MemberEnd end) {
        double faces = 0;
        double round = 0;
        for (Cut cut : end.cuts()) {
            faces += depthIn / 2 / StrictMath.cos(cut.fromSquare().radians());
            round += MiterCuts.ellipse(tube.depth(), cut.fromSquare()).inches() / 2;
        }
        if (tube.isRound()) {
            welds.add(new Weld(at, WeldKind.FILLET, Length.inches(round), "brace, all round", 1, false));
            return;
        }
        welds.add(new Weld(at, WeldKind.FLARE_BEVEL, Length.inches(2 * faces), "brace, both faces, flush", 2, true));
        welds.add(new Weld(at, WeldKind.FILLET, tube.width().times(2), "brace, its two edges", 2, false));
    }

    private void add(MemberRole role, Place from, Place to, MemberEnd first, MemberEnd last, EndsTurn ends) {
        add(role, tube, from, to, first, last, ends);
    }

    private void add(
            MemberRole role, Section section, Place from, Place to, MemberEnd first, MemberEnd last, EndsTurn ends) {
        double dr = to.r().inches() - from.r().inches();
        double dz = to.z().inches() - from.z().inches();
        Length cut = Length.inches(Math.sqrt(dr * dr + dz * dz));
        Length longPoint = Length.inches(cut.inches() + beyondIn(section, first) + beyondIn(section, last));
        members.add(new Member(
                id(members.size()),
                role,
                section,
                from,
                to,
                cut,
                longPoint,
                first,
                last,
                ends,
                section.weightOf(cut),
                List.of()));
    }

    private String id(int member) {
        return leaf + ".m" + (member + 1);
    }

    private FrameLines.RailLine bottom() {
        return lines.rails().get(0);
    }

    private FrameLines.RailLine top() {
        return lines.rails().get(lines.rails().size() - 1);
    }

    private static Angle slant(double slope) {
        return Angle.radians(Math.abs(StrictMath.atan(slope)));
    }
}
