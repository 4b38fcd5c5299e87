package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.typeset.Pages;
import plumbleaf.documents.view.ChainPicture;
import plumbleaf.documents.view.FreeBody;
import plumbleaf.documents.view.SagBar;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.LoadChain;
import plumbleaf.engine.gate.Clearance;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.strength.RatedGust;

/** A hinged leaf in the calculation book: what hangs on the pins, the room under it, its drop by cause, and every link to the soil. */
final class GateCalculation {
    private static final double FREE_BODY_HIGH_IN = 3.4;

    /** From one angle of the swing to the next in the book. */
    private static final double SHOWN_DEG = 15;

    private GateCalculation() {}

    static void add(Paper.Builder paper, PacketSubject subject, GatePaper gate) {
        for (GatePaper leaf : gate.leaves()) leafOf(paper, subject, leaf);
        gate.pair()
                .ifPresent(pair -> PairCalculation.add(
                        paper, gate, pair, subject.job().site().soil().ibcClass()));
    }

    private static void leafOf(Paper.Builder paper, PacketSubject subject, GatePaper gate) {
        Leaf leaf = gate.leaf();
        paper.heading((gate.isPair() ? "Leaf " : "Gate ") + gate.mark());
        paper.say(gate.subject().sentence() + ". Frame "
                + gate.subject().parts().frame().name() + "; hinge post "
                + gate.subject().hingePost() + ", "
                + gate.subject().parts().hingePost().name() + ".");
        WeightCalculation.add(paper, leaf, "the pins");
        paper.add(new Block.Worked(
                "Hinge couple under dead load, leaf closed",
                "statics",
                "W leaf with wet wood, a center of gravity from the pins, d between the pins",
                List.of(WorkedLine.of("H", "W \u00d7 a / d")
                        .put("W", leaf.weight().wet())
                        .put("a", leaf.weight().centreOfGravity().r().inches(), "in.")
                        .put("d", leaf.pinSpacing())
                        .note("towards the latch at the top hinge, away from it at the bottom")
                        .gives(
                                leaf.weight().wet().pounds()
                                        * leaf.weight().centreOfGravity().r().inches()
                                        / leaf.pinSpacing().inches(),
                                "lb"))));
        swing(paper, subject, gate.subject().swing());
        for (GatePaper.Hangs hangs : gate.hangs()) hangs(paper, subject, gate, hangs);
    }

    private static void swing(Paper.Builder paper, PacketSubject subject, Swing swing) {
        String where =
                "r from the pin along the leaf, heights from grade at the pin; least of all r and q from closed to "
                        + DecimalText.fixed(swing.opens().inDegrees(), 0) + "\u00b0; both faces "
                        + inch(swing.leastOfFaces().clear().inches()) + "; in service, less drop and later ground, "
                        + inch(swing.running().clear().inches()) + "; shots are good to "
                        + subject.inches(swing.shotError().inches());
        paper.add(new Block.Worked(
                "Least room under the leaf's middle over the swing: "
                        + inch(swing.least().clear().inches()) + " at r "
                        + inch(swing.least().atRadius().inches()) + ", q "
                        + DecimalText.fixed(swing.least().atAngle().inDegrees(), 1) + "\u00b0",
                "plane geometry over the flat triangles of the ground; on one plane the least is where tan q = m_t / m_s or at an end",
                where,
                swing.worked()));
        room(paper, swing);
    }

    /** The least along the leaf at some angles, to see that none is missed. */
    private static void room(Paper.Builder paper, Swing swing) {
        Table.Builder table = Table.with(
                Column.right("Open"), Column.right("Least room under its middle, in."), Column.right("At r, in."));
        int rows = 0;
        for (Clearance each : swing.curve()) {
            double open = each.atAngle().inDegrees();
            boolean shown = Math.abs(open / SHOWN_DEG - Math.rint(open / SHOWN_DEG)) < 1e-6;
            if (!shown) continue;
            rows++;
            table.row(
                    DecimalText.fixed(open, 0) + "\u00b0",
                    DecimalText.fixed(each.clear().inches(), 3),
                    DecimalText.fixed(each.atRadius().inches(), 2));
        }
        if (rows > 0) paper.add(table.table());
    }

    private static String inch(double value) {
        return DecimalText.fixed(value, 3) + " in.";
    }

    private static void hangs(Paper.Builder paper, PacketSubject subject, GatePaper gate, GatePaper.Hangs hangs) {
        paper.subheading("Wind, drop, lean and frequency");
        for (Working each : hangs.workings())
            paper.add(new Block.Worked(each.what(), each.clause(), each.where(), each.lines()));
        paper.add(bySoil(hangs.sag()));
        double wide = Pages.columnWidth(subject.options().size()) - 0.3;
        paper.add(new Block.Picture(
                SagBar.of(gate.id(), hangs.sag(), hangs.limits(), wide, subject.units()),
                "Sag budget against its limits"));
        freeBodies(paper, subject, gate, hangs);
        cases(paper, hangs);
        Table.Builder hinges = Table.with(
                Column.left("Hinge"),
                Column.right("Pin above grade"),
                Column.right("Sideways, lb"),
                Column.right("May be, lb"),
                Column.right("Ratio"),
                Column.words("In case"));
        for (GatePaper.HingePull pull : hangs.hinges())
            hinges.rowAbout(
                    pull.id(),
                    pull.id(),
                    subject.length(pull.z().inches()),
                    DecimalText.whole(pull.pull().pounds()),
                    pull.capacity().isZero()
                            ? "unknown"
                            : DecimalText.whole(pull.capacity().pounds()),
                    pull.capacity().isZero()
                            ? "\u2013"
                            : DecimalText.fixed(
                                    pull.pull().pounds() / pull.capacity().pounds(), 2),
                    pull.inCase());
        if (!hinges.isEmpty()) paper.subheading("Hinges").add(hinges.table());
        CalculationBook.byHand(paper, gate.mark());
        if (hangs.loadPath().isEmpty()) return;
        if (gate.isPair() && !gate.mark().equals(gate.id() + "a")) {
            paper.say("The load path of both leaves stands with leaf " + gate.id() + "a.");
            return;
        }
        paper.add(new Block.Picture(
                ChainPicture.of(gate.id(), LoadChain.of(hangs.loadPath()), Math.min(wide, 5), true),
                "Load path: the worst link of each kind, as the load walks it. Wood is no link."));
        links(paper, hangs.loadPath());
        gusts(paper, gate);
    }

    /** The gust at which each part reaches its limits, by the square root of what is left over what a gust takes. */
    private static void gusts(Paper.Builder paper, GatePaper gate) {
        if (gate.gusts().isEmpty()) return;
        Table.Builder table = Table.with(
                Column.words("Rated gust of every part"),
                Column.right("To its allowable"),
                Column.right("To where it gives"));
        for (RatedGust.Part part : gate.gusts())
            table.row(part.link(), gust(part, part.allowable()), gust(part, part.ultimate()));
        paper.add(table.table());
        paper.note(
                "V = V0 sqrt((capacity - dead) / (0.6 wind at V0)) to the allowable, without the 0.6 to where it gives; the worst state of the leaf for each part, without the standard's floor of 16 psf.");
    }

    private static String gust(RatedGust.Part part, Speed at) {
        return part.isNotTroubled() ? "any" : DecimalText.whole(at.mph()) + " mph";
    }

    /** Leaf and post cut apart under the leaf's own weight, with the one line that a hand check needs. */
    private static void freeBodies(Paper.Builder paper, PacketSubject subject, GatePaper gate, GatePaper.Hangs hangs) {
        Optional<CaseForces> dead = hangs.cases().stream()
                .filter(each -> each.combination().key().equals("D")
                        && each.state().key().equals("closed"))
                .findFirst();
        if (dead.isEmpty() || gate.leaf().pins().size() < 2) return;
        Drawing bodies = Scale.fitted(
                subject.units(),
                scale -> FreeBody.of(gate.subject(), dead.get(), scale),
                Pages.columnWidth(subject.options().size()),
                FREE_BODY_HIGH_IN);
        double weight = gate.leaf().weight().wet().pounds();
        double arm = gate.leaf().weight().centreOfGravity().r().inches();
        double apart = gate.leaf().pinSpacing().inches();
        paper.add(new Block.Picture(
                bodies,
                "Free bodies of " + gate.mark() + " under its own weight, closed. By hand: H = W a / d = "
                        + DecimalText.whole(weight) + " lb \u00d7 " + inch(arm) + " / " + inch(apart) + " = "
                        + DecimalText.whole(weight * arm / apart) + " lb."));
    }

    /** The drop in each soil, and on a deeper footing where there is a footing to dig deeper. */
    private static Block bySoil(GateSag sag) {
        List<Column> heads = new ArrayList<>(
                List.of(Column.words("Soil"), Column.right("Soft"), Column.right("Likely"), Column.right("Stiff")));
        List<String> drops = new ArrayList<>(List.of(
                "total drop",
                inch(sag.soil().soft().inches()),
                inch(sag.soil().likely().inches()),
                inch(sag.soil().stiff().inches())));
        sag.sixDeeper().ifPresent(deeper -> {
            heads.add(Column.right("Footing 6 in. deeper"));
            drops.add(inch(deeper.inches()));
        });
        return Table.with(heads.toArray(Column[]::new))
                .row(drops.toArray(String[]::new))
                .table();
    }

    /** Every link with its ratio, then the worst of each kind with its numbers put in. */
    static void links(Paper.Builder paper, List<LinkUse> links) {
        Table.Builder table = Table.with(
                Column.words("Link"), Column.right("Ratio"), Column.words("In case"), Column.words("Clause"));
        for (LinkUse link : links)
            table.rowAbout(
                    link.part(),
                    link.link() + " " + link.part(),
                    DecimalText.fixed(link.utilisation(), 2),
                    link.inCase(),
                    link.work().clause());
        paper.subheading("Links of the load path").add(table.table());
        for (LinkUse link : LoadChain.of(links))
            paper.add(
                    link.work().lines().isEmpty()
                            ? new Block.Formula(
                                    capital(link.link()) + " " + link.part() + ", " + link.inCase(),
                                    link.work().clause(),
                                    link.work().formula(),
                                    link.work().numbers(),
                                    DecimalText.fixed(link.utilisation(), 2))
                            : new Block.Worked(
                                    capital(link.link()) + " " + link.part() + ", " + link.inCase(),
                                    link.work().clause(),
                                    link.work().formula(),
                                    link.work().lines()));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static void cases(Paper.Builder paper, GatePaper.Hangs hangs) {
        Table.Builder table = Table.with(
                Column.left("Combination"),
                Column.left("Leaf"),
                Column.left("Wind"),
                Column.right("Open"),
                Column.right("Along, lb-ft"),
                Column.right("Across, lb-ft"),
                Column.right("Both, lb-ft"),
                Column.right("Torsion, lb-ft"),
                Column.right("Down, lb"));
        for (CaseForces each : hangs.cases()) {
            BaseAction post = each.hingePost();
            table.row(
                    each.combination().key(),
                    each.state().key(),
                    each.combination().wind() > 0 ? each.wind().key() : "\u2013",
                    DecimalText.fixed(each.angle().inDegrees(), 0) + "\u00b0",
                    DecimalText.whole(post.momentAlong().inPoundFeet()),
                    DecimalText.whole(post.momentAcross().inPoundFeet()),
                    DecimalText.whole(together(post)),
                    DecimalText.whole(post.torsion().inPoundFeet()),
                    DecimalText.whole(post.down().pounds()));
        }
        paper.subheading("Hinge post at grade, every case").add(table.table());
        paper.note(
                "Along: + tips the post towards the latch. Across: + towards the outside. Torsion: + turns it the way the gate swings.");
    }

    static double together(BaseAction action) {
        return StrictMath.hypot(
                action.momentAlong().inPoundFeet(), action.momentAcross().inPoundFeet());
    }
}
