package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.job.Obstacle;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Offset;

/** What is to be said of a slide leaf and its way: ground, gap, obstacles, what of the asked leaf it cannot be, what can hurt someone. */
final class SlideFindings {
    /** Left clear beside a moving leaf. Judgement. */
    private static final double BESIDE_IN = 2;

    private final GateAsk ask;
    private final SlidePlan slide;
    private final String id;
    private final DisplayUnits display;

    SlideFindings(GateAsk ask, SlidePlan slide) {
        this.ask = ask;
        this.slide = slide;
        this.id = ask.gate().id();
        this.display = ask.display();
    }

    List<Finding> all(List<Remedy> cures) {
        List<Finding> findings = new ArrayList<>();
        findings.add(way(cures));
        findings.add(gap());
        findings.add(slopeTold());
        for (Obstacle each : ask.gate().obstacles()) findings.add(obstacle(each));
        asked().ifPresent(findings::add);
        findings.addAll(cautions());
        return findings;
    }

    private Finding way(List<Remedy> cures) {
        SlideTravel travel = slide.travel();
        double running = travel.running().inches();
        double needed = 2 * ask.gate().loads().shotError().inches();
        String at = place(travel.at());
        Measure measure = Measure.provided(running, needed, "in");
        Optional<Regrade> cut = SlideRemedies.asked(ask, slide);
        if (cut.isPresent()) return SwingFindings.shaved(display, cut.get());
        if (running < 0)
            return new Checked(
                    "slide.strikes",
                    Severity.MUST_FIX,
                    id,
                    id + " strikes the ground on its way, " + display.length(-running) + " short " + at
                            + (travel.least().inches() >= 0
                                    ? ", once it has dropped " + display.length(ask.drop())
                                            + " and the ground has risen " + display.length(travel.laterRise())
                                    : "")
                            + ". It travels level.",
                    Basis.job("the ground as measured"),
                    Optional.of(measure),
                    cures);
        if (running < needed)
            return new Checked(
                    "slide.low",
                    Severity.CAUTION,
                    id,
                    id + " clears the ground by " + display.length(running) + " " + at
                            + ", and the shots may be off by "
                            + display.length(ask.gate().loads().shotError()) + ". Take one more shot there.",
                    Basis.commonPractice("twice the error of the shots"),
                    Optional.of(measure),
                    cures);
        return new Checked(
                "slide.strikes",
                Severity.PASS,
                id,
                id + " clears the ground by " + display.length(running) + " where its way is tightest, " + at + ".",
                Basis.job("the ground as measured"),
                Optional.of(measure),
                List.of());
    }

    /** A place of the way by its distance from the opening's face, as a tape finds it. */
    private String place(Offset r) {
        String away = display.length(r.size());
        if (r.inches() < 0) return "on the run-back, " + away + " behind the face of the front roller post";
        return "in the opening, " + away + " from the face of the front roller post";
    }

    private Finding gap() {
        double gap = slide.travel().closedLargest().inches();
        double limit = ask.gap().largest().inches();
        boolean fits = gap <= limit;
        return Checked.of(
                "gate.gap",
                Severity.MUST_FIX,
                id,
                id + ": closed, it leaves up to " + display.length(gap) + " above the ground"
                        + (fits ? "" : ", more than the " + display.length(limit) + " allowed") + ".",
                Basis.job(ask.gap().why()),
                Measure.demand(Math.max(0, gap), limit, "in"));
    }

    /** A level leaf on falling ground: both ends of the opening, so that nobody wonders. */
    private Finding slopeTold() {
        SlideTravel travel = slide.travel();
        return Checked.note(
                "slide.level",
                Severity.PASS,
                id,
                id + " travels level: closed it stands " + display.length(travel.closedLeast()) + " to "
                        + display.length(travel.closedLargest()) + " over the ground of its opening.",
                Basis.commonPractice("a slide gate on a slope rolls by itself"));
    }

    private Finding obstacle(Obstacle thing) {
        double along = thing.along().inches();
        double halfLeaf = slide.leaf().make().tube().width().inches() / 2 + BESIDE_IN;
        double off =
                Math.abs(thing.side().inches() - Math.abs(slide.shape().across().inches()));
        boolean inWay = along >= slide.shape().openEnd().inches() - BESIDE_IN
                && along <= slide.shape().nose().inches() + BESIDE_IN
                && off <= halfLeaf;
        return Checked.note(
                "slide.obstacle",
                inWay ? Severity.MUST_FIX : Severity.PASS,
                id,
                id
                        + (inWay
                                ? " runs into the " + thing.what() + ". Move it, or slide to the other side."
                                : " passes the " + thing.what() + "."),
                Basis.job("what stands on the way as measured"));
    }

    /** What was asked of the leaf and a level leaf on rollers cannot be. */
    private Optional<Finding> asked() {
        LeafSpec leaf = ask.gate().leaf();
        List<String> told = new ArrayList<>();
        boolean level = leaf.shape().match(square -> true, raked -> false, sloped -> false);
        if (!level) told.add("its shape is level, since it travels level");
        if (!leaf.top().curve().isZero() || !leaf.infillAboveFrame().isZero())
            told.add("its infill ends at the top rail");
        if (leaf.midRails() > 0) told.add("uprights and diagonals take the place of mid rails");
        if (ask.parts().joint() == Joint.BRACKETED) told.add("its frame is welded");
        if (plainTubes(ask.parts().bracing()) < 0) told.add("its diagonals are tubes");
        if (told.isEmpty()) return Optional.empty();
        return Optional.of(Checked.note(
                "slide.asked",
                Severity.CAUTION,
                id,
                id + " is drawn other than asked: " + String.join("; ", told) + ".",
                Basis.judgement("a cantilever slide leaf")));
    }

    private static int plainTubes(Bracing bracing) {
        return bracing.match(tubes -> tubes.count(), cross -> -1, rod -> -1);
    }

    private List<Finding> cautions() {
        List<Finding> said = new ArrayList<>();
        said.add(Checked.note(
                "slide.falls",
                Severity.CAUTION,
                id,
                id
                        + " falls over if it leaves its rollers or its guides are undone: prop the leaf on both sides until both"
                        + " roller sets and the stops at both ends are bolted and checked, and never take a stop off. Local"
                        + " code governs.",
                Basis.fromMemory("ASTM F1184, positive stops and guides")));
        said.add(Checked.note(
                "slide.pinch",
                Severity.CAUTION,
                id,
                id
                        + " draws hands and clothes in where the leaf passes its rollers and posts: guard the rollers, and screen the"
                        + " leaf and the fence it passes so that no one reaches through. Local code governs.",
                Basis.fromMemory("ASTM F2200, slide gates; ASTM F1184")));
        if (slide.kind().spec().powered())
            said.add(Checked.note(
                    "slide.powered",
                    Severity.CANNOT_SAY,
                    id,
                    id
                            + " is to be powered: entrapment protection on the opening and the closing side, no opening that lets a"
                            + " 2-1/4 in. ball through, guarded rollers and stops belong to a qualified installer under ASTM"
                            + " F2200 and UL 325. Nothing of that is designed here. Local code governs.",
                    Basis.fromMemory("ASTM F2200 slide gates; UL 325 entrapment protection")));
        return said;
    }
}
