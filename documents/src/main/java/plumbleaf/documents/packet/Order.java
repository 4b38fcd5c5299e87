package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;

/** What is ordered, by supplier, in units of sale and the supplier's words. No prices: this goes out of the house. */
public final class Order {
    private Order() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Material order", subject.running()).flag(subject.flag());
        if (subject.takeoff().isEmpty() || subject.takeoff().get(0).lines().isEmpty())
            return paper.say(
                            "Nothing is ordered yet: the job names no price book that the program knows, so it cannot say in which units things are sold.")
                    .paper();
        Takeoff takeoff = subject.takeoff().get(0);
        paper.say("Deliver to " + subject.job().site().address()
                + ". Units are whole units of sale, waste counted once. Call before you substitute anything"
                + " marked \u201cno\u201d: it was checked as named.");
        Map<String, List<TakeoffLine>> suppliers = new LinkedHashMap<>();
        for (TakeoffLine line : takeoff.lines())
            if (line.units() > 0)
                suppliers
                        .computeIfAbsent(line.sold().supplier(), key -> new ArrayList<>())
                        .add(line);
        for (Map.Entry<String, List<TakeoffLine>> supplier : suppliers.entrySet())
            supplier(paper, subject, supplier.getKey(), supplier.getValue());
        if (!takeoff.taken().isEmpty())
            paper.say("Not ordered, taken out of the yard: "
                    + String.join(
                            ", ",
                            takeoff.taken().stream()
                                    .map(take -> take.count() + " " + takeoff.nameOf(take, subject.units()) + " ("
                                            + take.mark() + ")")
                                    .toList())
                    + ".");
        paper.add(Block.Paragraph.bold("Whole load: about "
                + DecimalText.whole(takeoff.weight().pounds()) + " lb. Check truck, trailer and off-loading."));
        paper.add(new Block.Blank(List.of("Purchase order", "Ordered by, date"), 0.35));
        return paper.paper();
    }

    private static String unit(TakeoffLine line) {
        String unit = line.sold().unit().key();
        if (line.units() == 1 || unit.equals("each") || unit.equals("lb")) return unit;
        return unit + (unit.endsWith("x") ? "es" : "s");
    }

    private static String holds(PacketSubject subject, TakeoffLine line) {
        boolean single = line.sold().of() == NetUnit.PIECES && line.sold().contents() == 1;
        if (line.sold().of().key().equals("lb"))
            return subject.units().weight(line.sold().contents());
        return single
                ? ""
                : DecimalText.upTo(line.sold().contents(), 2) + " "
                        + line.sold().of().key();
    }

    /** A section was checked as named; anything else may come in another package, and says in which. */
    private static String swap(TakeoffLine line) {
        if (line.cut()) return "no";
        return line.others().stream()
                .filter(other -> other.sold().supplier().equals(line.sold().supplier()))
                .filter(other -> other.sold().unit() == line.sold().unit())
                .map(other ->
                        other.units() + " of " + DecimalText.upTo(other.sold().contents(), 2))
                .findFirst()
                .orElse("ask");
    }

    /** The first day of the work that uses it; the work alone where no day is set. */
    private static String need(TakeoffLine line) {
        String work = line.need().work();
        return line.need().day().value().map(day -> day + ", " + work).orElse(work);
    }

    private static void supplier(Paper.Builder paper, PacketSubject subject, String supplier, List<TakeoffLine> lines) {
        paper.heading(supplier.isEmpty() ? "Supplier to be named" : supplier);
        Table.Builder table = Table.with(
                Column.tick("Got"),
                Column.right("Quantity"),
                Column.left("Unit"),
                Column.words("What"),
                Column.words("Code"),
                Column.right("Holds"),
                Column.left("Swap?"),
                Column.right("Weight, lb"));
        double weight = 0;
        String needed = "";
        List<TakeoffLine> byNeed = new ArrayList<>(lines);
        byNeed.sort(Comparator.comparing(Order::need));
        for (TakeoffLine line : byNeed) {
            if (!need(line).equals(needed)) {
                needed = need(line);
                table.group("Needed by " + needed);
            }
            weight += line.weight().pounds();
            table.row(
                    "\u2610",
                    DecimalText.whole((double) line.units()),
                    unit(line),
                    line.sold().name(),
                    line.item(),
                    holds(subject, line),
                    swap(line),
                    pounds(line.weight()));
        }
        table.total(
                "",
                "",
                "",
                lines.size() + (lines.size() == 1 ? " line" : " lines"),
                "",
                "",
                "",
                pounds(Force.pounds(weight)));
        paper.add(table.table());
    }

    /** What weighs next to nothing still weighs something. */
    static String pounds(Force weight) {
        double pounds = weight.pounds();
        return pounds > 0 && pounds < 0.5 ? "under 1" : DecimalText.whole(pounds);
    }
}
