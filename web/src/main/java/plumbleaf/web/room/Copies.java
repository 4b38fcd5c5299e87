package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.LengthText;

/**
 * A gate or a run once more. The copy of a gate stands in the next place of its run that has room; the copy of a run lies clear of
 * everything, to be dragged or typed to its place. What was measured at the first one is not copied.
 */
final class Copies {
    /** Between two openings, and from an opening to a corner: both posts and room to dig them. Judgement. */
    private static final double BESIDE_IN = 30;

    private static final double STEP_IN = 6;
    private static final double APART_IN = 120;

    private Copies() {}

    static Edited of(Opened opened, String thing) {
        DocumentText text = opened.text();
        if (opened.design().isEmpty())
            return new Edited.Refused("", "Put the job's file right first; then it can be copied.");
        Design design = opened.design().get();
        String title = opened.stored().title();
        if (text.has("gates[" + thing + "]")) return gate(text, design, thing, title);
        if (text.has("runs[" + thing + "]")) return run(text, design, thing, title);
        return new Edited.Refused("", "This place is not in the job; load the page again.");
    }

    private static Edited gate(DocumentText text, Design design, String id, String title) {
        Optional<Gate> asked = design.job().gates().stream()
                .filter(gate -> gate.id().equals(id))
                .findFirst();
        Optional<Double> station = asked.flatMap(gate -> freeStation(design, gate));
        if (station.isEmpty())
            return new Edited.Refused(
                    "", "Its run has no room for one more opening of that width; make the run longer first.");
        String copy = nextId(text, "gates", "G");
        DocumentText item = DocumentText.of(text.json("gates[" + id + "]").orElseThrow())
                .with("id", DocumentText.quoted(copy))
                .with("station", DocumentText.quoted(LengthText.exact(station.get())))
                .without("asSet")
                .without("release")
                .without("regrade")
                .without("landing")
                .without("setBack")
                .without("obstacles");
        DocumentText out = built(text.appended("gates", item.text()), id, copy);
        return new Edited.Fine(title, out.text(), "gate " + id + " copied as " + copy);
    }

    /** The first place after the gate, then before it, where the opening and both its posts stand on one leg clear of other openings. */
    private static Optional<Double> freeStation(Design design, Gate gate) {
        PlanLine line = design.layout().run(gate.run()).line().line();
        double wide = gate.opening().inches();
        double length = line.length().inches();
        List<Double> tried = new ArrayList<>();
        for (double at = gate.station().inches() + wide + BESIDE_IN; at + wide < length; at += STEP_IN) tried.add(at);
        for (double at = gate.station().inches() - wide - BESIDE_IN; at > 0; at -= STEP_IN) tried.add(at);
        return tried.stream().filter(at -> isFree(design, gate, line, at)).findFirst();
    }

    private static boolean isFree(Design design, Gate gate, PlanLine line, double at) {
        double end = at + gate.opening().inches();
        for (int vertex = 0; vertex <= line.legs(); vertex++) {
            double corner = line.stationOfVertex(vertex).inches();
            if (corner > at - BESIDE_IN && corner < end + BESIDE_IN) return false;
        }
        return design.job().gates().stream()
                .filter(other -> other.run().equals(gate.run()))
                .allMatch(other -> other.station().inches() >= end + BESIDE_IN
                        || other.station().inches() + other.opening().inches() <= at - BESIDE_IN);
    }

    private static Edited run(DocumentText text, Design design, String id, String title) {
        double lowest = 0;
        for (RunLayout run : design.layout().runs())
            for (PlanPoint vertex : run.line().line().vertices()) lowest = Math.min(lowest, vertex.yIn());
        PlanPoint start = design.layout().run(id).line().line().vertex(0);
        double reach = 0;
        for (PlanPoint vertex : design.layout().run(id).line().line().vertices())
            reach = Math.max(reach, vertex.yIn() - start.yIn());
        String copy = nextId(text, "runs", "R");
        String place = "{ \"east\": " + DocumentText.quoted(LengthText.exact(start.xIn())) + ", \"north\": "
                + DocumentText.quoted(LengthText.exact(lowest - APART_IN - reach)) + " }";
        DocumentText item = DocumentText.of(text.json("runs[" + id + "]").orElseThrow())
                .with("id", DocumentText.quoted(copy))
                .with("start", place)
                .without("ends")
                .without("checks")
                .without("noDig")
                .without("set")
                .without("crossSlope");
        DocumentText out = built(text.appended("runs", item.text()), id, copy);
        return new Edited.Fine(title, out.text(), "run " + id + " copied as " + copy);
    }

    private static DocumentText built(DocumentText text, String id, String copy) {
        return text.json("builds." + id)
                .map(build -> text.with("builds." + copy, build))
                .orElse(text);
    }

    private static String nextId(DocumentText text, String list, String letter) {
        int largest = 0;
        for (int i = 0; i < text.count(list); i++) {
            String id = text.value(list + "[" + i + "].id").orElse("");
            if (id.matches(letter + "\\d{1,6}")) largest = Math.max(largest, Integer.parseInt(id.substring(1)));
        }
        return letter + (largest + 1);
    }
}
