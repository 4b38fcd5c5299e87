package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.takeoff.TakeoffLine;

/** What was ordered against what came, by supplier: counted at the tailgate, before anything is signed for. */
public final class Receiving {
    private Receiving() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Receiving", subject.running()).flag(subject.flag());
        Map<String, List<TakeoffLine>> suppliers = new LinkedHashMap<>();
        for (var takeoff : subject.takeoff()) {
            for (TakeoffLine line : takeoff.lines()) {
                if (line.units() > 0)
                    suppliers
                            .computeIfAbsent(line.sold().supplier(), key -> new ArrayList<>())
                            .add(line);
            }
        }
        if (suppliers.isEmpty()) return paper.say("Nothing is ordered yet.").paper();
        paper.say("Count before signing. Measure one stick of every bundle: write it where it is shorter than ordered."
                + " What is short or swapped goes to the office the same day.");
        suppliers.forEach((supplier, lines) -> {
            paper.heading(supplier.isEmpty() ? "Supplier to be named" : supplier);
            Table.Builder table = Table.with(
                    Column.tick("All"),
                    Column.right("Ordered"),
                    Column.left("Unit"),
                    Column.words("What"),
                    Column.left("Came"),
                    Column.left("Short"),
                    Column.left("Damaged"));
            for (TakeoffLine line : lines)
                table.row(
                        "\u2610",
                        DecimalText.whole((double) line.units()),
                        line.sold().unit().key(),
                        line.sold().name(),
                        "______",
                        "______",
                        "______");
            paper.add(table.table());
            paper.say("Delivery note ________________   received by ________________   on ____________");
        });
        return paper.paper();
    }
}
