package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.view.FillWords;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Table;
import plumbleaf.web.page.Unit;

/** The runs: style, height, fit to the ground, bays and posts. */
final class LineRoom {
    private LineRoom() {}

    static List<Panel> panels(Opened opened) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String at = "runs[" + i + "]";
            String id = opened.text().value(at + ".id").orElse("");
            panels.add(Panel.of("Run " + id, id)
                    .withNotes(Notes.about(opened.findings(), List.of(id)))
                    .withFields(List.of(
                            opened.choice(at + ".style", "Style", id, Choices.styles(opened.catalogue())),
                            opened.field(at + ".infill", "Height of the infill", Unit.INCHES, id),
                            opened.field(at + ".bottomGap", "Gap to the ground", Unit.INCHES, id),
                            opened.choice(at + ".fit", "Fit to the ground", id, Choices.FITS),
                            opened.field(at + ".maxBay", "Largest bay", Unit.FEET, id),
                            opened.choice(at + ".finishedFace", "Good side faces", id, Choices.FACES),
                            opened.pinned(
                                    "builds." + id + ".post", "Posts", id, Choices.linePosts(opened.catalogue())))));
        }
        opened.design()
                .ifPresent(design -> design.layout().runs().forEach(run -> {
                    panels.add(posts(run, opened.figures()));
                    panels.add(bays(run, opened));
                }));
        return panels;
    }

    private static Panel posts(RunLayout run, Figures figures) {
        List<Table.Line> lines = new ArrayList<>();
        for (Post post : run.posts())
            lines.add(new Table.Line(
                    post.id(),
                    List.of(
                            post.id(),
                            post.role().key(),
                            figures.length(post.station()),
                            figures.signed(post.grade()),
                            figures.length(post.top().minus(post.grade())))));
        return Panel.of("Posts of run " + run.run(), run.run())
                .withTables(List.of(new Table(
                        "Centers, from the start", List.of("Post", "Kind", "Station", "Ground", "Stands up"), lines)));
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
