package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Entry;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/**
 * What is asked on site, in the order of the walk, one thing a screen. A gate by itself takes twelve; a fence goes from the street along
 * its legs, by its gates, to the soil. Every answer may stay open.
 */
final class WalkSteps {
    private final Opened opened;
    private final List<Step> steps = new ArrayList<>();

    private WalkSteps(Opened opened) {
        this.opened = opened;
    }

    /**
     * @param name a noun, over the questions
     * @param why what hangs on it, or how it is measured
     */
    record Step(String name, String why, List<Panel> panels) {
        Step {
            panels = List.copyOf(panels);
        }

        Step(String name, String why, Panel panel) {
            this(name, why, List.of(panel));
        }
    }

    static List<Step> of(Opened opened) {
        WalkSteps walk = new WalkSteps(opened);
        boolean fence = false;
        for (int i = 0; i < opened.text().count("runs"); i++)
            fence = fence || !walk.said("runs[" + i + "].style").equals("none");
        if (fence || opened.text().count("gates") == 0) walk.fence();
        else walk.gates(true);
        return List.copyOf(walk.steps);
    }

    private void fence() {
        ask(
                "Street",
                "Who it is for, where, and how one gets in.",
                words("site.customer", "Customer"),
                words("site.phone", "Phone"),
                words("site.address", "Address"),
                words("site.access.parking", "Parking"),
                words("site.access.dogs", "Dogs"),
                words("site.access.services", "Power and water"),
                open("site.access.passage", "Narrowest place on the way", Unit.INCHES, "nothing in the way"),
                open("site.access.carry", "Carried from the truck", Unit.FEET, "the truck stands beside"));
        papers();
        for (int i = 0; i < opened.text().count("runs"); i++) run("runs[" + i + "]");
        gates(false);
        steps.add(new Step(
                "Old fence",
                "What has to come out first, and whether its posts stand in concrete.",
                Panel.of("", "existing")
                        .withStrips(Listed.strips(opened, Ledger.OLD_FENCE, "existing.fences", "Old fence"))
                        .withEntries(List.of(Ledger.OLD_FENCE.entry(opened), Ledger.PLUG.entry(opened)))));
        soil();
        look();
    }

    private void papers() {
        steps.add(new Step(
                "Papers",
                "Who vouches for the line, what the place allows, who marks what is buried.",
                Panel.of("", "rules")
                        .withFields(List.of(
                                UsesText.field(opened),
                                open("rules.height.limit", "Fence at most", Unit.FEET, "no height rule known"),
                                opened.fields()
                                        .choice(
                                                "rules.height.from",
                                                "Measured from",
                                                Unit.WORDS,
                                                "rules",
                                                Choices.FROM,
                                                "say the height first")))
                        .withStrips(Listed.strips(opened, Ledger.LOT_LINE, "rules.propertyLines", "Lot line"))
                        .withEntries(List.of(Ledger.LOT_LINE.entry(opened), Ledger.TICKET.entry(opened)))));
    }

    /** A screen for each leg, with the breaks of the ground along it, then the ends. */
    private void run(String at) {
        String id = said(at + ".id");
        int legs = opened.text().count(at + ".legs");
        for (int leg = 0; leg < legs; leg++) {
            Panel.Strip strip = LegFields.of(opened, at, id, leg);
            List<Entry> entries =
                    new ArrayList<>(List.of(Ledger.SHOT.entry(opened).with("run", id)));
            if (leg == legs - 1) entries.add(Ledger.LEG.entry(opened, at + ".legs"));
            entries.add(Ledger.NO_DIG.entry(opened, at + ".noDig"));
            entries.add(Ledger.PRIVATE_LINE.entry(opened));
            steps.add(new Step(
                    "Leg " + strip.of(),
                    "Its length, and the ground wherever its slope changes: three to six places a hundred feet, every"
                            + " hollow and crest.",
                    Panel.of("", id)
                            .withFields(strip.fields())
                            .withStrips(GroundRoom.strips(opened, id))
                            .withEntries(entries)));
        }
        steps.add(new Step(
                "Ends of " + id,
                "What the fence begins and ends at.",
                Panel.of("", id)
                        .withFields(List.of(RunEndText.field(opened, at, id, 0), RunEndText.field(opened, at, id, 1)))
                        .withEntries(List.of(Ledger.GATE.entry(opened), Ledger.RUN.entry(opened)))));
    }

    private void gates(boolean alone) {
        for (int i = 0; i < opened.text().count("gates"); i++) {
            String at = "gates[" + i + "]";
            String id = said(at + ".id");
            if (alone)
                ask("What for", "It decides the rules, the hinges and how wide it must be.", UsesText.field(opened));
            hand(at, id, alone);
            posts(at, id);
            ground(at, id);
            ask(
                    "Ground that rises under " + id,
                    "Sod, mulch, pavers, asphalt: what comes later takes from the room under the leaf.",
                    opened.field(at + ".loads.laterRise", "It rises by", Unit.INCHES, id));
            if (alone) finish(at, id);
            ask(
                    "Latch of " + id,
                    "And what holds the gate open: most service calls begin here.",
                    opened.choice(at + ".latch.model", "Latch", id, Choices.latches(opened.catalogue())),
                    opened.field(at + ".latch.height", "Latch above ground", Unit.INCHES, id),
                    HangingPanel.holdOpen(opened, at, id));
        }
        if (alone) soil();
    }

    private void hand(String at, String id, boolean alone) {
        boolean hung = said(at + ".kind").isEmpty() || said(at + ".kind").equals("swing");
        List<Field> way = new ArrayList<>();
        if (hung) way.add(opened.choice(at + ".hinge", "Hinges, from outside", id, Choices.SIDES));
        if (!said(at + ".kind").equals("slide")) {
            way.add(opened.choice(at + ".swing", "Swings", id, Choices.WAYS));
            way.add(opened.field(at + ".opens", "Opens", Unit.DEGREES, id));
        }
        List<Field> size = new ArrayList<>();
        if (!alone) size.add(opened.field(at + ".station", "Nearer post face, at station", Unit.FEET, id));
        size.add(opened.field(at + ".opening", "Clear between the posts", Unit.INCHES, id));
        List<Field> high = List.of(
                opened.field(at + ".leaf.infill", "Height of the boards", Unit.INCHES, id),
                opened.field(at + ".leaf.bottomGap", "Gap under the leaf", Unit.INCHES, id));
        String outside =
                "Stand outside and face the closed gate. Left open, all four ways are shown and nothing is released.";
        String narrow = "Read it at the top, the middle and the bottom; the smallest counts.";
        if (alone) {
            ask("Hand of " + id, outside, way.toArray(Field[]::new));
            ask("Opening of " + id, narrow, size.toArray(Field[]::new));
            ask("Height of " + id, "To match the fence beside it.", high.toArray(Field[]::new));
            return;
        }
        size.addAll(high);
        ask("Hand of " + id, outside, way.toArray(Field[]::new));
        ask("Opening of " + id, narrow, size.toArray(Field[]::new));
    }

    private void posts(String at, String id) {
        for (Panel panel : HoldPanels.of(opened, at, id))
            steps.add(new Step(
                    panel.heading() + " of " + id,
                    "A post that stays: its girth by tape, and whether it moves when shaken.",
                    new Panel(
                            "",
                            panel.of(),
                            List.of(),
                            panel.fields(),
                            List.of(),
                            List.of(),
                            List.of(),
                            List.of(),
                            List.of(),
                            panel.entries(),
                            List.of(),
                            "")));
    }

    private void ground(String at, String id) {
        String run = said(at + ".run");
        steps.add(new Step(
                "Ground at " + id,
                "Up or down from the foot of the hinge post, at the latch foot and under the leaf's end half open and open;"
                        + " the other side too, if it may swing there.",
                Panel.of("", id)
                        .withStrips(GroundRoom.strips(opened, run))
                        .withEntries(List.of(Ledger.SHOT.entry(opened).with("run", run)))));
        steps.add(new Step(
                "In the way of " + id,
                "A wall, a step, a meter within the arc or behind it: off the hinge foot along the fence, and to the side.",
                Panel.of("", id)
                        .withStrips(Listed.strips(opened, Ledger.OBSTACLE, at + ".obstacles", "In the way"))
                        .withEntries(List.of(Ledger.OBSTACLE.entry(opened, at + ".obstacles")))));
    }

    private void finish(String at, String id) {
        ask(
                "Make of " + id,
                "Or the piece to match: put a photo with the job.",
                LeafPanels.filling(opened, at, id).toArray(Field[]::new));
    }

    private void soil() {
        ask(
                "Soil, wind and frost",
                "One hole to spade depth tells most. What is gray is assumed and says from what.",
                opened.choice("site.soil.kind", "Soil", "site", Choices.SOILS),
                opened.choice("site.soil.state", "Its state", "site", Choices.STATES),
                opened.field("site.soil.rockAt", "Rock refuses at", Unit.INCHES, "site"),
                opened.field("site.wind.speed", "Wind speed", Unit.MPH, "site"),
                opened.choice("site.wind.exposure", "Exposure", "site", Choices.EXPOSURES),
                opened.field("site.frost.depth", "Frost depth", Unit.INCHES, "site"));
    }

    private void look() {
        List<Field> fields = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String at = "runs[" + i + "]";
            String id = said(at + ".id");
            if (said(at + ".style").equals("none")) continue;
            fields.add(opened.choice(at + ".style", "Style of " + id, id, Choices.styles(opened.catalogue())));
            fields.add(opened.field(at + ".infill", "Height", Unit.INCHES, id));
            fields.add(opened.field(at + ".bottomGap", "Gap to the ground", Unit.INCHES, id));
            fields.add(opened.choice(at + ".fit", "Its top follows, steps or is level", id, Choices.FITS));
            fields.add(opened.choice(at + ".finishedFace", "Good side faces", id, Choices.FACES));
        }
        ask("Look", "What it is to look like.", fields.toArray(Field[]::new));
    }

    private void ask(String name, String why, Field... fields) {
        steps.add(new Step(name, why, Panel.of("", "").withFields(List.of(fields))));
    }

    private Field words(String path, String label) {
        return open(path, label, Unit.WORDS, "");
    }

    private Field open(String path, String label, Unit unit, String ifOpen) {
        return opened.fields().choice(path, label, unit, "site", List.of(), ifOpen);
    }

    private String said(String path) {
        return opened.text().value(path).orElse("");
    }
}
