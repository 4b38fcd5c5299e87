package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.takeoff.PartGroup;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Table;
import plumbleaf.web.page.Unit;

/** What is bought and how it is cut. */
final class StockRoom {
    private StockRoom() {}

    static List<Panel> panels(Opened opened) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String id = opened.text().value("runs[" + i + "].id").orElse("");
            panels.add(Panel.of("Posts of run " + id, id)
                    .withFields(List.of(
                            opened.pinned("builds." + id + ".post", "Line post", id, Choices.posts(opened.catalogue())),
                            opened.field("builds." + id + ".hole", "Hole", Unit.INCHES, id),
                            opened.field("builds." + id + ".depth", "Footing depth", Unit.INCHES, id))));
        }
        opened.design().ifPresent(design -> {
            List<Note> notes = Notes.inAreas(opened.findings(), List.of("stock", "takeoff", "cut"));
            if (!notes.isEmpty()) panels.add(0, Panel.of("Order", "").withNotes(notes));
            panels.addAll(order(design.quote().takeoff()));
            panels.add(plans(design.quote().takeoff()));
        });
        return panels;
    }

    private static List<Panel> order(Takeoff takeoff) {
        List<Panel> panels = new ArrayList<>();
        for (PartGroup group : PartGroup.values()) {
            List<Table.Line> lines = new ArrayList<>();
            for (TakeoffLine line : takeoff.lines()) {
                if (line.group() != group) continue;
                lines.add(new Table.Line(
                        line.causes().size() == 1 ? line.causes().get(0).part() : "",
                        List.of(
                                line.sold().name(),
                                Long.toString(line.units()),
                                line.cost().text())));
            }
            if (lines.isEmpty()) continue;
            String words = group.key().substring(0, 1).toUpperCase(Locale.ROOT)
                    + group.key().substring(1);
            panels.add(Panel.of(words, "")
                    .withTables(List.of(new Table("To buy", List.of("Item", "Units", "Cost"), lines))));
        }
        return panels;
    }

    private static Panel plans(Takeoff takeoff) {
        List<Table.Line> lines = new ArrayList<>();
        for (CutPlan plan : takeoff.cutPlans()) {
            if (plan.bars().isEmpty()) continue;
            lines.add(new Table.Line(
                    "",
                    List.of(
                            plan.stock(),
                            Integer.toString(plan.bars().size()),
                            plan.cost().text(),
                            plan.proven()
                                    ? "proven"
                                    : "floor " + plan.lowerBound().text())));
        }
        return Panel.of("Cut plans", "")
                .withTables(List.of(new Table("Bars to cut", List.of("Stock", "Bars", "Cost", "Proof"), lines)));
    }
}
