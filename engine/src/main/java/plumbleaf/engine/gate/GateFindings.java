package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Release;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** What is to be said about a gate beside its swing: hand, release, gaps, weight, welding. */
final class GateFindings {
    /** Above this a leaf is not lifted by hand at all. Judgement; the crew sheet says the same. */
    private static final Force TWO_PEOPLE = Force.pounds(150);

    private GateFindings() {}

    static Finding hand(Gate gate, boolean hingeSaid, boolean swingSaid) {
        boolean released = gate.release().match(priced -> false, hold -> false, is -> true);
        String missing = hingeSaid
                ? "which way it swings"
                : swingSaid ? "on which side its hinges are" : "on which side its hinges are and which way it swings";
        return Checked.note(
                "gate.hand",
                released ? Severity.MUST_FIX : Severity.CANNOT_SAY,
                gate.id(),
                gate.id() + ": say, as seen from outside, " + missing
                        + ". Every choice is worked out and the worst shown; nothing is released for the shop until then.",
                Basis.commonPractice("a gate of the wrong hand is scrap"));
    }

    static Finding release(Gate gate) {
        return gate.release()
                .match(
                        priced -> held(gate, "priced from the plan"),
                        hold -> held(gate, "on hold"),
                        released -> released(gate, released));
    }

    private static Finding held(Gate gate, String state) {
        return Checked.note(
                "gate.release",
                Severity.CAUTION,
                gate.id(),
                "HOLD: " + gate.id() + " is " + state
                        + ". Measure the opening top, middle and bottom between the standing posts before anything is cut.",
                Basis.commonPractice("leaves built to the plan do not fit"));
    }

    private static Finding released(Gate gate, Release.Released released) {
        boolean measured = !gate.asSet().isEmpty();
        Severity severity = measured ? Severity.PASS : released.beforePosts() ? Severity.CAUTION : Severity.MUST_FIX;
        String how = measured
                ? "."
                : released.beforePosts()
                        ? ", to be built before its posts stand, as signed for. Its gaps are judged for posts nobody has seen."
                        : ", and its opening was not measured between standing posts. Measure it, or have building before the posts signed for.";
        return Checked.note(
                "gate.release",
                severity,
                gate.id(),
                gate.id() + " is released, revision " + released.revision() + ", by " + released.by() + how,
                Basis.job("release"));
    }

    /** What the eye allows where the tops of two leaves meet: 1/4 in., common practice, no source. */
    private static final double MEETING_IN = 0.25;

    static Finding meeting(Gate gate, double missIn, DisplayUnits display) {
        String message = missIn <= MEETING_IN
                ? gate.id() + ": the tops of its leaves meet within " + display.length(MEETING_IN) + "."
                : gate.id() + ": the tops of its leaves miss each other by " + display.length(missIn)
                        + " where they meet, since the ground bends between the posts. Give both leaves one slope, or set their bottom gaps apart.";
        return Checked.of(
                "gate.meeting",
                Severity.CAUTION,
                gate.id(),
                message,
                Basis.commonPractice("what the eye allows"),
                Measure.demand(missIn, MEETING_IN, "in"));
    }

    static Finding groundGap(String part, GateAsk ask, Swing swing) {
        double gap = swing.closedLargest().clear().inches();
        double limit = ask.gap().largest().inches();
        DisplayUnits display = ask.display();
        boolean fits = gap <= limit;
        return Checked.of(
                "gate.gap",
                Severity.MUST_FIX,
                part,
                part + ": closed, it leaves up to " + display.length(gap) + " above the ground"
                        + (fits ? "" : ", more than the " + display.length(limit) + " allowed") + ".",
                Basis.job(ask.gap().why()),
                Measure.demand(Math.max(0, gap), limit, "in"));
    }

    private static String lifted(Force wet) {
        return wet.compareTo(TWO_PEOPLE) > 0
                ? "a hoist or a lift sets it, nobody under it."
                : "two people or a lift to hang it.";
    }

    static List<Finding> leaf(Leaf leaf, GateParts parts, DisplayUnits display) {
        List<Finding> findings = new ArrayList<>();
        Force wet = leaf.weight().wet();
        String pounds = DecimalText.whole(wet.pounds()) + " lb";
        if (leaf.weight().takesTwo())
            findings.add(new Checked(
                    "gate.lift",
                    Severity.CAUTION,
                    leaf.id(),
                    leaf.id() + " weighs " + pounds + " wet: " + lifted(wet),
                    Basis.commonPractice("two people above 50 lb"),
                    Optional.of(Measure.demand(wet.pounds(), LeafWeight.ONE_PERSON.pounds(), "lb")),
                    List.of()));
        findings.add(Checked.note(
                "gate.zinc",
                Severity.CAUTION,
                leaf.id(),
                "Galvanized steel gives off zinc fume when it is welded or cut: strip the zinc back, work in moving air, wear a respirator. Repair"
                        + " bare steel with zinc-rich paint.",
                Basis.commonPractice("welding galvanized tube")));
        parts.cladding()
                .match(
                        open -> List.<Finding>of(),
                        wood -> List.of(pickets(leaf, wood, display)),
                        pickets -> List.of(steelPickets(leaf, pickets, display)),
                        mesh -> List.<Finding>of(),
                        sheet -> List.<Finding>of())
                .forEach(findings::add);
        return findings;
    }

    private static Finding pickets(Leaf leaf, Cladding.Wood wood, DisplayUnits display) {
        Offset least = wood.style().leastGap();
        Offset greatest = wood.style().greatestGap();
        double gap = leaf.picketGap().inches();
        boolean fits = gap >= least.inches() - 1e-9 && gap <= greatest.inches() + 1e-9;
        if (wood.style().lying()) return lying(leaf, wood, fits, display);
        Length first = leaf.pickets().get(0).width();
        String ripped = first.compareTo(wood.style().boardWidth()) < 0
                ? ", the first and the last ripped to " + display.length(first)
                : "";
        return Checked.note(
                "gate.pickets",
                fits ? Severity.PASS : Severity.CAUTION,
                leaf.id(),
                leaf.id() + ": " + leaf.pickets().size() + " pickets with " + display.length(leaf.picketGap())
                        + " between" + ripped
                        + (fits
                                ? "."
                                : "; the style asks " + display.length(least) + " to " + display.length(greatest)
                                        + ". Change the opening a little or pick another board."),
                Basis.job("the style's range of gaps"));
    }

    private static Finding lying(Leaf leaf, Cladding.Wood wood, boolean fits, DisplayUnits display) {
        Length highest = leaf.pickets().get(leaf.pickets().size() - 1).across();
        boolean ripped = highest.compareTo(wood.style().boardWidth()) < 0;
        return Checked.note(
                "gate.pickets",
                fits ? Severity.PASS : Severity.CAUTION,
                leaf.id(),
                leaf.id() + ": " + leaf.pickets().size() + " lying boards with " + display.length(leaf.picketGap())
                        + " between" + (ripped ? ", the highest ripped to " + display.length(highest) : "")
                        + (fits
                                ? "."
                                : "; the style asks "
                                        + display.length(wood.style().leastGap()) + " to "
                                        + display.length(wood.style().greatestGap())
                                        + ". Change the height a little or pick another board."),
                Basis.job("the style's range of gaps"));
    }

    private static Finding steelPickets(Leaf leaf, Cladding.Pickets pickets, DisplayUnits display) {
        long count = leaf.picketEdges().positions().size() / 2;
        return Checked.note(
                "gate.pickets",
                Severity.PASS,
                leaf.id(),
                leaf.id() + ": " + count + " steel pickets, " + display.length(leaf.picketGap())
                        + " clear between them and beside the stiles, " + display.length(pickets.gap()) + " at most.",
                Basis.job("the largest gap asked for"));
    }

    static Finding cannotBeMade(String gate, String why) {
        return Checked.note(
                "gate.size",
                Severity.MUST_FIX,
                gate,
                gate + " cannot be made: " + why + ". Change the opening, the gaps or the height.",
                Basis.judgement("room for the parts"));
    }

    static Finding notWorkedOut(String gate, String what) {
        return Checked.note(
                "gate.kind", Severity.CANNOT_SAY, gate, gate + ": " + what, Basis.judgement("not worked out here"));
    }
}
