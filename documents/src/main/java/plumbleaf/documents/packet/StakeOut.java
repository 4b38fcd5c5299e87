package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.typeset.Pages;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.documents.view.PostFoot;
import plumbleaf.documents.view.RunPosts;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.ground.Levelled;
import plumbleaf.engine.ground.StandingLevel;
import plumbleaf.engine.job.NoDig;
import plumbleaf.engine.job.PrivateLine;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.support.Slab;
import plumbleaf.engine.support.Support;
import plumbleaf.engine.takeoff.TakeoffLine;

/** Where every post goes, how deep and how high. Running stations from one zero, gate posts face to face. */
public final class StakeOut {
    private static final double FOOT_HIGH_IN = 2.7;

    private StakeOut() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper =
                Paper.titled("Stake-out and post schedule", subject.running()).flag(subject.flag());
        paper.say("All stations run from station 0 of their run, held level, to post centers. Never add up spacings."
                + " Heights are from the benchmark: "
                + subject.job().ground().benchmark().mark() + " = "
                + subject.inches(subject.job().ground().benchmark().elevation().inches()) + ".");
        for (StandingLevel level : Levelled.of(subject.job().ground()).levels())
            paper.note("Survey setup " + level.setup() + " stood at "
                    + subject.inches(level.heightOfInstrument().inches()) + ".");
        paper.say(
                "Height of instrument today (blank until set): ____________   rod at a post top = height of instrument"
                        + " less \u201ctop\u201d.");
        List<String> before = new ArrayList<>(subject.digging());
        for (Run run : subject.job().runs())
            for (NoDig stretch : run.noDig())
                before.add("Run " + run.id() + ": no hole from "
                        + subject.length(stretch.from().inches()) + " to "
                        + subject.length(stretch.to().inches()) + ", "
                        + stretch.words(subject.job().existing()) + ".");
        for (PrivateLine line : subject.job().existing().lines())
            before.add("Run " + line.run() + ": " + line.kind() + " crosses at "
                    + subject.length(line.station().inches()) + "; dig by hand within "
                    + subject.length(line.byHand().inches()) + ".");
        if (subject.posts().stream().anyMatch(PostDetail::isDug))
            before.add("If a hole refuses before its depth, stop and call: a shallow hole is not what was checked.");
        paper.add(new Block.Caution("Before the first hole", before));
        for (RunLayout run : subject.layout().runs()) run(paper, subject, run);
        ties(paper, subject);
        feet(paper, subject);
        concrete(paper, subject);
        return paper.paper();
    }

    /** A metric length whose unit stands over its column. */
    private static String bare(String length) {
        return length.replace(" mm", "");
    }

    private static void run(Paper.Builder paper, PacketSubject subject, RunLayout run) {
        paper.heading("Run " + run.run());
        String unit = subject.units() == DisplayUnits.US ? "" : ", mm";
        Table.Builder table = Table.with(
                Column.tick("Set"),
                Column.left("Post"),
                Column.left("Kind"),
                Column.right("Station" + unit),
                Column.right("Ground" + unit),
                Column.right("Top" + unit),
                Column.right("Out" + unit),
                Column.right("Hole" + unit),
                Column.right("Length" + unit),
                Column.left("Depth by"));
        for (PostDetail post : RunPosts.on(run, subject.posts())) {
            boolean lent = !post.post().run().equals(run.run());
            table.rowAbout(
                    post.post().id(),
                    lent ? "" : "\u2610",
                    post.post().id(),
                    lent ? "set by " + post.post().run() : kind(post),
                    bare(subject.length(post.post().station().inches())),
                    bare(subject.inches(post.post().grade().inches())),
                    bare(subject.inches(post.post().top().inches())),
                    bare(subject.inches(post.post().outOfGround().inches())),
                    post.isDug()
                            ? bare(subject.inches(post.hole().inches()) + " x "
                                    + subject.inches(post.depth().inches()))
                            : "\u2013",
                    post.post().role() == PostRole.WALL
                            ? "\u2013"
                            : bare(subject.length(post.length().inches())),
                    post.governedBy());
        }
        paper.add(table.table());
        for (GatePaper gate : subject.gates()) {
            if (!gate.asked().run().equals(run.run())) continue;
            double from = gate.asked().station().inches();
            double clear = gate.asked().opening().inches();
            paper.add(Block.Paragraph.bold("Gate " + gate.id() + ", face to face: " + subject.length(clear)
                    + " clear, post faces at " + subject.length(from) + " and " + subject.length(from + clear)
                    + ". Plumb both ways; measure top, middle, bottom."));
            gate.pair()
                    .ifPresent(pair -> paper.add(Block.Paragraph.of("Both posts of " + gate.id()
                            + " are hinge posts. Its leaves meet at station " + subject.length(meets(gate))
                            + "; the sleeve goes there, "
                            + subject.inches(pair.sleeve().diameter().inches()) + " by "
                            + subject.inches(pair.sleeve().depth().inches())
                            + ", dug with the posts and marked from the hung leaf.")));
        }
        for (SlidePaper gate : subject.slides()) if (gate.asked().run().equals(run.run())) slide(paper, subject, gate);
        for (String note : StakeNotes.of(subject, run)) paper.add(Block.Paragraph.of(note));
        sections(paper, subject, run);
    }

    private static void slide(Paper.Builder paper, PacketSubject subject, SlidePaper gate) {
        double from = gate.asked().station().inches();
        double clear = gate.asked().opening().inches();
        paper.add(Block.Paragraph.bold("Slide " + gate.id() + ", face to face: " + subject.length(clear)
                + " clear, post faces at " + subject.length(from) + " and " + subject.length(from + clear)
                + ". Its roller posts stand "
                + subject.length(gate.subject().plan().shape().spacing().inches())
                + " apart, center to center, in one line with the receiver post. Plumb both ways; measure top, middle,"
                + " bottom."));
    }

    /** Station of the middle of the meeting gap. */
    private static double meets(GatePaper gate) {
        double offset = gate.subject().parts().hinge().pinOffset().inches();
        double fromLeft = offset
                + gate.leaf().outline().latchEdge().inches()
                + gate.asked().leaf().latchGap().inches() / 2;
        double from = gate.asked().station().inches();
        boolean leftFirst =
                gate.subject().plan().opening().hingeAtStart(gate.leaf().hand().hinge());
        return leftFirst ? from + fromLeft : from + gate.asked().opening().inches() - fromLeft;
    }

    private static String kind(PostDetail post) {
        return post.post().gate().isEmpty()
                ? post.post().role().key() + held(post)
                : "gate " + post.post().gate();
    }

    /** How it is held where nothing is dug for it. */
    private static String held(PostDetail post) {
        if (post.post().role() == PostRole.WALL) return "";
        return post.post()
                .support()
                .match(
                        footing -> "",
                        driven -> ", driven",
                        plate -> ", on a plate",
                        core -> ", cored",
                        wall -> "",
                        old -> ", old");
    }

    private static void sections(Paper.Builder paper, PacketSubject subject, RunLayout run) {
        Map<String, StringBuilder> bySection = new LinkedHashMap<>();
        for (PostDetail post : subject.posts())
            if (post.post().run().equals(run.run()) && post.post().role() != PostRole.WALL)
                bySection
                        .computeIfAbsent(post.section(), key -> new StringBuilder())
                        .append(' ')
                        .append(post.post().id());
        for (Map.Entry<String, StringBuilder> each : bySection.entrySet())
            paper.note(each.getKey() + ":" + each.getValue() + ".");
    }

    /** Across from corner to corner, and to the ends: what the tape of each corner, in the notes of its run, leaves open. */
    private static void ties(Paper.Builder paper, PacketSubject subject) {
        Table.Builder table = Table.with(
                Column.left("Run"), Column.words("From"), Column.words("To"), Column.right("Straight across, level"));
        for (RunLayout run : subject.layout().runs()) {
            PlanLine line = run.line().line();
            List<Integer> places = StakeNotes.settled(subject, run);
            for (int i = 0; i < places.size(); i++)
                for (int j = i + 2; j < places.size(); j++) {
                    int from = places.get(i);
                    int to = places.get(j);
                    if (to == from + 2) continue;
                    table.row(
                            run.run(),
                            vertex(subject, line, from),
                            vertex(subject, line, to),
                            subject.length(line.vertex(from)
                                    .distanceTo(line.vertex(to))
                                    .inches()));
                }
        }
        if (table.isEmpty()) return;
        paper.subheading("Diagonals that settle the corners").add(table.table());
    }

    private static String vertex(PacketSubject subject, PlanLine line, int vertex) {
        String station = subject.length(line.stationOfVertex(vertex).inches());
        return vertex == 0
                ? "start, station 0"
                : vertex == line.legs() ? "end, station " + station : "corner, station " + station;
    }

    /** Plates and sockets, one drawing for all that are made alike. */
    private static void feet(Paper.Builder paper, PacketSubject subject) {
        Map<Foot, List<String>> alike = new LinkedHashMap<>();
        for (PostDesign post : subject.checked())
            if (isOnConcrete(post))
                alike.computeIfAbsent(new Foot(post.post().support(), post.section()), key -> new ArrayList<>())
                        .add(post.id());
        if (alike.isEmpty()) return;
        paper.heading("Posts on concrete");
        paper.add(new Block.Caution(
                "Before drilling or coring",
                List.of(
                        "The dust holds silica: a core drill runs wet, a hammer drill under a shroud with a vacuum (29 CFR 1926.1153 Table 1).",
                        "Find bars, cables, pipes and wires in the concrete first. Never cut a stressed cable: whoever owns the slab says whether it has"
                                + " any (common practice, no source).")));
        alike.forEach((foot, posts) -> paper.add(new Block.Picture(
                Scale.fitted(
                        subject.units(),
                        scale -> PostFoot.of(foot.support(), foot.section(), subject.units(), scale)
                                .orElseThrow(),
                        Pages.columnWidth(subject.options().size()) - 0.2,
                        FOOT_HIGH_IN),
                String.join(", ", posts) + ": " + foot.section().name() + ", "
                        + foot.support()
                                .match(
                                        footing -> "",
                                        driven -> "",
                                        plate -> "its face " + edge(subject, plate.slab())
                                                + ". Anchors, their holes and torque: maker's sheet.",
                                        socket -> "its face " + edge(subject, socket.slab()) + ".",
                                        wall -> "",
                                        old -> ""))));
    }

    private static String edge(PacketSubject subject, Slab slab) {
        return "at least " + subject.inches(slab.edge().inches()) + " from the slab's edge";
    }

    private record Foot(Support support, PostStock section) {}

    private static boolean isOnConcrete(PostDesign post) {
        return post.post()
                .support()
                .match(footing -> false, driven -> false, plate -> true, core -> true, wall -> false, old -> false);
    }

    /** What comes to the site in all; by kind of hole, by run and by day on the concrete sheet. */
    private static void concrete(Paper.Builder paper, PacketSubject subject) {
        for (var takeoff : subject.takeoff())
            for (TakeoffLine line : takeoff.lines())
                if (line.item().equals("concrete"))
                    paper.add(Block.Paragraph.bold("Concrete: " + ConcreteSheet.ordered(line)
                            + " in all; by hole and by day on the concrete sheet."));
    }
}
