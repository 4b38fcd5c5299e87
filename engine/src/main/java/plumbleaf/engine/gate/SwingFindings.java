package plumbleaf.engine.gate;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;

/** What is to be said about a swing. */
final class SwingFindings {
    /** Nearer to the latch edge than this is at the latch corner. */
    private static final double CORNER_IN = 0.5;

    private SwingFindings() {}

    /** @param part the gate, or a leaf of a pair */
    static List<Finding> of(String part, GateAsk ask, SwingAsk now, Swing swing, Cures cures) {
        if (!swing.clearsGround()) {
            Optional<Regrade> cut = ask.gate().ground().regrade()
                    ? ArcCut.of(
                            part, now, swing, ask.ground(), 2 * now.shotError().inches())
                    : Optional.empty();
            Finding ground =
                    cut.map(is -> shaved(ask.display(), is)).orElseGet(() -> strikes(part, ask, now, swing, cures));
            return cut.isEmpty() || swing.clearsObstacles()
                    ? List.of(ground)
                    : List.of(ground, obstacle(part, ask, now, swing, cures));
        }
        if (!swing.clearsObstacles()) return List.of(obstacle(part, ask, now, swing, cures));
        double needed = 2 * swing.shotError().inches();
        double running = swing.running().clear().inches();
        if (running < needed) return List.of(low(part, ask.display(), now, swing, needed));
        String message = part + " clears the ground by " + ask.display().length(running) + " where it is tightest, "
                + place(ask.display(), now, swing.running()) + ".";
        return List.of(new Checked(
                "swing.strikes",
                Severity.PASS,
                part,
                message,
                Basis.job("the ground as measured"),
                Optional.of(swing.room()),
                List.of()));
    }

    private static Finding strikes(String part, GateAsk ask, SwingAsk now, Swing swing, Cures cures) {
        DisplayUnits display = ask.display();
        boolean asBuilt = swing.leastOfFaces().clear().inches() < 0;
        Clearance worst = asBuilt ? swing.leastOfFaces() : swing.running();
        String shortBy = display.length(-worst.clear().inches());
        boolean touches = swing.maxAngle().radians() < swing.opens().radians();
        String strikes = touches
                ? part + " strikes the ground " + degrees(swing.maxAngle().inDegrees()) + " open, " + shortBy
                        + " short "
                : part + " scrapes the ground, " + shortBy + " short ";
        String drags = part + " clears as built but drags once it has dropped "
                + display.length(ask.drop()) + " and the ground has risen "
                + display.length(now.laterRise()) + ", " + shortBy + " short ";
        String message = (asBuilt ? strikes : drags) + place(display, now, worst) + ".";
        return new Checked(
                "swing.strikes",
                Severity.MUST_FIX,
                part,
                message,
                Basis.job("the ground as measured"),
                Optional.of(swing.room()),
                cures.wanted() ? SwingRemedies.of(ask, now, swing, cures.ofASingleLeaf()) : List.of());
    }

    /** The ground is cut before the leaf is hung: what is asked of the crew, and of whoever owns the ground. */
    static Finding shaved(DisplayUnits display, Regrade cut) {
        return Checked.note(
                "gate.regrade",
                Severity.CAUTION,
                cut.part(),
                cut.part() + " clears once the ground under it is shaved by up to " + display.length(cut.deepest())
                        + ", " + DecimalText.upTo(cut.soil().cubicFeet(), 2)
                        + " cu ft of soil, before it is hung: drain the cut away from the gate, spare roots, and have"
                        + " utilities located first. The posts keep the depth that was asked below the cut.",
                Basis.job("ground to be shaved"));
    }

    /** A gate off the fence's line: what is asked of the crew, and what was taken for granted. */
    static Finding setBack(GateAsk ask) {
        Gate gate = ask.gate();
        boolean left = gate.leftOfLine(ask.opening().outside()).inches() > 0;
        return Checked.note(
                "gate.set-back",
                Severity.CAUTION,
                gate.id(),
                gate.id() + " is set back: both its posts stand "
                        + ask.display().length(gate.ground().setBack()) + " to the "
                        + (left ? "left" : "right")
                        + " of the string, as one walks along the run, and the fence on either side leans back to meet"
                        + " them. Stake it so; cut those bays to what is measured. The ground under them is taken as"
                        + " that on the line. See that it stays off the lot line.",
                Basis.job("a gate set back"));
    }

    /** A landing is built before the leaf is hung: what is asked of the crew. */
    static Finding landed(DisplayUnits display, Regrade soil) {
        return Checked.note(
                "gate.landing",
                Severity.CAUTION,
                soil.part(),
                soil.part()
                        + " swings over a level landing at the grade of its hinges, to be built before it is hung: "
                        + soil.words(display)
                        + ", as it lies. Compact fill in lifts of 4 in., slope its edges 1 in 2, drain it away from the"
                        + " gate, spare roots, and have utilities located first. The posts keep the depth that was asked"
                        + " below the ground as it was, and below the cut; a drop of more than 30 in. beside it needs a"
                        + " guard (IRC R312.1.1, from memory), and local code governs.",
                Basis.job("a landing to be built"));
    }

    private static Finding obstacle(String part, GateAsk ask, SwingAsk now, Swing swing, Cures cures) {
        String message = part + " strikes the " + swing.limitedBy().key() + " "
                + degrees(swing.maxAngle().inDegrees()) + " open and should open "
                + degrees(swing.opens().inDegrees()) + ".";
        return new Checked(
                "swing.obstacle",
                Severity.MUST_FIX,
                part,
                message,
                Basis.job("what stands in the swing as measured"),
                Optional.of(Measure.provided(
                        swing.maxAngle().inDegrees(), swing.opens().inDegrees(), "deg")),
                cures.wanted() ? SwingRemedies.of(ask, now, swing, cures.ofASingleLeaf()) : List.of());
    }

    private static Finding low(String part, DisplayUnits display, SwingAsk now, Swing swing, double needed) {
        double running = swing.running().clear().inches();
        String message = part + " clears by " + display.length(running) + " "
                + place(display, now, swing.running()) + ", and the shots may be off by "
                + display.length(swing.shotError()) + ". Take one more shot there: "
                + plan(display, now, swing.running())
                + ".";
        return new Checked(
                "swing.low",
                Severity.CAUTION,
                part,
                message,
                Basis.commonPractice("twice the error of the shots"),
                Optional.of(Measure.provided(running, needed, "in")),
                List.of());
    }

    private static String place(DisplayUnits display, SwingAsk now, Clearance at) {
        double fromTip = now.outline().latchEdge().inches() - at.atRadius().inches();
        String where =
                fromTip < CORNER_IN ? "at the latch corner" : display.length(at.atRadius()) + " from the hinge pins";
        double open = at.atAngle().inDegrees();
        return where + (open < 0.05 ? ", closed" : ", " + degrees(open) + " open");
    }

    /** The same place as a shot is asked for: station, and how far in or out. */
    private static String plan(DisplayUnits display, SwingAsk now, Clearance at) {
        SwingAxes axes = SwingAxes.of(now.opening(), now.hand(), now.hinge().pin());
        double r = at.atRadius().inches();
        double q = at.atAngle().radians();
        PlanPoint point = axes.under(r, q);
        Opening opening = now.opening();
        double along = (point.xIn() - opening.face().xIn()) * opening.along().east()
                + (point.yIn() - opening.face().yIn()) * opening.along().north();
        String station = "station " + display.length(opening.station().inches() + along);
        double off = axes.sideIn(point) + axes.pinSide().inches();
        String side = now.hand().swing().key();
        return off < CORNER_IN
                ? station + ", on the line"
                : station + ", " + display.length(Length.inches(off)) + " " + side;
    }

    private static String degrees(double degrees) {
        return DecimalText.upTo(degrees, 0) + " degrees";
    }
}
