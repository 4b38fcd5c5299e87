package plumbleaf.documents.packet;

import java.util.Locale;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.takeoff.LoadList;

/** What goes on the truck, day by day in the order it is used, what is not in it by habit, and a column for what comes back. */
public final class LoadSheet {
    private LoadSheet() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Load list", subject.running()).flag(subject.flag());
        if (subject.load().isEmpty() || subject.load().get(0).loads().isEmpty())
            return paper.say("Nothing is loaded yet: there is no take-off.").paper();
        LoadList list = subject.load().get(0);
        paper.say(
                "Each day in the order it is used: load from the bottom of its list up, so that the first thing needed comes off first.");
        for (LoadList.Load load : list.loads()) day(paper, subject, load);
        for (Finding finding : list.findings())
            paper.add(Block.Paragraph.bold(
                    sentence(finding.message()) + " (" + finding.basis().words() + ")"));
        return paper.paper();
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static void day(Paper.Builder paper, PacketSubject subject, LoadList.Load load) {
        String day = load.stage().key();
        paper.heading(sentence(day));
        Table.Builder table = Table.with(
                Column.tick("On"),
                Column.right("Count"),
                Column.left("Unit"),
                Column.words("What"),
                Column.right("Longest"),
                Column.right("Weight, lb"),
                Column.left("Back"));
        for (LoadList.LoadLine line : load.lines())
            table.row(
                    "\u2610",
                    DecimalText.whole((double) line.count()),
                    line.unit(),
                    line.what() + (LoadList.isHeavy(line) ? " (two people)" : ""),
                    line.longest().isZero() ? "" : subject.length(line.longest().inches()),
                    Order.pounds(line.weight()),
                    "____");
        table.total(
                "",
                "",
                "",
                load.lines().size() + (load.lines().size() == 1 ? " line" : " lines"),
                load.longest().isZero() ? "" : subject.length(load.longest().inches()),
                DecimalText.whole(load.weight().pounds()),
                "");
        paper.add(table.table());
        paper.say("Not in the truck by habit: \u2610 "
                + String.join("; \u2610 ", load.stage().tools()) + ".");
    }
}
