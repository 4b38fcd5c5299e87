package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.gate.SlideShape;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.DecimalText;

/** A slide gate on the papers that outlast the work: care card, as-built record, hand-over and permit sheet. It has no hinge, so it is asked other things. */
final class SlideRecords {
    private static final String LINE = "________";
    private static final String BOX = "\u2610";

    private SlideRecords() {}

    /** What the customer measures again in spring and fall. */
    static void care(Paper.Builder paper, PacketSubject subject, SlidePaper gate) {
        SlidePlan plan = gate.subject().plan();
        paper.heading("Gate " + gate.id() + ": measured on the day it was set");
        Table.Builder table = Table.with(
                Column.words("Where"),
                Column.right("Planned"),
                Column.right("That day"),
                Column.right("Spring"),
                Column.right("Fall"));
        table.row("Nose over or under the middle of its receiver", "0", LINE, LINE, LINE);
        table.row(
                "Least room under the leaf, along its whole way",
                subject.room(plan.travel().least().inches()),
                LINE,
                LINE,
                LINE);
        gate.carried()
                .ifPresent(is -> table.row(
                        "Hand scale on the nose, moving",
                        DecimalText.whole(is.rolling().pounds()) + " lb",
                        LINE,
                        LINE,
                        LINE));
        table.row("Roller posts and receiver post plumb, both ways", "plumb", LINE, LINE, LINE);
        paper.add(table.table());
        gate.carried()
                .ifPresent(is -> paper.say("The nose may come down about "
                        + subject.inches(
                                Math.max(1 / 16.0, is.sag().afterSetting().inches()))
                        + " over the years as wheels wear and ground settles. More than twice that, or a nose that misses its"
                        + " receiver: call us."));
        paper.say("It needs its whole way: keep " + runBack(subject, plan)
                + " behind the opening clear of plants, snow, bins and parked things, and the ground under it as low as it is"
                + " today. Push and pull it at the front end, at a walk, and let nobody ride on it.");
        paper.say(
                "Keep hands and children off rollers and posts while it moves. Never take out a stop or loosen a roller: "
                        + "off its rollers the leaf falls over, and it weighs "
                        + DecimalText.whole(plan.leaf().weight().wet().pounds()) + " lb.");
    }

    /** What really stands there. */
    static void asBuilt(Paper.Builder paper, PacketSubject subject, SlidePaper gate) {
        SlidePlan plan = gate.subject().plan();
        SlideShape shape = plan.shape();
        paper.heading("Gate " + gate.id());
        Table.Builder table = Table.with(
                Column.words("What"), Column.right("Planned"), Column.right("As set"), Column.left("As built"));
        int at = 0;
        for (String where : new String[] {"top", "middle", "bottom"})
            table.row(
                    "Clear opening, " + where,
                    subject.length(shape.opening().inches()),
                    measured(subject, gate, at++),
                    LINE);
        table.row(
                "Roller posts, center to center", subject.length(shape.spacing().inches()), "\u2013", LINE);
        table.row("Run-back kept clear, behind the opening", runBack(subject, plan), "\u2013", LINE);
        table.row(
                "Least room under the leaf, along its whole way",
                subject.room(plan.travel().least().inches()),
                "\u2013",
                LINE);
        table.row("Nose in its receiver", subject.inches(shape.overlap().inches()), "\u2013", LINE);
        gate.carried()
                .ifPresent(is -> table.row(
                        "Rear rollers set below level",
                        subject.inches(Math.max(0, is.sag().rearLower().inches())),
                        "\u2013",
                        LINE));
        paper.add(table.table());
        gate.asked().lastSet().ifPresent(is -> paper.note("The opening as set was measured on " + is.date() + "."));
    }

    private static String measured(PacketSubject subject, SlidePaper gate, int at) {
        return gate.asked()
                .lastSet()
                .map(is -> List.of(is.top(), is.middle(), is.bottom()))
                .map(lengths -> subject.length(lengths.get(at).inches()))
                .orElse("_______");
    }

    /** What is looked at together with the customer. */
    static void handOver(Paper.Builder paper, PacketSubject subject, SlidePaper gate) {
        Table.Builder table = Table.with(
                Column.tick("Good"), Column.words("Gate " + gate.id()), Column.right("Planned"), Column.right("Today"));
        SlidePlan plan = gate.subject().plan();
        table.row(
                BOX,
                "least room under the leaf, along its whole way",
                subject.room(plan.travel().least().inches()),
                LINE);
        table.row(BOX, "run-back clear, behind the opening", runBack(subject, plan), LINE);
        table.row(BOX, "stops at both ends of its way hold it", "yes", LINE);
        table.row(BOX, "nose goes into its receiver by itself, five times out of five", "5", LINE);
        paper.add(table.table());
    }

    /** Where the open leaf stands, in words that a plan checker can hold against the plan. */
    static String over(PacketSubject subject, SlidePaper gate) {
        SlidePlan plan = gate.subject().plan();
        boolean in = plan.kind().spec().beside() == SwingWay.IN;
        return "nothing: it runs " + runBack(subject, plan) + " back, "
                + (in ? "inside, behind its own fence" : "outside, in front of its own fence: check walk and road");
    }

    private static String runBack(PacketSubject subject, SlidePlan plan) {
        return subject.length(-plan.shape().openEnd().inches());
    }
}
