package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.takeoff.Cause;
import plumbleaf.engine.takeoff.LoadList;
import plumbleaf.engine.takeoff.OnHand;
import plumbleaf.engine.takeoff.OtherWay;
import plumbleaf.engine.takeoff.PartGroup;
import plumbleaf.engine.takeoff.StockTake;
import plumbleaf.engine.takeoff.Supplied;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.stock.CameTable;
import plumbleaf.jobfile.stock.ItemNames;
import plumbleaf.jobfile.stock.OrderTables;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.Yard;
import plumbleaf.jobfile.stock.YardRow;
import plumbleaf.web.page.Link;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Table;
import plumbleaf.web.page.Unit;

/** What is bought and how it is cut. */
final class StockRoom {
    private StockRoom() {}

    /** The order, the load list and the take-off as tables, and the page to count on. */
    static List<Link> links(Opened opened, boolean money) {
        if (opened.design().isEmpty()) return List.of();
        String at = "/jobs/" + opened.stored().id().text() + "/stock/";
        List<Link> links = new ArrayList<>();
        links.add(new Link("Count what came", at + "receiving"));
        links.add(new Link("Order (CSV)", at + "order.csv"));
        links.add(new Link("Load list (CSV)", at + "load.csv"));
        if (money) links.add(new Link("Take-off with reasons (CSV)", at + "takeoff.csv"));
        return links;
    }

    /** What the job uses of the yard, and whether it has been taken. */
    private static Panel yard(Opened opened, Takeoff takeoff, Yard yard, ItemNames names) {
        Taker job = opened.taker();
        Figures figures = opened.figures();
        List<Table.Line> lines = new ArrayList<>();
        for (StockTake take : takeoff.taken())
            lines.add(new Table.Line(
                    "", List.of(take.mark(), Integer.toString(take.count()), takeoff.nameOf(take, figures.units()))));
        List<Table.Line> kept = new ArrayList<>();
        for (OnHand.HeldBar bar : takeoff.kept())
            kept.add(new Table.Line("", List.of(takeoff.bareNameOf(bar.item()), figures.length(bar.length()))));
        List<Table> tables = new ArrayList<>();
        if (!lines.isEmpty()) tables.add(new Table("Out of the yard", List.of("Mark", "Count", "What"), lines));
        if (!kept.isEmpty()) tables.add(new Table("Offcuts worth keeping", List.of("What", "Length"), kept));
        List<Table.Line> waits = new ArrayList<>();
        for (YardRow row : yard.keptFor(job))
            waits.add(new Table.Line(
                    "",
                    List.of(
                            row.mark(),
                            Integer.toString(row.count()),
                            named(names, row),
                            row.neededBy().isEmpty() ? "" : "by " + row.neededBy())));
        if (!waits.isEmpty())
            tables.add(new Table("Came for this job", List.of("Mark", "Count", "What", "Needed"), waits));
        if (tables.isEmpty()) return Panel.of("Yard", "");
        boolean taken = yard.knows(job);
        Panel.Press press = taken
                ? new Panel.Press("Give back to the yard", "give-back")
                : new Panel.Press("Take from the yard, leave the offcuts", "take-from-yard");
        boolean stuck = taken && !yard.usedSince(job).isEmpty();
        return Panel.of(taken ? "Yard: taken" : "Yard", "")
                .withTables(tables)
                .withPresses(stuck ? List.of() : List.of(press));
    }

    private static String named(ItemNames names, YardRow row) {
        String size = ItemNames.size(row);
        return names.of(row) + (size.isEmpty() ? "" : ", " + size);
    }

    static List<Panel> panels(Opened opened, Yard yard, ItemNames names) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String id = opened.text().value("runs[" + i + "].id").orElse("");
            panels.add(Panel.of("Posts of run " + id, id)
                    .withFields(List.of(
                            opened.pinned(
                                    "builds." + id + ".post", "Line post", id, Choices.linePosts(opened.catalogue())),
                            opened.field("builds." + id + ".hole", "Hole", Unit.INCHES, id),
                            opened.field("builds." + id + ".depth", "Footing depth", Unit.INCHES, id))));
        }
        opened.design().ifPresent(design -> {
            List<Note> notes = Notes.inAreas(opened.findings(), List.of("stock", "takeoff", "cut", "truck"));
            if (!notes.isEmpty()) panels.add(0, Panel.of("Order", "").withNotes(notes));
            Takeoff takeoff = design.quote().takeoff();
            panels.addAll(order(takeoff, opened.taker(), yard));
            panels.add(Panel.of("Suppliers", "").withTables(suppliers(takeoff, opened.figures())));
            List<Table> others = otherWays(takeoff);
            if (!others.isEmpty()) panels.add(Panel.of("Sold otherwise", "").withTables(others));
            panels.add(plans(takeoff));
            panels.add(loads(design.quote().load(), takeoff, opened.figures()));
            panels.add(yard(opened, takeoff, yard, names));
        });
        return panels;
    }

    private static List<Panel> order(Takeoff takeoff, Taker job, Yard yard) {
        List<Panel> panels = new ArrayList<>();
        for (PartGroup group : PartGroup.values()) {
            Map<String, List<Table.Line>> byNeed = new LinkedHashMap<>();
            for (TakeoffLine line : takeoff.lines()) {
                if (line.group() != group) continue;
                byNeed.computeIfAbsent(needed(line), need -> new ArrayList<>())
                        .add(new Table.Line(
                                parts(line),
                                List.of(
                                        line.sold().name() + OrderTables.roundedFrom(line),
                                        line.units() + " " + line.sold().unit().key() + came(line, job, yard)
                                                + (line.fromYard() > 0 ? ", rest from the yard" : ""),
                                        OrderTables.unused(line),
                                        line.cost().text())));
            }
            if (byNeed.isEmpty()) continue;
            String words = group.key().substring(0, 1).toUpperCase(Locale.ROOT)
                    + group.key().substring(1);
            List<Table> tables = new ArrayList<>();
            byNeed.forEach(
                    (need, lines) -> tables.add(new Table(need, List.of("Item", "Units", "Not used", "Cost"), lines)));
            panels.add(Panel.of(words, "").withTables(tables));
        }
        return panels;
    }

    private static String came(TakeoffLine line, Taker job, Yard yard) {
        String came = CameTable.came(line, job, yard);
        return came.isEmpty() ? "" : ", " + came;
    }

    /** The parts a line is for, each once: bays and leaves for their boards, posts for theirs. */
    private static String parts(TakeoffLine line) {
        Set<String> parts = new LinkedHashSet<>();
        for (Cause cause : line.causes()) {
            parts.add(cause.part());
            parts.add(Cause.whole(cause.part()));
        }
        return String.join(" ", parts);
    }

    /** When it has to be there, and for what; what lies in the yard is there. */
    private static String needed(TakeoffLine line) {
        if (line.units() == 0) return "Out of the yard";
        String work = line.need().work();
        if (work.isEmpty()) return "To buy";
        String day = OrderTables.day(line);
        return (day.isEmpty() ? "To buy for: " : "Here by " + day + ": ") + work;
    }

    /** How many, and whether they are shown to be the fewest for these bars. */
    private static String setUps(CutPlan plan) {
        return plan.setUps() + (plan.hasFewestSetUps() && plan.setUps() > 1 ? ", fewest" : "");
    }

    /** Every piece of a plan, and the bays, leaves and posts they are of. */
    private static String parts(CutPlan plan) {
        Set<String> parts = new LinkedHashSet<>();
        for (CutBar bar : plan.bars()) {
            for (Cut cut : bar.cuts()) {
                parts.add(cut.piece());
                parts.add(Cause.whole(cut.piece()));
            }
        }
        return String.join(" ", parts);
    }

    private static List<Table> suppliers(Takeoff takeoff, Figures figures) {
        List<Table.Line> lines = new ArrayList<>();
        for (Supplied supplied : Supplied.of(takeoff)) {
            Set<String> parts = new LinkedHashSet<>();
            for (TakeoffLine line : supplied.lines()) parts.add(parts(line));
            lines.add(new Table.Line(
                    String.join(" ", parts),
                    List.of(
                            supplied.supplier().isEmpty() ? "to be named" : supplied.supplier(),
                            Integer.toString(supplied.lines().size()),
                            figures.weight(supplied.weight()),
                            supplied.cost().text())));
        }
        return lines.isEmpty()
                ? List.of()
                : List.of(new Table("To order from", List.of("Supplier", "Lines", "Weight", "Cost"), lines));
    }

    /** Bags or ready-mix, another supplier's box: what the other way would cost, and from where it pays. */
    private static List<Table> otherWays(Takeoff takeoff) {
        List<Table.Line> lines = new ArrayList<>();
        for (TakeoffLine line : takeoff.lines()) {
            if (line.units() == 0) continue;
            for (OtherWay other : line.others())
                lines.add(new Table.Line(
                        parts(line),
                        List.of(
                                line.sold().name(),
                                other.units() + " " + other.sold().unit().key() + " "
                                        + other.sold().name() + ", "
                                        + other.sold().supplier(),
                                other.cost().text(),
                                other.cheaperFrom() > 0
                                        ? "from " + DecimalText.upTo(other.cheaperFrom(), 1) + " "
                                                + other.sold().of().key()
                                        : "not up to " + DecimalText.upTo(other.lookedTo(), 1) + " "
                                                + other.sold().of().key())));
        }
        return lines.isEmpty()
                ? List.of()
                : List.of(new Table("Other ways to buy", List.of("Instead of", "Buy", "Cost", "Pays"), lines));
    }

    /** What goes on the truck, day by day, in the order the day uses it. */
    private static Panel loads(LoadList list, Takeoff takeoff, Figures figures) {
        Map<String, String> parts = new LinkedHashMap<>();
        for (TakeoffLine line : takeoff.lines()) parts.merge(line.item(), parts(line), (one, more) -> one + " " + more);
        List<Table> tables = new ArrayList<>();
        for (LoadList.Load load : list.loads()) {
            List<Table.Line> lines = new ArrayList<>();
            for (LoadList.LoadLine line : load.lines())
                lines.add(new Table.Line(
                        parts.getOrDefault(line.item(), line.item()),
                        List.of(
                                line.count() + " " + line.unit() + " " + line.what()
                                        + (LoadList.isHeavy(line) ? ", two people" : ""),
                                line.longest().isZero() ? "" : figures.length(line.longest()),
                                figures.weight(line.weight()))));
            String day = load.stage().key() + ": " + figures.weight(load.weight())
                    + (load.longest().isZero() ? "" : ", longest " + figures.length(load.longest()));
            tables.add(new Table(
                    day.substring(0, 1).toUpperCase(Locale.ROOT) + day.substring(1),
                    List.of("In the order it is used", "Longest", "Weight"),
                    lines));
        }
        return Panel.of("Load list", "").withTables(tables);
    }

    private static Panel plans(Takeoff takeoff) {
        List<Table.Line> lines = new ArrayList<>();
        for (CutPlan plan : takeoff.cutPlans()) {
            if (plan.bars().isEmpty()) continue;
            lines.add(new Table.Line(
                    parts(plan),
                    List.of(
                            takeoff.nameOf(plan),
                            Integer.toString(plan.bars().size()),
                            DecimalText.upTo(plan.wastePct(), 1) + "%",
                            setUps(plan),
                            plan.cost().text(),
                            plan.proven()
                                    ? "proven"
                                    : "not proven: " + plan.gap().text() + " could be saved at most")));
        }
        return Panel.of("Cut plans", "")
                .withTables(List.of(new Table(
                        "Bars to cut", List.of("Stock", "Bars", "Waste", "Set-ups", "Cost", "Proof"), lines)));
    }
}
