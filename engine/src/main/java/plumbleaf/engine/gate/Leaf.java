package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A leaf, drawn out to the last cut. Enough to build a frame model from: centrelines, sections, joints, hinge pins, and where the weight of the infill
 * lands.
 *
 * @param id {@code G1a}
 * @param hand as hung
 * @param members hinge stile, latch stile, bottom rail, rails upward, top rail, braces
 * @param pins from the lowest up
 * @param latchAt where the latch meets the leaf
 * @param freeCorner the outline's lower latch corner, whose drop is judged
 * @param make how its frame is made
 * @param pickets boards, or the pieces of steel pickets
 * @param trim boards over the pickets that finish them
 * @param panels pieces of mesh or sheet
 */
public record Leaf(
        String id,
        Hand hand,
        Outline outline,
        LeafMake make,
        List<Member> members,
        List<FrameJoint> joints,
        List<HingePin> pins,
        Place latchAt,
        Place freeCorner,
        List<Weld> welds,
        List<Nailer> nailers,
        List<Picket> pickets,
        List<LeafTrim> trim,
        Offset picketGap,
        List<Panel> panels,
        List<RailLoad> railLoads,
        List<Fitting> fittings,
        LeafWeight weight) {
    public Leaf {
        members = List.copyOf(members);
        joints = List.copyOf(joints);
        pins = List.copyOf(pins);
        welds = List.copyOf(welds);
        nailers = List.copyOf(nailers);
        pickets = List.copyOf(pickets);
        trim = List.copyOf(trim);
        panels = List.copyOf(panels);
        railLoads = List.copyOf(railLoads);
        fittings = List.copyOf(fittings);
    }

    /** The same leaf with other members and loads. */
    public Leaf with(List<Member> otherMembers, List<RailLoad> otherLoads, List<Fitting> otherFittings) {
        return new Leaf(
                id,
                hand,
                outline,
                make,
                otherMembers,
                joints,
                pins,
                latchAt,
                freeCorner,
                welds,
                nailers,
                pickets,
                trim,
                picketGap,
                panels,
                otherLoads,
                otherFittings,
                weight);
    }

    public Length width() {
        return outline.width();
    }

    public Optional<Member> member(String id) {
        return members.stream().filter(member -> member.id().equals(id)).findFirst();
    }

    /** The members of a role, in their order. */
    public List<Member> of(MemberRole role) {
        return members.stream().filter(member -> member.role() == role).toList();
    }

    /** The members that carry the infill, from the lowest up. */
    public List<Member> rails() {
        return members.stream().filter(member -> member.role().isRail()).toList();
    }

    /** Edges of the pickets along the leaf, from the outline's hinge edge. */
    public Ordinates picketEdges() {
        List<Offset> edges = new ArrayList<>();
        double datum = outline.hingeEdge().inches();
        double last = Double.NEGATIVE_INFINITY;
        for (Picket picket : pickets) {
            if (picket.r().inches() < last + 1e-9) continue;
            last = picket.r().inches();
            edges.add(Offset.inches(picket.r().inches() - datum));
            edges.add(Offset.inches(picket.r().inches() + picket.width().inches() - datum));
        }
        return new Ordinates(edges);
    }

    /** Heights up the hinge edge from the outline's lower hinge corner: the hinge pins, and the corner above. */
    public Ordinates pinHeights() {
        List<Offset> heights = new ArrayList<>();
        double datum = outline.corners().get(0).z().inches();
        heights.add(Offset.ZERO);
        for (HingePin pin : pins) heights.add(Offset.inches(pin.z().inches() - datum));
        heights.add(Offset.inches(outline.corners().get(3).z().inches() - datum));
        return new Ordinates(heights);
    }

    /** Distance from the lowest to the highest hinge pin. */
    public Length pinSpacing() {
        return Length.inches(
                pins.get(pins.size() - 1).z().inches() - pins.get(0).z().inches());
    }
}
