package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.JointTag;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.FrameJoint;
import plumbleaf.engine.gate.HingePin;
import plumbleaf.engine.gate.Leaf;

/** Every joint of a frame by its mark, the same that the joints' details and the weld list have; each within the frame, clear of other lettering. */
final class JointTags {
    private static final List<Double> AWAY_IN = List.of(0.42, 0.55, 0.34, 0.7, 0.9, 1.15, 1.4);
    private static final int DIRECTIONS = 16;

    private JointTags() {}

    static List<JointTag> of(Leaf leaf, Outside outside, Scale scale, List<Mark> drawn) {
        return of(leaf, leaf.joints(), outside, scale, drawn);
    }

    static List<JointTag> of(Leaf leaf, List<FrameJoint> joints, Outside outside, Scale scale, List<Mark> drawn) {
        List<Box> taken = new ArrayList<>();
        for (Mark mark : drawn) {
            if (mark instanceof Area) continue;
            for (Primitive part : mark.drawn(scale)) if (part instanceof Text) taken.add(part.extents(scale));
        }
        for (HingePin pin : leaf.pins()) {
            Point at = outside.at(0, pin.z().inches());
            taken.add(Box.of(at, at).grown(Math.max(2, scale.real(0.08))));
        }
        Point latch = outside.at(leaf.latchAt());
        taken.add(Box.of(latch, latch).grown(2.6));
        Point middle = outside.at(
                (leaf.outline().hingeEdge().inches()
                                + leaf.outline().latchEdge().inches())
                        / 2,
                (leaf.outline().corners().get(0).z().inches()
                                + leaf.outline().corners().get(2).z().inches())
                        / 2);
        List<JointTag> tags = new ArrayList<>();
        for (FrameJoint joint : joints) {
            JointTag tag = placed(leaf, joint, outside.at(joint.at()), middle, scale, taken);
            taken.add(room(tag, scale));
            tags.add(tag);
        }
        return List.copyOf(tags);
    }

    private static JointTag placed(Leaf leaf, FrameJoint joint, Point at, Point middle, Scale scale, List<Box> taken) {
        // Beside the diagonal, which runs towards the middle.
        double wanted = at.direction(middle) + (at.y() > middle.y() ? 0.32 : -0.32) * (at.x() < middle.x() ? 1 : -1);
        JointTag first = null;
        for (double away : AWAY_IN)
            for (int turn = 0; turn < DIRECTIONS * 3 / 4; turn++) {
                int step = (turn + 1) / 2 * (turn % 2 == 0 ? 1 : -1);
                Point place = at.towards(wanted + step * 2 * Math.PI / DIRECTIONS, scale.real(away));
                JointTag tag = new JointTag(
                        place,
                        at,
                        JointNames.of(leaf.id(), joint.id()),
                        Look.note().of(joint.id()));
                if (first == null) first = tag;
                if (taken.stream().noneMatch(room(tag, scale)::overlaps)) return tag;
            }
        return java.util.Objects.requireNonNull(first);
    }

    private static Box room(JointTag tag, Scale scale) {
        return Box.of(tag.middle(), tag.middle()).grown(scale.real(JointTag.RADIUS_IN + 0.01));
    }
}
