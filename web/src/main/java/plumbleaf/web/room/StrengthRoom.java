package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbleaf.engine.catalogue.OwnParts;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;
import plumbleaf.web.page.Unit;

/** What the place asks and what the build bears. */
final class StrengthRoom {
    private static final List<String> AREAS = List.of(
            "post",
            "footing",
            "wind",
            "frost",
            "hinge",
            "latch",
            "leaf",
            "frame",
            "weld",
            "bolt",
            "rail",
            "picket",
            "strength",
            "slam",
            "soil");

    private StrengthRoom() {}

    static List<Panel> panels(Opened opened) {
        List<Panel> panels = new ArrayList<>();
        List<Note> notes = Notes.inAreas(opened.findings(), AREAS);
        List<Note> ofPosts = notes.stream().filter(StrengthRoom::isOfPost).toList();
        List<Note> ofGates = notes.stream()
                .filter(note -> !isOfPost(note) && gateOf(opened, note).isPresent())
                .toList();
        List<Note> ofSite = notes.stream()
                .filter(note -> !ofPosts.contains(note) && !ofGates.contains(note))
                .toList();
        panels.add(Panel.of("Site", "site")
                .withNotes(ofSite)
                .withFields(List.of(
                        opened.choice("site.basis", "Basis", "site", Choices.BASES),
                        opened.field("site.wind.speed", "Wind speed", Unit.MPH, "site"),
                        opened.choice("site.wind.exposure", "Exposure", "site", Choices.EXPOSURES),
                        opened.field("site.frost.depth", "Frost depth", Unit.INCHES, "site"),
                        month(opened, "site.frost.from", "It may freeze from"),
                        month(opened, "site.frost.through", "It may freeze through"),
                        opened.choice("site.soil.kind", "Soil", "site", Choices.SOILS),
                        opened.choice("site.soil.state", "Soil state", "site", Choices.STATES),
                        opened.field("site.soil.nh", "n_h, if measured", Unit.SOIL_RATE, "site"),
                        opened.field("site.soil.su", "Undrained strength, if measured", Unit.PSF, "site"),
                        opened.field("site.soil.lateralPerFoot", "Lateral bearing a foot, by report", Unit.PSF, "site"),
                        opened.field("site.soil.looseTop", "Loose top", Unit.INCHES, "site"),
                        opened.field("site.soil.besideDrop", "Wall or trench beside, height", Unit.INCHES, "site"),
                        opened.field("site.soil.rockAt", "Rock refuses at", Unit.INCHES, "site"))));
        panels.add(ownParts(opened));
        opened.design().ifPresent(design -> {
            design.rated().ifPresent(gust -> panels.add(rated(gust, opened.figures())));
            for (GateChoice choice : design.choices())
                panels.add(ChoicePanel.of(
                        choice,
                        design,
                        new PickedWords(opened.catalogue(), design.job().display())));
            panels.add(posts(design, opened.figures()).withNotes(ofPosts).withFields(holes(opened, design)));
            for (GateDesign gate : design.gates()) {
                List<Note> own = ofGates.stream()
                        .filter(note -> gateOf(opened, note).orElse("").equals(gate.id()))
                        .toList();
                if (!gate.loadPath().isEmpty()) panels.add(links(gate).withNotes(own));
                else if (!own.isEmpty())
                    panels.add(Panel.of("Gate " + gate.id(), gate.id()).withNotes(own));
            }
            panels.add(passes(design));
        });
        return panels;
    }

    /** Findings stand beside what they are about: a post or its hole, a gate with its leaves and pieces, the site. */
    private static boolean isOfPost(Note note) {
        return note.part().matches("[PF]\\d.*");
    }

    private static Optional<String> gateOf(Opened opened, Note note) {
        return opened.design().stream()
                .flatMap(design -> design.gates().stream())
                .map(GateDesign::id)
                .filter(id -> note.part().equals(id) || note.part().matches(Pattern.quote(id) + "[ab](\\..*)?"))
                .findFirst();
    }

    private static Field month(Opened opened, String path, String label) {
        return opened.fields()
                .choice(path, label, Unit.WORDS, "site", Choices.MONTHS, "said nowhere: no frost is planned for");
    }

    /** What the user brought from makers' sheets, and the form to bring more. */
    private static Panel ownParts(Opened opened) {
        List<Row> rows = new ArrayList<>();
        OwnParts parts = opened.job().map(Job::parts).orElse(OwnParts.NONE);
        for (OwnParts.Table table : parts.tables())
            rows.add(
                    new Row("parts." + table.file(), table.file(), (table.rows().size() - 1) + " parts", "", "site"));
        for (String id : parts.ids()) rows.add(new Row("part." + id, id, "entered", "", "site"));
        return Panel.of("Your own parts", "parts")
                .withRows(rows)
                .withEntries(List.of(
                        Ledger.OWN_HINGE.entry(opened),
                        Ledger.OWN_LATCH.entry(opened),
                        Ledger.OWN_ROD.entry(opened),
                        Ledger.OWN_ROLLER.entry(opened),
                        Ledger.OWN_TUBE.entry(opened),
                        Ledger.PART.entry(opened)));
    }

    private static Panel rated(RatedGust gust, Figures figures) {
        return Panel.of("Rated gust of this build", "site")
                .withRows(List.of(
                        new Row(
                                "rated.allowable",
                                "First part at its allowable",
                                figures.speed(gust.allowable()),
                                gust.allowableLink(),
                                ""),
                        new Row(
                                "rated.ultimate",
                                "First part at its expected ultimate",
                                figures.speed(gust.ultimate()),
                                gust.ultimateLink(),
                                "")));
    }

    /** What the drawing of the holes can be pulled to, as numbers. */
    private static List<Field> holes(Opened opened, Design design) {
        List<Field> fields = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String id = opened.text().value("runs[" + i + "].id").orElse("");
            dug(opened, "run " + id, id, fields);
            for (int side = 0; side < opened.text().count("runs[" + i + "].sides"); side++) {
                String own = "runs[" + i + "].sides[" + side + "].depth";
                String name = "Footing depth, run " + id + ", side " + (side + 1);
                if (opened.text().has(own)) fields.add(opened.field(own, name, Unit.INCHES, id));
            }
        }
        for (GateDesign gate : design.gates()) {
            dug(opened, "gate " + gate.id(), gate.id(), fields);
            String own = "builds." + gate.id() + ".latchDepth";
            String name = "Footing depth, gate " + gate.id() + ", post " + gate.latchPost();
            if (opened.text().has(own)) fields.add(opened.field(own, name, Unit.INCHES, gate.id()));
        }
        return fields;
    }

    private static void dug(Opened opened, String of, String id, List<Field> fields) {
        fields.add(opened.field("builds." + id + ".hole", "Hole, " + of, Unit.INCHES, id));
        fields.add(opened.field("builds." + id + ".depth", "Footing depth, " + of, Unit.INCHES, id));
    }

    private static Panel posts(Design design, Figures figures) {
        List<Table.Line> lines = new ArrayList<>();
        for (PostDesign post : design.posts())
            lines.add(new Table.Line(
                    post.id(),
                    List.of(
                            post.id(),
                            post.hole().isZero()
                                    ? post.depth().isZero() ? "\u2013" : figures.length(post.depth()) + " deep"
                                    : figures.length(post.hole()) + " \u00d7 " + figures.length(post.depth()),
                            post.footing()
                                            .map(is -> figures.length(is.depthNeeded()) + ", ")
                                            .orElse("")
                                    + post.depthBy(),
                            Figures.ratio(post.utilisation()))));
        return Panel.of("Posts and footings", "posts")
                .withTables(List.of(new Table(
                        "Hole as dug, depth needed and why, worst check",
                        List.of("Post", "Hole", "Needs", "Used"),
                        lines)));
    }

    /** Every link between leaf and soil, with what was put into its formula. */
    private static Panel links(GateDesign gate) {
        List<Table.Line> lines = new ArrayList<>();
        for (LinkUse link : gate.loadPath())
            lines.add(new Table.Line(
                    link.part(),
                    List.of(
                            link.link() + " " + link.part(),
                            Figures.ratio(link.utilisation()),
                            link.work().numbers() + " (" + link.inCase() + ")",
                            link.work().clause())));
        return Panel.of("Load path of " + gate.id(), gate.id())
                .withTables(List.of(
                        new Table("From the weakest link", List.of("Link", "Used", "Numbers", "Clause"), lines)));
    }

    /** What was checked and holds: a check that is not shown is not trusted. */
    private static Panel passes(Design design) {
        List<Table.Line> lines = new ArrayList<>();
        for (Finding finding : design.findings())
            if (finding.severity() == Severity.PASS)
                lines.add(new Table.Line(
                        finding.part(),
                        List.of(
                                finding.part(),
                                finding.message(),
                                finding.measure().map(Measure::ratioText).orElse("\u2013"))));
        String words = lines.size() == 1 ? "Check that holds" : "Checks that hold";
        List<Table> all = List.of(new Table("Checked, and within its limit", List.of("Part", "Check", "Used"), lines));
        return Panel.of("Passes", "")
                .withFolds(List.of(new Panel.Fold("", "passes.count", words, Integer.toString(lines.size()), "", all)));
    }
}
