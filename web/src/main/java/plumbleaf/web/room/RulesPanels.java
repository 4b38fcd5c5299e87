package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.web.page.Entry;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** What a place asks of a fence, and what lies under it: heights, gaps, lot lines, sight, a pool, buried lines, tickets. */
final class RulesPanels {
    private RulesPanels() {}

    static List<Panel> panels(Opened opened) {
        return List.of(heights(opened), lines(opened), pool(opened), below(opened));
    }

    private static Panel heights(Opened opened) {
        List<Panel.Strip> strips = new ArrayList<>();
        strips.addAll(Listed.strips(opened, Ledger.HEIGHT_RULE, "rules.otherHeights", "Height rule"));
        strips.addAll(Listed.strips(opened, Ledger.KEEPS, "rules.keeps", "Keeps"));
        strips.addAll(Listed.strips(opened, Ledger.GUARD, "rules.guards", "Guard"));
        return Panel.of("Height and gap rules", "rules")
                .withNotes(Notes.inAreas(opened.findings(), List.of("height", "gap", "guard")))
                .withFields(List.of(
                        optional(opened, "rules.height.limit", "Fence at most", Unit.FEET, "no height rule"),
                        opened.fields()
                                .choice(
                                        "rules.height.from",
                                        "Measured from",
                                        Unit.WORDS,
                                        "rules",
                                        Choices.FROM,
                                        "say the height first"),
                        opened.field("rules.gap.largest", "Largest gap to the ground", Unit.INCHES, "rules"),
                        optional(opened, "rules.gap.why", "What the gap rule is for", Unit.WORDS, "dog, child, code")))
                .withEntries(entries(opened, List.of(Ledger.HEIGHT_RULE, Ledger.KEEPS, Ledger.GUARD)))
                .withStrips(strips);
    }

    private static Panel lines(Opened opened) {
        List<Panel.Strip> strips = new ArrayList<>();
        strips.addAll(Listed.strips(opened, Ledger.LOT_LINE, "rules.propertyLines", "Lot line"));
        strips.addAll(Listed.strips(opened, Ledger.SIGHT, "rules.sights", "Sight"));
        strips.addAll(Listed.strips(opened, Ledger.BUILDING, "rules.nearHouse.buildings", "Building"));
        strips.addAll(Listed.strips(opened, Ledger.ACCESSIBLE, "rules.accessible", "Way"));
        strips.addAll(Listed.strips(opened, Ledger.OVERNIGHT, "rules.overnight", "Overnight"));
        return Panel.of("Lot lines, sight, buildings", "rules")
                .withFields(List.of(
                        optional(
                                opened,
                                "rules.nearHouse.strip",
                                "Strip by buildings where nothing may burn",
                                Unit.FEET,
                                "no such strip"),
                        opened.fields()
                                .choice(
                                        "rules.nearHouse.required",
                                        "The place requires the strip",
                                        Unit.COUNT,
                                        "rules",
                                        Choices.TRUE_FALSE,
                                        "not known")))
                .withEntries(entries(
                        opened,
                        List.of(Ledger.LOT_LINE, Ledger.SIGHT, Ledger.BUILDING, Ledger.ACCESSIBLE, Ledger.OVERNIGHT)))
                .withStrips(strips);
    }

    private static Panel pool(Opened opened) {
        List<Panel.Strip> strips = new ArrayList<>();
        strips.addAll(Listed.strips(opened, Ledger.POOL_RUN, "rules.pool.runs", "Run"));
        strips.addAll(Listed.strips(opened, Ledger.HARD_GROUND, "rules.pool.hardGround", "Hard ground"));
        strips.addAll(Listed.strips(opened, Ledger.CLIMBABLE, "rules.pool.climbables", "Climbable"));
        strips.addAll(Listed.strips(opened, Ledger.POOL_GATE, "rules.pool.gates", "Gate"));
        List<Entry> entries =
                entries(opened, List.of(Ledger.POOL_RUN, Ledger.POOL_GATE, Ledger.HARD_GROUND, Ledger.CLIMBABLE));
        boolean any = opened.text().count("rules.pool.runs") > 0 || !strips.isEmpty();
        Panel panel = Panel.of("Pool barrier", "rules").withEntries(entries).withStrips(strips);
        if (!any && !opened.typed().path().startsWith("rules.pool.")) return panel;
        return panel.withFields(List.of(
                opened.choice("rules.pool.side", "The pool lies", "rules", Choices.WAYS),
                optional(opened, "rules.pool.height", "Height asked for", Unit.INCHES, "as the code says"),
                opened.fields()
                        .choice(
                                "rules.pool.lookedOutside",
                                "Someone looked for things to climb on",
                                Unit.COUNT,
                                "rules",
                                Choices.TRUE_FALSE,
                                "nobody looked")));
    }

    private static Panel below(Opened opened) {
        List<Panel.Strip> strips = new ArrayList<>();
        strips.addAll(Listed.strips(opened, Ledger.TICKET, "existing.tickets", "Ticket"));
        strips.addAll(Listed.strips(opened, Ledger.PRIVATE_LINE, "existing.lines", "Line"));
        strips.addAll(Listed.strips(opened, Ledger.PLUG, "existing.plugs", "Plug"));
        strips.addAll(Listed.strips(opened, Ledger.OLD_FENCE, "existing.fences", "Old fence"));
        return Panel.of("In the ground, and who may dig when", "existing")
                .withNotes(opened.findings().stream()
                        .filter(RulesPanels::isOfDigging)
                        .map(Notes::of)
                        .toList())
                .withEntries(
                        entries(opened, List.of(Ledger.TICKET, Ledger.PRIVATE_LINE, Ledger.PLUG, Ledger.OLD_FENCE)))
                .withStrips(strips);
    }

    private static boolean isOfDigging(Finding finding) {
        return finding.severity() != Severity.PASS
                && (finding.id().startsWith("dig.") || finding.id().startsWith("ticket."));
    }

    private static List<Entry> entries(Opened opened, List<Ledger> ledgers) {
        return ledgers.stream().map(ledger -> ledger.entry(opened)).toList();
    }

    private static Field optional(Opened opened, String path, String label, Unit unit, String ifOpen) {
        return opened.fields().choice(path, label, unit, "rules", List.of(), ifOpen);
    }
}
