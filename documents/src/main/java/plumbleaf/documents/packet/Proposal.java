package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.typeset.Pages;
import plumbleaf.documents.view.GateElevation;
import plumbleaf.documents.view.PairElevation;
import plumbleaf.documents.view.SlideElevation;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.pricing.Payment;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.TaxAmount;
import plumbleaf.engine.pricing.UnitOffer;
import plumbleaf.engine.quantity.DecimalText;

/** What the customer reads and signs: scope in plain words, the gate as it will hang, what is in and not in, the price and when it is due. */
public final class Proposal {
    private static final double PICTURE_HIGH_IN = 2.8;
    private static final double PAIR_HIGH_IN = 3.3;

    /** Where several gates share a page. */
    private static final double ONE_OF_SEVERAL_HIGH_IN = 2.0;

    private Proposal() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Proposal", subject.running()).flag(subject.flag());
        paper.say("For " + subject.job().site().customer() + ", "
                + subject.job().site().address() + ".");
        paper.heading("What you get");
        // Before the words: below them it left half a page white, and they break anywhere.
        if (subject.job().gates().isEmpty()) plan(paper, subject);
        for (Run run : subject.job().runs()) if (!run.isLoneGate()) paper.say(fence(subject, run));
        for (GatePaper gate : subject.gates()) gate(paper, subject, gate);
        for (SlidePaper gate : subject.slides()) slide(paper, subject, gate);
        paper.heading("What it stands");
        for (String gust : subject.gusts()) paper.say(gust);
        paper.heading("In the price, and not in it");
        Table.Builder scope = Table.with(Column.words("In"), Column.words("Not in, unless written here"));
        List<String> in = included(subject);
        List<String> out = excluded(subject);
        for (int i = 0; i < Math.max(in.size(), out.size()); i++)
            scope.row(i < in.size() ? in.get(i) : "", i < out.size() ? out.get(i) : "");
        paper.add(scope.table());
        unforeseen(paper, subject);
        for (Price price : subject.price()) price(paper, subject, price);
        if (subject.price().isEmpty())
            paper.heading("Price").say("The price follows: this job names no price book that the program knows.");
        terms(paper, subject);
        return paper.paper();
    }

    /** A job without a gate is pictured by where its fence goes. */
    private static void plan(Paper.Builder paper, PacketSubject subject) {
        Drawing plan = PlanPicture.of(subject);
        paper.add(new Block.Picture(
                plan,
                "Where it stands, north up, scale " + plan.scale().words()
                        + ". Please check it against the lot, and initial below."));
        paper.add(new Block.Blank(List.of("Where the fence stands is right: initials", "date"), 0.25));
    }

    private static String fence(PacketSubject subject, Run run) {
        RunLayout layout = subject.layout().run(run.id());
        double length = layout.line().line().length().inches();
        double high = layout.bays().stream()
                .mapToDouble(bay -> bay.heightMax().inches())
                .max()
                .orElse(0);
        int posts = layout.posts().size();
        return "Run " + run.id() + ": " + subject.length(length) + " of fence, "
                + layout.style().map(FenceStyle::words).orElse(run.style().replace('-', ' ')) + ", "
                + subject.length(run.infill().inches()) + " high, " + posts
                + " posts. It follows the ground "
                + fit(run) + "; at its highest the top stands " + subject.length(high)
                + " over the ground. The good side faces " + face(run) + ".";
    }

    private static String fit(Run run) {
        return switch (run.fit()) {
            case RACKED -> "in one sloping line, its uprights plumb";
            case STEPPED -> "in level steps";
            case MIXED -> "in sloping lines, stepped where the ground is too steep for them";
            case LEVEL_TOP -> "with a level top and the bottom cut to the ground";
        };
    }

    private static String face(Run run) {
        return switch (run.finishedFace()) {
            case IN -> "you, the inside";
            case OUT -> "out, the neighbor or the street";
            case BOTH -> "both ways";
        };
    }

    private static void gate(Paper.Builder paper, PacketSubject subject, GatePaper gate) {
        double clear = gate.subject().plan().opening().clear().inches();
        paper.subheading("Gate " + gate.id());
        paper.say(subject.length(clear) + " clear between posts, "
                + subject.length(gate.asked().leaf().infill().inches()) + " " + infill(gate)
                + " on a welded steel frame. "
                + gate.subject().plan().sentence() + "."
                + (gate.isPair()
                        ? " The " + gate.active().key()
                                + " leaf opens first; a rod in a ground sleeve holds both where they meet, and both"
                                + " are fastened back when open."
                        : ""));
        double wide = Pages.columnWidth(subject.options().size());
        paper.add(new Block.Picture(
                Scale.fitted(
                        subject.units(),
                        scale -> picture(gate, scale),
                        wide,
                        gate.isPair()
                                ? PAIR_HIGH_IN
                                : subject.gates().size() > 1 ? ONE_OF_SEVERAL_HIGH_IN : PICTURE_HIGH_IN),
                "Seen from outside, facing the closed gate. Please check the hinge side and the way it swings,"
                        + " and initial below."));
        paper.add(new Block.Blank(List.of("Hinge side, swing and good side are right: initials", "date"), 0.25));
    }

    private static void slide(Paper.Builder paper, PacketSubject subject, SlidePaper gate) {
        paper.subheading("Gate " + gate.id());
        paper.say("A cantilever slide, "
                + subject.length(gate.subject().plan().shape().opening().inches()) + " clear. "
                + gate.sentence() + ". Its leaf rolls on two posts and touches no ground; "
                + subject.length(-gate.subject().plan().shape().openEnd().inches())
                + " behind the opening stays clear for it, for good. Moved by hand.");
        paper.add(new Block.Picture(
                Scale.fitted(
                        subject.units(),
                        scale -> SlideElevation.picture(gate.subject(), scale),
                        Pages.columnWidth(subject.options().size()),
                        PICTURE_HIGH_IN),
                "Seen from outside, facing the closed gate. Dashed: where its tail reaches when it stands open. Please"
                        + " check the side it opens to, and initial below."));
        paper.add(new Block.Blank(List.of("Side it opens to and the room it needs are right: initials", "date"), 0.25));
    }

    private static String infill(GatePaper gate) {
        if (!gate.leaf().panels().isEmpty()) return "panels";
        return gate.leaf().nailers().isEmpty() ? "steel pickets" : "boards";
    }

    private static Drawing picture(GatePaper gate, Scale scale) {
        return gate.isPair()
                ? PairElevation.picture(gate.subjects().get(0), gate.subjects().get(1), gate.active(), scale)
                : GateElevation.picture(gate.subject(), scale);
    }

    private static List<String> included(PacketSubject subject) {
        List<String> in = new ArrayList<>();
        if (ConcreteSheet.isFor(subject)) in.add("Posts set in concrete to the depths checked for this ground");
        else in.add("Posts as the drawings and the post schedule say");
        if (subject.layout().runs().stream().anyMatch(run -> !run.bays().isEmpty()))
            in.add("The fence as described, with rails, fasteners and post caps");
        if (!subject.gates().isEmpty()) in.add("Each gate as drawn, hung, with hinges and latch");
        if (!subject.slides().isEmpty()) in.add("Rollers, stops and receiver of the slide as drawn");
        if (!subject.gates().isEmpty() || !subject.slides().isEmpty())
            in.add("One gate adjustment within the first two months");
        if (!subject.job().existing().fences().isEmpty()) in.add("Taking out and hauling off the old fence");
        for (Price price : subject.price()) {
            for (UnitOffer offer : price.unitOffers()) {
                if (offer.included() > 0) in.add(DecimalText.upTo(offer.included(), 1) + " times " + offer.name());
            }
        }
        return in;
    }

    /** What the ground may hold, priced before anybody digs; nothing where nobody does. */
    private static void unforeseen(Paper.Builder paper, PacketSubject subject) {
        Table.Builder table = Table.with(Column.words("If it is met"), Column.right("Each"));
        for (Price price : subject.price())
            for (UnitOffer offer : price.unitOffers())
                if (ConcreteSheet.isFor(subject) || offer.included() > 0)
                    table.row(
                            (offer.included() > 0 ? "beyond that, " : "") + offer.name(),
                            offer.each().text());
        if (!table.isEmpty()) paper.add(table.table());
    }

    private static List<String> excluded(PacketSubject subject) {
        List<String> out = new ArrayList<>();
        if (subject.price().stream().allMatch(price -> price.unitOffers().isEmpty()) && ConcreteSheet.isFor(subject))
            out.add("Rock, buried concrete, roots: $________ for each hole that refuses; extra depth: $________ a"
                    + " foot");
        out.add("Survey: you tell us where the line is, and stand for it");
        out.add("Private lines nobody marks: irrigation, lighting, drains, dog wire");
        boolean stained =
                subject.job().runs().stream().anyMatch(run -> !run.stain().isNone());
        out.add(WoodParts.anywhere(subject) && !stained ? "Staining, grading, permit fees" : "Grading, permit fees");
        out.addAll(subject.job().money().offer().exclusions());
        out.add("Ground that rises later (pavers, sod, mulch): tell us now"
                + (subject.job().ground().later().isEmpty() ? "; none was named" : "; what you named is counted"));
        return out;
    }

    private static void price(Paper.Builder paper, PacketSubject subject, Price price) {
        paper.heading("Price");
        Table.Builder table = Table.with(Column.words(""), Column.right("Amount"));
        table.row("The work as described", price.price().text());
        for (TaxAmount tax : price.taxes())
            if (!tax.amount().isZero()) table.row(tax.name(), tax.amount().text());
        table.total("Total", price.total().text());
        paper.add(table.table());
        OfferBlocks.add(paper, subject, price.total());
        if (!price.stages().isEmpty()) {
            Table.Builder stages = Table.with(Column.words("Due"), Column.right("Amount"));
            for (Payment payment : price.stages())
                stages.row(payment.when(), payment.amount().text());
            paper.subheading("Payments").add(stages.table());
        }
        subject.job().money().validUntil().value().ifPresent(day -> paper.say("Good through " + day + "."));
    }

    private static void terms(Paper.Builder paper, PacketSubject subject) {
        paper.heading("Good to know");
        boolean gates = !subject.gates().isEmpty() || !subject.slides().isEmpty();
        String normal = (WoodParts.anywhere(subject)
                        ? "Wood moves, checks and turns gray; gaps open in dry months and close in wet ones. That is normal. "
                        : "")
                + (gates
                        ? "A gate settles a little when it is hung and in its first year; we set it with that in mind. "
                        : "");
        paper.say(normal + "The care card says what to look at and when.");
        paper.say("Local code governs heights, setbacks and pool barriers. Numbers in our calculation book are for"
                + " review by a licensed engineer where one is required.");
        if (!subject.job().notes().isEmpty())
            paper.say("Agreed on site: " + String.join(" ", subject.job().notes()));
        paper.note("Changes to this work are priced and signed before they are done. Ask us about the notice of"
                + " cancellation where your state gives one.");
        paper.heading("Accepted");
        paper.add(new Block.Blank(List.of("Customer", "Date"), 0.45));
        paper.add(
                new Block.Blank(List.of("For " + subject.options().contractor().get(0), "Date"), 0.45));
    }
}
