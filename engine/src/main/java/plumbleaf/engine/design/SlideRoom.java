package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.gate.Opening;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Building;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.NearHouse;
import plumbleaf.engine.job.PropertyLine;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.rule.NearBuilding;

/**
 * The strip of ground that a slide leaf runs over, from the tail of the open leaf to the nose of the closed one, against all that stands or moves there: lot lines, buildings,
 * fences that turn into it, other gates. Check: SlideRoomTest.
 */
final class SlideRoom {
    /** Left clear beside a moving leaf. Judgement. */
    private static final Length BESIDE = Length.inches(2);

    /** What is further off than this is not spoken of. */
    private static final Length NEAR = Length.feet(10);

    /** Places at which an opening leaf is looked at. */
    private static final int TURNS = 18;

    private final Job job;
    private final Layout layout;
    private final List<GateDesign> gates;
    private final DisplayUnits display;

    SlideRoom(Job job, Layout layout, List<GateDesign> gates) {
        this.job = job;
        this.layout = layout;
        this.gates = gates;
        this.display = job.display();
    }

    /** Something on the way, how far it stays off, and how far it should. */
    private record Near(String words, Length off, Length needed, boolean bars) {
        boolean struck() {
            return off.compareTo(needed) < 0;
        }
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (GateDesign gate : gates) gate.plan().slide().ifPresent(slide -> findings.addAll(of(gate, slide)));
        return findings;
    }

    private List<Finding> of(GateDesign gate, SlidePlan slide) {
        List<PlanPoint> strip = slide.envelope(half(slide));
        List<Near> all = near(gate, strip);
        List<Remedy> cures = turned(gate, slide);
        List<Finding> findings = new ArrayList<>();
        for (Near each : all) if (each.struck()) findings.add(finding(gate.id(), each, cures));
        if (findings.isEmpty()) findings.add(clear(gate.id(), slide, all));
        return findings;
    }

    private static Offset half(SlidePlan slide) {
        return slide.leaf().make().tube().width().times(0.5).asOffset();
    }

    private Finding finding(String gate, Near near, List<Remedy> cures) {
        return new Checked(
                "slide.room",
                near.bars() ? Severity.CAUTION : Severity.MUST_FIX,
                gate,
                gate + ": its leaf " + near.words()
                        + ". Slide it to the other side, set it closer to its posts, move it along"
                        + " the line or shorten its tail.",
                Basis.job("the yard as laid out"),
                Optional.of(Measure.provided(near.off().inches(), near.needed().inches(), "in")),
                cures);
    }

    private Finding clear(String gate, SlidePlan slide, List<Near> all) {
        StringBuilder said = new StringBuilder();
        for (Near each : all) {
            if (each.off().compareTo(NEAR) > 0) continue;
            said.append(said.isEmpty() ? ": " : "; ").append(each.words());
        }
        return Checked.note(
                "slide.room",
                Severity.PASS,
                gate,
                gate + ": its leaf needs "
                        + display.length(slide.shape().openEnd().size()) + " of run-back behind the opening and has it"
                        + (said.isEmpty()
                                ? ": no lot line, building, gate or turning fence that the job knows stands within "
                                        + display.length(NEAR) + " of its way."
                                : said + "."),
                Basis.job("the yard as laid out"));
    }

    /** Everything that is told of, the strip's own leg of the fence apart. */
    private List<Near> near(GateDesign gate, List<PlanPoint> strip) {
        List<Near> all = new ArrayList<>();
        for (PropertyLine line : job.rules().propertyLines())
            all.add(near(strip, line.points(), line.setback(), "the " + line.what()));
        for (NearHouse house : job.rules().nearHouse())
            for (Building building : house.buildings()) {
                List<PlanPoint> round = new ArrayList<>(building.corners());
                round.add(round.get(0));
                all.add(near(strip, round, BESIDE, "the " + building.what()));
            }
        all.addAll(fences(gate, strip));
        for (GateDesign other : gates) if (!other.id().equals(gate.id())) all.addAll(other(strip, other));
        return all;
    }

    private Near near(List<PlanPoint> strip, List<PlanPoint> line, Length needed, String what) {
        Length off = off(strip, line);
        String words = off.isZero()
                ? "crosses " + what
                : "comes within " + display.length(off) + " of " + what
                        + (off.compareTo(needed) < 0 ? ", and " + display.length(needed) + " is to stay clear" : "");
        return new Near(words, off, needed.isZero() ? Length.inches(1e-6) : needed, false);
    }

    /** The nearest bay of every other leg and run. */
    private List<Near> fences(GateDesign gate, List<PlanPoint> strip) {
        List<Near> all = new ArrayList<>();
        for (RunLayout run : layout.runs()) {
            PlanLine line = run.line().line();
            boolean own = run.run().equals(gate.asked().run());
            int leg = own ? line.legAt(gate.asked().station().asOffset()) : -1;
            Length nearest = NEAR;
            Optional<Bay> found = Optional.empty();
            for (Bay bay : run.bays()) {
                Offset middle = Offset.inches((bay.start().inches() + bay.end().inches()) / 2);
                if (own && line.legAt(middle) == leg) continue;
                Length off = off(strip, List.of(line.pointAt(bay.start()), line.pointAt(bay.end())));
                if (off.compareTo(nearest) >= 0) continue;
                nearest = off;
                found = Optional.of(bay);
            }
            Length off = nearest;
            found.ifPresent(bay ->
                    all.add(near(off, "the fence between " + bay.from() + " and " + bay.to() + " of " + run.run())));
        }
        return all;
    }

    private Near near(Length off, String what) {
        String words = off.isZero() ? "runs into " + what : "comes within " + display.length(off) + " of " + what;
        return new Near(words, off, BESIDE, false);
    }

    /** Another gate: its own strip, the swing of its leaves, and whether the open leaf stands before its opening. */
    private List<Near> other(List<PlanPoint> strip, GateDesign other) {
        if (other.plan().slide().isPresent()) {
            SlidePlan slide = other.plan().slide().get();
            List<PlanPoint> round = new ArrayList<>(slide.envelope(half(slide)));
            round.add(round.get(0));
            return List.of(near(off(strip, round), "the way of " + other.id()));
        }
        List<Near> all = new ArrayList<>();
        Length nearest = NEAR;
        for (LeafHang hang : other.plan().hangs())
            for (int turn = 0; turn <= TURNS; turn++) {
                Length off = off(strip, leafAt(other.plan().opening(), hang, (double) turn / TURNS));
                if (off.compareTo(nearest) < 0) nearest = off;
            }
        if (nearest.compareTo(NEAR) < 0) all.add(near(nearest, "the swing of " + other.id()));
        Opening opening = other.plan().opening();
        if (!all.isEmpty() && stands(strip, opening) && nearest.compareTo(BESIDE) >= 0)
            all.add(new Near(
                    "stands before the opening of " + other.id() + " while it is open, and bars it",
                    Length.ZERO,
                    BESIDE,
                    true));
        return all;
    }

    /** The closed leaf's line turned about its hinge, from there to its latch edge. */
    private static List<PlanPoint> leafAt(Opening opening, LeafHang hang, double share) {
        Side hinge = hang.leaf().hand().hinge();
        Direction along =
                opening.hingeAtStart(hinge) ? opening.along() : opening.along().reversed();
        Direction outward = hinge == Side.LEFT ? along.right() : along.left();
        double sign = hang.leaf().hand().swing() == SwingWay.OUT ? 1 : -1;
        double q = hang.swing().opens().radians() * share;
        double wide = hang.leaf().outline().latchEdge().inches();
        PlanPoint pin = opening.faceAt(hinge);
        return List.of(
                pin,
                pin.moved(along, Offset.inches(wide * StrictMath.cos(q)))
                        .moved(outward, Offset.inches(sign * wide * StrictMath.sin(q))));
    }

    /** Whether the strip reaches along in front of an opening, within a yard of it. */
    private static boolean stands(List<PlanPoint> strip, Opening opening) {
        PlanPoint end = opening.face().moved(opening.along(), opening.clear());
        return off(strip, List.of(opening.face(), end)).compareTo(Length.feet(3)) < 0;
    }

    /** How far a line stays off the strip; nothing where it crosses it or lies within. */
    private static Length off(List<PlanPoint> strip, List<PlanPoint> line) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < line.size(); i++) {
            if (within(strip, line.get(i)) || within(strip, line.get(i + 1))) return Length.ZERO;
            least = Math.min(
                    least,
                    NearBuilding.distance(line.get(i), line.get(i + 1), strip).inches());
        }
        return Length.inches(Math.min(least, 1e6));
    }

    /** On one and the same side of all four edges. */
    private static boolean within(List<PlanPoint> strip, PlanPoint point) {
        int left = 0;
        int right = 0;
        for (int i = 0; i < strip.size(); i++) {
            PlanPoint a = strip.get(i);
            PlanPoint b = strip.get((i + 1) % strip.size());
            double side = point.leftOf(a, b);
            if (side > 0) left++;
            if (side < 0) right++;
        }
        return left == 0 || right == 0;
    }

    /** To the other side, where nothing is in the way there and the leg has room for the tail. */
    private List<Remedy> turned(GateDesign gate, SlidePlan slide) {
        Opening opening = gate.plan().opening();
        Side side = slide.kind().opensTo().other();
        double back = -slide.shape().openEnd().inches();
        double room = (opening.hingeAtStart(side) ? opening.roomBefore() : opening.roomAfter()).inches();
        if (room < slide.shape().tail().inches()) return List.of();
        PlanPoint face = opening.faceAt(side);
        Direction along =
                opening.hingeAtStart(side) ? opening.along() : opening.along().reversed();
        double nose = slide.shape().nose().inches();
        double middle = slide.shape().across().inches();
        double half = half(slide).inches();
        List<PlanPoint> strip = new ArrayList<>();
        for (double[] corner : new double[][] {{-back, half}, {nose, half}, {nose, -half}, {-back, -half}})
            strip.add(face.moved(along, Offset.inches(corner[0]))
                    .moved(slide.outward(), Offset.inches(middle + corner[1])));
        if (near(gate, strip).stream().anyMatch(Near::struck)) return List.of();
        return List.of(new Remedy(
                "slide-side",
                "let it slide to the " + side.key() + ", where nothing stands in its way",
                OptionalDouble.of(1),
                Optional.empty(),
                Optional.of("gates[" + gate.id() + "].slides=" + side.key())));
    }
}
