package plumbleaf.documents.packet;

import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.design.PairDesign;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.sag.MeetingForces;
import plumbleaf.engine.strength.RodBending;

/** Pages of the calculation book about the place where two leaves meet. */
final class PairCalculation {
    private PairCalculation() {}

    static void add(Paper.Builder paper, GatePaper gate, PairDesign pair) {
        paper.heading("Gate " + gate.id() + ", where its leaves meet");
        RodBending rod = pair.rod();
        paper.add(new Block.Formula(
                "Push on the rod: each leaf turns freely about its pins, so what holds it where it meets balances its wind about them",
                "statics; between the leaves by the force method, strip and stop one way only",
                "\u03a3 X r = F r_c for each leaf; rod w = -X / k, latch w_a = w_b",
                pair.worst().combination().key() + ", wind "
                        + pair.worst().wind().key(),
                lb(rod.push())));
        paper.add(new Block.Formula(
                "Bending of the drop rod at the mouth of its sleeve",
                "cantilever; AISC 360-22 F11.1, omega 1.67",
                "M = R e; M_a = Fy min(Z, 1.6 S) / 1.67, S = \u03c0 d\u00b3 / 32, Z = d\u00b3 / 6",
                lb(rod.push()) + " \u00d7 " + inch(rod.exposed()) + "; d "
                        + inch(rod.rod().diameter()) + ", Fy "
                        + DecimalText.fixed(rod.rod().yield().inKsi(), 0) + " ksi",
                DecimalText.whole(rod.moment().poundInches()) + " of "
                        + DecimalText.whole(rod.allowable().poundInches()) + " lb-in, "
                        + DecimalText.fixed(rod.utilisation(), 2) + "; elastic stress "
                        + DecimalText.fixed(rod.stress().psi() / 1000, 1) + " ksi"));
        if (!pair.sleeveNeeded().isZero())
            paper.add(new Block.Formula(
                    "Hole of the ground sleeve",
                    "IBC 2021 1807.3.2.1, Equation 18-1",
                    "d = 0.5 A [1 + sqrt(1 + 4.36 h / A)], A = 2.34 P / (S1 b)",
                    lb(pair.sleevePush()) + " on a hole " + inch(pair.sleeve().diameter()) + " wide",
                    inch(pair.sleeveNeeded()) + " needed, " + inch(pair.sleeve().depth()) + " dug"));
        paper.add(new Block.Formula(
                "One leaf let slam against the other, its energy taken by the struck leaf and its rod",
                "energy balance; judgement",
                "F = (v / b) sqrt(I k), 1 / k = give of the struck leaf + 1 / k_rod",
                "peak " + lb(pair.slam()),
                DecimalText.fixed(pair.slamRod().utilisation(), 2) + " of what the rod may"));
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
