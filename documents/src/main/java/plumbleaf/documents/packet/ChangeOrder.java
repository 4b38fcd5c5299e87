package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.design.Difference;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.DecimalText;

/** What the customer signs before a change is made: what changes, what it adds to price and days, what the contract comes to. No cost of ours is on it. */
public final class ChangeOrder {
    private ChangeOrder() {}

    /**
     * @param subject the job as it is to be
     * @param what the change in a sentence
     * @param accepted total with tax of the job as it was accepted, earlier signed changes with it
     */
    public static Paper of(PacketSubject subject, Difference difference, String what, Money accepted) {
        Paper.Builder paper = Paper.titled("Change order", subject.running()).flag(subject.flag());
        paper.say("For " + subject.job().site().customer() + ", "
                + subject.job().site().address() + ".");
        paper.heading("What changes").say(what);
        if (!difference.parts().isEmpty()) {
            Table.Builder parts = Table.with(Column.words("Part"), Column.words("Becomes"));
            for (Difference.PartChange part : difference.parts())
                parts.row(name(part.part()), part.way().key());
            paper.add(parts.table());
        }
        paper.heading("What it comes to");
        Table.Builder sums = Table.with(Column.words(""), Column.right("Amount"));
        sums.row("Accepted so far, with tax", accepted.text());
        sums.row("This change, with tax", difference.price().signedText());
        sums.total("New contract", accepted.plus(difference.price()).text());
        paper.add(sums.table());
        double days = difference.siteDays();
        paper.say(
                days == 0
                        ? "The days on site stay as they are."
                        : DecimalText.upTo(Math.abs(days), 1) + (Math.abs(days) == 1 ? " day" : " days") + " on site "
                                + (days > 0 ? "more." : "less."));
        paper.note(
                "The changed work was designed and checked like the rest of the job. Local code governs. Nothing of it is begun before both have signed.");
        paper.heading("Agreed");
        paper.add(new Block.Blank(List.of("Customer", "Date"), 0.45));
        paper.add(
                new Block.Blank(List.of("For " + subject.options().contractor().get(0), "Date"), 0.45));
        return paper.paper();
    }

    private static String name(String part) {
        return (part.startsWith("G") ? "Gate " : "Post ") + part;
    }
}
