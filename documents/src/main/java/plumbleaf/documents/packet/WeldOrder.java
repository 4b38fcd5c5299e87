package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.view.JointNames;
import plumbleaf.engine.gate.FrameJoint;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.gate.Weld;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.sag.ByTime;

/** What a welder would ask before the first tack: which face is up, where the hinges are, what is tacked first, what is ground, how flat it lies. */
final class WeldOrder {
    private WeldOrder() {}

    static List<Block> blocks(PacketSubject subject, GatePaper gate) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, "In this order"));
        blocks.add(new Block.TickList(steps(subject, gate), true));
        blocks.add(new Block.Note(
                "Order and fit-up: common practice, no source. Marks J1, J2 ... are on the shop drawing."));
        blocks.add(new Block.Heading(2, "Welds"));
        blocks.add(WeldTable.brief(subject, gate.leaf()));
        return blocks;
    }

    private static List<String> steps(PacketSubject subject, GatePaper gate) {
        Leaf leaf = gate.leaf();
        boolean left = leaf.hand().hinge() == Side.LEFT;
        List<String> steps = new ArrayList<>();
        steps.add("Outside face up on a flat table, as on the shop drawing: the hinge stile, mark 1, lies at the "
                + (left ? "left" : "right") + " with corner A nearest you.");
        steps.add(
                "Drill every hole of the list first, vents and drains too if the leaf goes to the bath. Seams of the tube inside.");
        steps.add("Clamp down. No gap at a joint over " + subject.within(1)
                + "; close a wider one with the saw, never with filler.");
        List<String> corners = corners(leaf);
        steps.add("Tack on the up face in this order: " + String.join(", ", corners) + ". Check both diagonals to "
                + subject.within(2) + ", knock it true, then tack " + rest(leaf, corners) + ".");
        steps.add(
                "Weld one joint, then the one across the frame from it: inner corners first, then outer, then the up face. Turn the leaf over for the other face. Let each cool before the next.");
        String flush = flush(leaf);
        if (!flush.isEmpty())
            steps.add("Grind flush at " + flush
                    + ", both faces and the outer corner, so that "
                    + (leaf.nailers().isEmpty() ? "" : "wood, ")
                    + "hinges and latch lie flat; leave every fillet as it is.");
        for (GatePaper.Hangs hangs : gate.hangs()) {
            ByTime drop = hangs.sag().byTime();
            if (drop.isCambered())
                steps.add("The jig holds the latch corner "
                        + subject.length(drop.camber().inches()) + " high while it is welded.");
        }
        steps.add(
                "Two straight edges over the corners: flat within " + subject.within(2)
                        + ". A leaf that bows is pulled back by warming its proud face in short lines; check the diagonals again and write them on the leaf.");
        steps.add(gate.subject()
                .parts()
                .hinge()
                .fixing()
                .toLeaf()
                .match(
                        weld ->
                                "Weld the hinges to the leaf with their pins on one string; those on the post wait until it hangs.",
                        bolts ->
                                "Bolt the hinges on with their pins on one string. Weld nothing to the post until the leaf hangs.",
                        lags -> "Screw the hinges on with their pins on one string."));
        return steps;
    }

    /** The joints at A, C, B and D: across the frame and back. */
    private static List<String> corners(Leaf leaf) {
        Set<String> names = new LinkedHashSet<>();
        for (int corner : List.of(0, 2, 1, 3)) {
            Place at = leaf.outline().corners().get(corner);
            leaf.joints().stream()
                    .min(Comparator.comparingDouble((FrameJoint joint) -> far(joint, at)))
                    .ifPresent(joint -> names.add(JointNames.of(leaf.id(), joint.id())));
        }
        return List.copyOf(names);
    }

    private static double far(FrameJoint joint, Place at) {
        double r = joint.at().r().inches() - at.r().inches();
        double z = joint.at().z().inches() - at.z().inches();
        return r * r + z * z;
    }

    private static String rest(Leaf leaf, List<String> corners) {
        List<String> others = leaf.joints().stream()
                .map(FrameJoint::id)
                .filter(joint -> !corners.contains(JointNames.of(leaf.id(), joint)))
                .toList();
        List<String> said = new ArrayList<>();
        if (!others.isEmpty()) said.add(JointNames.of(leaf.id(), others));
        if (!leaf.of(MemberRole.BRACE).isEmpty()) said.add("the brace");
        if (leaf.welds().stream().anyMatch(weld -> weld.joint().endsWith(".pickets"))) said.add("the pickets");
        if (!leaf.panels().isEmpty()) said.add("the panels");
        return said.isEmpty() ? "the other face" : String.join(", then ", said);
    }

    private static String flush(Leaf leaf) {
        return JointNames.of(
                leaf.id(),
                leaf.welds().stream().filter(Weld::flush).map(Weld::joint).toList());
    }
}
