package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.design.PairDesign;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.MeetingForces;
import plumbleaf.engine.sag.Slam;
import plumbleaf.engine.strength.RodBending;

/** Pages of the calculation book about the place where two leaves meet. */
final class PairCalculation {
    private PairCalculation() {}

    static void add(Paper.Builder paper, GatePaper gate, PairDesign pair, int ibcClass) {
        paper.heading("Gate " + gate.id() + ", where its leaves meet");
        RodBending rod = pair.rod();
        paper.add(new Block.Worked(
                "Push on the rod: each leaf turns freely about its pins, so what holds it where it meets balances its wind about them; "
                        + pair.worst().combination().key()
                        + (pair.worst().combination().hasWind()
                                ? ", " + pair.worst().wind().key()
                                : ""),
                "statics; between the leaves by the force method, strip and stop one way only: rod w = -X / k, latch w_a = w_b",
                "of all that holds the leaves only the rod goes into the ground: it takes " + lb(rod.push()),
                pair.balance()));
        paper.add(new Block.Worked(
                "Bending of the drop rod at the mouth of its sleeve",
                "cantilever; AISC 360-22 F11.1, omega 1.67",
                "R the push on the rod, e from the mouth of the sleeve to the lowest guide; elastic stress "
                        + DecimalText.fixed(rod.stress().psi() / 1000, 1) + " ksi",
                rod.lines()));
        pair.sleeveWork()
                .ifPresent(work -> paper.add(PostCalculation.depth(
                        "Hole of the ground sleeve",
                        work,
                        "; " + DecimalText.fixed(pair.sleeve().depth().inches(), 1) + " in. dug, ratio "
                                + DecimalText.fixed(pair.sleeveUtilisation(), 2),
                        ibcClass)));
        slam(paper, gate, pair);
        paper.say("Out of plane the tops go "
                + inch(Length.inches(Math.abs(pair.topInService().inches())))
                + " in the service gust and "
                + inch(Length.inches(Math.abs(pair.topInWind().inches())))
                + " in the worst combination, each leaf a grillage of welded tubes on its hinges, held at its foot.");
        Table.Builder table = Table.with(
                Column.left("Combination"),
                Column.left("Wind"),
                Column.right("Rod a, lb"),
                Column.right("Rod b, lb"),
                Column.right("Latch, lb"),
                Column.right("Strip foot, lb"),
                Column.right("Strip top, lb"),
                Column.right("Stop a + b, lb"),
                Column.right("Top a, in."),
                Column.right("Top b, in."));
        for (MeetingForces each : pair.forces())
            table.row(
                    each.combination().key(),
                    each.combination().wind() > 0 ? each.wind().key() : "\u2013",
                    whole(each.rodA()),
                    whole(each.rodB()),
                    whole(each.latch()),
                    whole(each.stripFoot()),
                    whole(each.stripTop()),
                    DecimalText.whole(each.stopA().pounds() + each.stopB().pounds()),
                    DecimalText.fixed(each.topA().inches(), 2),
                    DecimalText.fixed(each.topB().inches(), 2));
        paper.subheading("Every case of the closed pair").add(table.table());
        paper.note(
                "Forces act on a leaf, + outward; those between the leaves are the ones on leaf a, leaf b feels the opposite.");
    }

    private static void slam(Paper.Builder paper, GatePaper gate, PairDesign pair) {
        int striking = pair.active() == Side.LEFT ? 0 : 1;
        Leaf leaf = gate.subjects().get(striking).leaf();
        List<WorkedLine> lines =
                new ArrayList<>(Slam.lines(Slam.edge(gate.asked(), leaf), leaf, pair.slamStiffnessLbPerIn()));
        lines.addAll(pair.slamRod().lines());
        paper.add(new Block.Worked(
                "Leaf " + (striking == 0 ? "a" : "b")
                        + " let slam against the other, its energy taken by the struck leaf and its rod",
                "energy balance; judgement",
                "k of the struck leaf and its rod in series, by the stiffness of the whole; the rod is bent by R = F",
                lines));
    }

    private static String whole(Force force) {
        return DecimalText.whole(force.pounds());
    }

    private static String lb(Force force) {
        return DecimalText.whole(Math.abs(force.pounds())) + " lb";
    }

    private static String inch(Length length) {
        return DecimalText.fixed(length.inches(), 3) + " in.";
    }
}
