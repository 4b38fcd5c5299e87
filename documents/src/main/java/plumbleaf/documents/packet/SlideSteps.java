package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.design.SlideDesign;
import plumbleaf.engine.gate.SlideShape;
import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.SlideCase;

/** How a crew sets a slide gate, and what its wheels carry. */
final class SlideSteps {
    private SlideSteps() {}

    static List<String> setting(PacketSubject subject, SlidePaper gate) {
        SlideShape shape = gate.subject().plan().shape();
        SlideSpec spec = gate.subject().plan().kind().spec();
        RollerModel rollers = gate.subject().plan().rollers();
        List<String> steps = new ArrayList<>();
        steps.add("Slide " + gate.id() + ": string one line past all three posts; roller posts "
                + subject.length(shape.spacing().inches()) + " apart, center to center, faces in line within 1/8\".");
        steps.add("Clear the run-back: " + subject.length(-shape.openEnd().inches())
                + " behind the face of the front roller post, as wide as the leaf and a hand each side; nothing is stacked"
                + " there later.");
        steps.add("Through-bolt one " + rollers.name() + " to each roller post, " + rollers.bolts() + " bolts of "
                + subject.inches(rollers.boltSize().inches()) + ", tubes "
                + subject.length(Math.abs(shape.across().inches())) + " from the posts' line to their middle.");
        steps.add("Run the leaf in with a machine and two who guide it; prop it until both stops are on. Bottom tube "
                + subject.inches(gate.asked().leaf().bottomGap().inches())
                + " over the ground at the opening's face, level.");
        gate.carried()
                .ifPresent(carried -> steps.add("Set the rear rollers "
                        + subject.inches(Math.max(0, carried.sag().rearLower().inches()))
                        + " below level: the nose, which would drop "
                        + subject.inches(carried.sag().atSetting().inches())
                        + " by play and posts, then stands level."));
        steps.add(
                "Receiver on its post: mouth " + subject.inches(spec.mouthUp().inches()) + " over and under the tube, "
                        + sides(subject, gate, spec) + ", the nose "
                        + subject.inches(shape.overlap().inches()) + " in it.");
        steps.add(
                "Bolt a rubber-faced stop at both ends of the way, closed and open, that the leaf cannot pass. Guard the"
                        + " rollers.");
        return steps;
    }

    private static String sides(PacketSubject subject, SlidePaper gate, SlideSpec spec) {
        double out = spec.mouthAcross().inches();
        double toPost = gate.subject().mouthToPostIn();
        return toPost < out
                ? subject.inches(out) + " away from the post and " + subject.inches(toPost) + " to its face"
                : subject.inches(out) + " to each side";
    }

    /** Most pressed and most lifted, at rest and with a person, at both ends of the way. */
    static Table forces(SlideDesign carried) {
        Table.Builder table = Table.with(
                Column.words("Leaf"), Column.left("Case"), Column.right("Front, lb"), Column.right("Rear, lb"));
        for (SlideCase each : carried.cases()) {
            boolean end = each.state() != LeafState.WORST;
            boolean still = each.combination() == Combination.D || each.combination() == Combination.D_L;
            if (end && still)
                table.row(
                        each.state().key(),
                        each.combination().key(),
                        DecimalText.whole(each.front().down().pounds()),
                        DecimalText.whole(each.rear().down().pounds()));
        }
        return table.table();
    }
}
