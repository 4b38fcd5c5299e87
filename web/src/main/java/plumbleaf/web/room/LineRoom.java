package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.documents.view.FillWords;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.jobfile.offer.FitPrices;
import plumbleaf.jobfile.offer.SpacingPrices;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Table;
import plumbleaf.web.page.Unit;

/** The runs: legs, style, height, fit to the ground, where no hole may be, and the rules of the place; bays and posts. */
final class LineRoom {
    private LineRoom() {}

    static List<Panel> panels(Opened opened, Optional<FitPrices> fits, Optional<SpacingPrices> spacings) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String at = "runs[" + i + "]";
            String id = opened.text().value(at + ".id").orElse("");
            panels.add(run(opened, at, id));
            panels.add(stretches(opened, at, id));
        }
        panels.add(Panel.of("More runs, styles of your own", "line")
                .withEntries(List.of(Ledger.RUN.entry(opened), Ledger.OWN_STYLES.entry(opened))));
        if (opened.design().isPresent()) panels.add(FitPanel.of(fits));
        spacings.ifPresent(prices -> panels.add(
                SpacingPanel.of(prices, opened.job().map(Job::display).orElse(DisplayUnits.US))));
        panels.addAll(RulesPanels.panels(opened));
        opened.design()
                .ifPresent(design -> design.layout().runs().forEach(run -> {
                    panels.add(posts(run, design, opened));
                    panels.add(bays(run, opened));
                }));
        return panels;
    }

    private static Panel run(Opened opened, String at, String id) {
        return Panel.of("Run " + id, id)
                .withNotes(Notes.about(opened.findings(), List.of(id)))
                .withFields(List.of(
                        style(opened, at, id),
                        opened.field(at + ".infill", "Height of the infill", Unit.INCHES, id),
                        opened.field(at + ".bottomGap", "Gap to the ground", Unit.INCHES, id),
                        opened.choice(at + ".fit", "Fit to the ground", id, Choices.FITS),
                        opened.fields()
                                .choice(
                                        at + ".step",
                                        "Steps are whole",
                                        Unit.INCHES,
                                        id,
                                        List.of(),
                                        "a lying board with its gap, else 1 in."),
                        opened.fields()
                                .choice(
                                        at + ".lowRails",
                                        "More rails where boards hang further down",
                                        Unit.COUNT,
                                        id,
                                        Choices.TRUE_FALSE,
                                        "no"),
                        opened.field(at + ".maxBay", "Largest bay", Unit.FEET, id),
                        opened.choice(at + ".finishedFace", "Good side faces", id, Choices.FACES),
                        opened.fields().choice(at + ".stain.coats", "Stain", Unit.COUNT, id, Choices.COATS, "none"),
                        opened.fields()
                                .choice(
                                        at + ".stain.texture",
                                        "Texture to stain",
                                        Unit.WORDS,
                                        id,
                                        Choices.TEXTURES,
                                        "rough"),
                        opened.fields()
                                .choice(at + ".basis", "Design basis", Unit.WORDS, id, Choices.BASES, "as the site"),
                        RunEndText.field(opened, at, id, 0),
                        RunEndText.field(opened, at, id, 1),
                        opened.pinned("builds." + id + ".post", "Posts", id, Choices.linePosts(opened.catalogue()))));
    }

    /** The style with a word of what it is. */
    private static Field style(Opened opened, String at, String id) {
        Field field = opened.choice(at + ".style", "Style", id, Choices.styles(opened.catalogue()));
        if (!field.problem().isEmpty() || field.assumed()) return field;
        return opened.catalogue().styles().stream()
                .filter(style -> style.id().equals(field.value()))
                .findFirst()
                .map(style -> field.withNote(style.words()))
                .orElse(field);
    }

    /** Its legs and curves, where it follows the ground in another way, and where no hole may be. */
    private static Panel stretches(Opened opened, String at, String id) {
        List<Panel.Strip> strips = new ArrayList<>();
        for (int i = 0; i < opened.text().count(at + ".legs"); i++) strips.add(LegFields.of(opened, at, id, i));
        strips.addAll(placed(opened, at, id));
        strips.addAll(Listed.strips(opened, Ledger.CHECK_TAPE, at + ".checks", "Check tape"));
        strips.addAll(Listed.strips(opened, Ledger.FIT_PART, at + ".fits", "Fit"));
        strips.addAll(Listed.strips(opened, Ledger.OTHER_POSTS, at + ".otherPosts", "Posts"));
        strips.addAll(Listed.strips(opened, Ledger.SIDE, at + ".sides", "Side"));
        strips.addAll(Listed.strips(opened, Ledger.NO_DIG, at + ".noDig", "No-dig"));
        return Panel.of("Legs and stretches of run " + id, id)
                .withFields(LegFields.start(opened, at, id))
                .withEntries(List.of(
                        Ledger.LEG.entry(opened, at + ".legs"),
                        Ledger.CHECK_TAPE.entry(opened, at + ".checks"),
                        Ledger.FIT_PART.entry(opened, at + ".fits"),
                        Ledger.OTHER_POSTS.entry(opened, at + ".otherPosts"),
                        Ledger.SIDE.entry(opened, at + ".sides"),
                        Ledger.NO_DIG.entry(opened, at + ".noDig")))
                .withStrips(strips);
    }

    /** Posts that somebody put where they stand; each is let go by taking it out. */
    private static List<Panel.Strip> placed(Opened opened, String at, String id) {
        List<Panel.Strip> strips = new ArrayList<>();
        for (int i = 0; i < opened.text().count(at + ".set"); i++) {
            String item = at + ".set[" + i + "]";
            String post = opened.text().value(item + ".id").orElse(id);
            strips.add(new Panel.Strip(
                    post,
                    item,
                    "stays where it was put",
                    List.of(opened.field(item + ".station", "Station", Unit.FEET, post))));
        }
        return strips;
    }

    /** Every post with its hole and what is bought for the two, beside what is found about it. */
    private static Panel posts(RunLayout run, Design design, Opened opened) {
        Figures figures = opened.figures();
        Map<String, Money> costs = PostCosts.of(design.quote().takeoff());
        List<Table.Line> lines = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        for (Post post : run.posts()) {
            parts.add(post.id());
            parts.add("F" + post.id().substring(1));
            lines.add(new Table.Line(
                    post.id(),
                    List.of(
                            post.id(),
                            post.role().key(),
                            figures.length(post.station()),
                            figures.signed(post.grade()),
                            figures.length(post.top().minus(post.grade())),
                            hole(design, post.id(), figures),
                            costs.getOrDefault(post.id(), Money.ZERO).text())));
        }
        return Panel.of("Posts of run " + run.run(), run.run())
                .withNotes(Notes.about(opened.findings(), parts))
                .withTables(List.of(new Table(
                        "Centers, from the start; the cost is what is bought for a post and its hole",
                        List.of("Post", "Kind", "Station", "Ground", "Stands up", "Hole", "Cost"),
                        lines)));
    }

    private static String hole(Design design, String id, Figures figures) {
        return design.post(id)
                .filter(post -> !post.hole().isZero())
                .map(post -> figures.length(post.hole()) + " \u00d7 " + figures.length(post.depth()))
                .orElse("\u2013");
    }

    private static Panel bays(RunLayout run, Opened opened) {
        Figures figures = opened.figures();
        List<Table.Line> lines = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        for (Bay bay : run.bays()) {
            parts.add(bay.id());
            lines.add(new Table.Line(
                    bay.id(),
                    List.of(
                            bay.id(),
                            figures.length(bay.level()),
                            Figures.grade(bay.grade()),
                            figures.length(bay.groundGapMin()) + " to " + figures.length(bay.groundGapMax()),
                            FillWords.of(bay, opened.job().map(Job::display).orElse(DisplayUnits.US)))));
        }
        return Panel.of("Bays of run " + run.run(), run.run())
                .withNotes(Notes.about(opened.findings(), parts))
                .withTables(List.of(new Table(
                        "Between post centers", List.of("Bay", "Level", "Grade", "Gap under it", "Infill"), lines)));
    }
}
