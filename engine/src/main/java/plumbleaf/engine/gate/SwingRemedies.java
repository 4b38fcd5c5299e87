package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.job.GateGround;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.section.Section;

/**
 * What would let a dragging leaf clear, each change worked out over the same ground and offered only when the leaf then clears. Prices come later, from
 * whoever knows them.
 */
final class SwingRemedies {
    /** Leaves are raised by eighths of an inch. */
    private static final double RAISE_STEP_IN = 0.125;

    /** A leaf lower than this is no gate of its fence any more. Judgement. */
    private static final double LEAST_INFILL_IN = 24;

    private static final double MOVE_STEP_IN = 6;
    private static final double MOVE_MOST_IN = 240;

    private static final double SET_BACK_LEAST_IN = GateGround.SET_BACK_LEAST.inches();
    private static final double SET_BACK_MOST_IN = GateGround.SET_BACK_MOST.inches();

    /** An opening held back below this is no cure. */
    private static final int LEAST_HOLD_BACK_DEG = 45;

    /** Above this much rise for each degree no rising hinge is looked for: judgement, 2 in. in 90 degrees. */
    private static final double RISE_MOST_IN_PER_DEG = 2.0 / 90;

    private final GateAsk ask;
    private final SwingAsk now;
    private final Swing dragging;
    private final List<Remedy> found = new ArrayList<>();

    /** What a cure that can be made larger aims for: twice the error of the shots, so that no caution stays behind. */
    private final double marginIn;

    private SwingRemedies(GateAsk ask, SwingAsk now, Swing dragging) {
        this.ask = ask;
        this.now = now;
        this.dragging = dragging;
        this.marginIn = 2 * now.shotError().inches();
    }

    static List<Remedy> of(GateAsk ask, SwingAsk now, Swing dragging, boolean single) {
        SwingRemedies remedies = new SwingRemedies(ask, now, dragging);
        if (single) {
            remedies.otherHinge();
            remedies.otherSwing();
        }
        if (!dragging.clearsGround()) {
            remedies.raise();
            remedies.squareBottom();
            remedies.risingHinge();
            remedies.gradeTheArc();
            if (single) remedies.landing();
        }
        remedies.holdBack();
        if (single) {
            remedies.move();
            remedies.setBack();
            remedies.pair();
            remedies.slide();
        }
        return List.copyOf(remedies.found);
    }

    private void otherHinge() {
        Hand hand = now.hand().otherHinge();
        Swing tried = Swings.tried(LeafLayout.swing(ask, now.opening(), hand, now.opens()), ask.ground());
        offer(
                "hinge-side",
                "hang it on the " + hand.hinge().key() + ": " + result(tried),
                tried,
                edit("hinge", hand.hinge().key()));
    }

    private void otherSwing() {
        Hand hand = now.hand().otherSwing();
        Swing tried = Swings.tried(LeafLayout.swing(ask, now.opening(), hand, now.opens()), ask.ground());
        offer(
                "swing-side",
                "let it swing " + hand.swing().key() + ": " + result(tried),
                tried,
                edit("swing", hand.swing().key()));
    }

    private void raise() {
        double up = upIn();
        Swing tried = Swings.tried(now.with(now.outline().raised(Length.inches(up))), ask.ground());
        double gap = tried.closedLargest().clear().inches();
        String words = "raise the leaf " + length(up) + ": " + result(tried) + "; " + closedGap(gap);
        offer("raise-leaf", words, tried, edit("leaf.bottomGap", bottomGap(up)));
        shorten(up, tried, gap);
    }

    /** The same room under it, its top left in line with the fence: the bottom rail goes higher on a lower leaf. */
    private void shorten(double up, Swing tried, double gap) {
        LeafSpec leaf = ask.gate().leaf();
        double infill = leaf.infill().inches() - up;
        boolean curved = now.outline().crest().isCurved();
        if (infill < LEAST_INFILL_IN || curved) return;
        offer(
                "bottom-rail",
                "set its bottom rail " + length(up) + " higher and leave its top in line with the fence: "
                        + result(tried) + "; " + closedGap(gap),
                tried,
                edits("leaf.bottomGap=" + bottomGap(up), "leaf.infill=" + LengthText.exact(infill)));
    }

    private double upIn() {
        double wanted = marginIn - dragging.running().clear().inches();
        return Math.ceil(wanted / RAISE_STEP_IN - 1e-9) * RAISE_STEP_IN;
    }

    private String bottomGap(double up) {
        return LengthText.exact(ask.gate().leaf().bottomGap().inches() + up);
    }

    private void squareBottom() {
        Outline was = now.outline();
        if (was.bottom().isZero()) return;
        double width = was.width().inches();
        if (LeafRoom.trouble(ask, width, Slope.ZERO, was.top()).isPresent()) return;
        Outline level = new Outline(
                was.hingeEdge(),
                was.latchEdge(),
                was.bottomAtPin(),
                was.topAtPin(),
                Slope.ZERO,
                was.top(),
                was.infillBelow());
        Swing tried = Swings.tried(now.with(level), ask.ground());
        double gap = tried.closedLargest().clear().inches();
        offer(
                "square-bottom",
                "make its bottom level: " + result(tried) + "; " + closedGap(gap),
                tried,
                was.top().isZero()
                        ? edit("leaf.shape", "square")
                        : edits("leaf.shape=sloped", "leaf.shape.top=" + percent(was.top()), "leaf.shape.bottom=0%"));
    }

    /** The rise for each degree that lifts every angle clear: the largest of shortage over angle, then tried as a real hinge. */
    private void risingHinge() {
        if (now.hinge().risePerDegree().inches() > 0) return;
        Swings along = Swings.over(now, ask.ground());
        double needed = 0;
        int steps = (int) Math.ceil(now.opens().inDegrees() * 4);
        double step = now.opens().inDegrees() / steps;
        for (int i = 1; i <= steps; i++) {
            double degrees = i * step;
            double shortBy =
                    marginIn - along.runningAt(Angle.degrees(degrees).radians()).clearIn();
            needed = Math.max(needed, shortBy / degrees);
        }
        if (along.runningAt(0).clearIn() < marginIn || needed <= 0 || needed > RISE_MOST_IN_PER_DEG) return;
        Optional<HingeModel> stocked = stocked(needed);
        double perDegree = stocked.map(hinge -> hinge.risePerDegree().inches()).orElse(needed * 1.02);
        Swing tried =
                Swings.tried(now.with(stocked.orElse(now.hinge().rising(Length.inches(perDegree)))), ask.ground());
        double total = perDegree * now.opens().inDegrees();
        String words = "use hinges that rise " + DecimalText.fixed(perDegree, 3) + " in. a degree, " + length(total)
                + " in all: " + result(tried)
                + (stocked.isPresent()
                        ? ""
                        : "; none of the hinges known here rises so much: ask for "
                                + ask.gate().hinges().count()
                                + " of them for a leaf "
                                + length(now.outline().width().inches())
                                + " wide, and enter their sheet as a part of your own, which prices it");
        offer("rising-hinge", words, tried, stocked.flatMap(hinge -> edit("hinges.model", hinge.id())));
    }

    private Optional<HingeModel> stocked(double neededInPerDeg) {
        Optional<HingeModel> least = Optional.empty();
        for (HingeModel hinge : ask.hingesToTry()) {
            double rise = hinge.risePerDegree().inches();
            boolean less = least.map(so -> rise < so.risePerDegree().inches()).orElse(true);
            if (rise >= neededInPerDeg && less) least = Optional.of(hinge);
        }
        return least;
    }

    /** The largest whole angle up to which nothing is touched: a wider swing never has more clearance, so halving finds it. */
    private void holdBack() {
        int low = LEAST_HOLD_BACK_DEG;
        int high = (int)
                Math.floor(Math.min(now.opens().inDegrees(), dragging.maxAngle().inDegrees()));
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (clearing(now.with(Angle.degrees(middle))).isPresent()) low = middle;
            else high = middle - 1;
        }
        Swing tried = Swings.tried(now.with(Angle.degrees(low)), ask.ground());
        if (low < now.opens().inDegrees())
            offer("hold-back", "stop it at " + low + " degrees: " + result(tried), tried, edit("opens", low + " deg"));
    }

    /** Ground shaved under the swing until the hung leaf clears by the margin. */
    private void gradeTheArc() {
        Optional<Regrade> cut = ArcCut.of(ask.gate().id(), now, dragging, ask.ground(), marginIn);
        if (cut.isEmpty()) return;
        double there = dragging.closedThere().inches();
        OptionalDouble ratio = there > 0 ? OptionalDouble.of((there - marginIn) / there) : OptionalDouble.empty();
        String words = "shave the ground under the swing by up to "
                + length(cut.get().deepest().inches()) + ", "
                + DecimalText.upTo(cut.get().soil().cubicFeet(), 2) + " cu ft of soil, if it may be cut";
        found.add(new Remedy("grade-arc", words, ratio, Optional.empty(), edit("regrade", "true")));
    }

    /** A level landing at the grade of the hinges: the leaf, level then, keeps its gap all the way round. */
    private void landing() {
        if (ask.gate().ground().landing()) return;
        Offset level = Offset.inches(Gates.elevationAtPin(ask, now.opening(), now.hand()));
        LandedGround landed = new LandedGround(ask.ground(), level);
        GateAsk on = ask.over(landed);
        Optional<Swing> tried = clearing(on, LeafLayout.swing(on, now.opening(), now.hand(), now.opens()));
        if (tried.isEmpty()) return;
        Regrade soil = landed.soil(ask.gate().id(), now);
        String words = "build a level landing under the swing, its leaf level: " + soil.words(ask.display()) + ": "
                + result(tried.get());
        offer("landing", words, tried.get(), edit("landing", "true"));
    }

    /** The nearest place on the leg, by half feet, where the leaf clears. */
    private void move() {
        for (double by = MOVE_STEP_IN; by <= MOVE_MOST_IN; by += MOVE_STEP_IN) {
            for (double signed : new double[] {by, -by}) {
                boolean room = signed > 0
                        ? signed <= now.opening().roomAfter().inches()
                        : -signed <= now.opening().roomBefore().inches();
                if (!room) continue;
                Opening there = now.opening().moved(Offset.inches(signed));
                SwingAsk moved = LeafLayout.swing(ask, there, now.hand(), now.opens());
                Optional<Swing> tried = clearing(moved);
                if (tried.isEmpty()) continue;
                String words = "move it " + length(by) + (signed > 0 ? " further along" : " back") + ": "
                        + result(tried.get());
                offer(
                        "move",
                        words,
                        tried.get(),
                        edit("station", LengthText.exact(there.station().inches())));
                return;
            }
        }
    }

    /** Away from the side it swings to, where the ground that rises is: the least set-back by half feet at which the leaf clears. */
    private void setBack() {
        if (dragging.clearsGround() || !ask.gate().ground().setBack().isZero()) return;
        boolean outwards = now.hand().swing() == SwingWay.IN;
        boolean left = outwards == (now.opening().outside() == Side.LEFT);
        for (double back = SET_BACK_LEAST_IN; back <= SET_BACK_MOST_IN; back += MOVE_STEP_IN) {
            Opening there = now.opening().besideLine(Offset.inches(left ? back : -back));
            if (LeafLayout.trouble(ask, there, now.hand(), now.outline().width().inches())
                    .isPresent()) continue;
            Optional<Swing> tried = clearing(LeafLayout.swing(ask, there, now.hand(), now.opens()));
            if (tried.isEmpty()) continue;
            String words = "set it " + length(back) + " back " + (outwards ? "outwards" : "inwards")
                    + " of the fence's line, away from the ground that rises, the fence beside it leaning back to its"
                    + " posts: " + result(tried.get());
            offer(
                    "set-back",
                    words,
                    tried.get(),
                    edits("swing=" + now.hand().swing().key(), "setBack=" + LengthText.exact(back)));
            return;
        }
    }

    /**
     * A leaf that slides past its own fence, to each side where its leg has room for the run-back and it runs clear; of the first tube that rollers take, where they
     * do not take the one it has.
     */
    private void slide() {
        Optional<Section> frame = SlideGates.frameOnRollers(ask);
        if (frame.isEmpty()) return;
        Section own = ask.parts().frame();
        boolean same = frame.get().equals(own);
        GateAsk framed = same ? ask : ask.framed(frame.get());
        for (Side side : Side.values()) {
            GateKind.Slide kind =
                    new GateKind.Slide(side, SlideSpec.usual(now.opening().clear()));
            Optional<SlidePlan> tried =
                    SlideGates.plan(framed, now.opening(), kind, false).slide();
            boolean atStart = now.opening().hingeAtStart(side);
            double room = (atStart ? now.opening().roomBefore() : now.opening().roomAfter()).inches();
            if (tried.isEmpty()
                    || tried.get().travel().running().inches() < marginIn
                    || -tried.get().shape().openEnd().inches() > room) continue;
            double clear = tried.get().travel().running().inches();
            String slides = edits("kind=slide", "hinge=", "swing=", "opens=", "holdOpen=", "slides=" + side.key())
                    .orElseThrow();
            String welded =
                    "builds." + ask.gate().id() + ".frame=" + frame.get().id();
            found.add(new Remedy(
                    "slide",
                    "make it a slide that opens to the " + side.key()
                            + (same
                                    ? ""
                                    : ", its leaf of " + frame.get().name() + " on the "
                                            + tried.get().rollers().name())
                            + ": clears by " + length(clear),
                    OptionalDouble.of(marginIn / clear),
                    Optional.empty(),
                    Optional.of(same ? slides : slides + Remedy.AND_THEN + welded)));
        }
    }

    /** Splits that are tried beside the even one, from the nearest to it on. */
    private static final List<Integer> UNEVEN_PCT = List.of(45, 55, 40, 60, 35, 65, 30, 70, 25, 75);

    /** Two leaves of half the width; and the uneven pair nearest to that which clears, for a leaf wide enough to walk through alone, or for ground that bends. */
    private void pair() {
        Optional<Swing> even = ofPair(0.5);
        even.ifPresent(worse -> offer(
                "pair",
                "hang two leaves of half the width: " + result(worse),
                worse,
                edits("hinge=", "kind=pair", "split=50%")));
        for (int pct : UNEVEN_PCT) {
            Optional<Swing> uneven = ofPair(pct / 100.0);
            if (uneven.isEmpty()
                    || !uneven.get().clearsGround()
                    || !uneven.get().clearsObstacles()) continue;
            offer(
                    "unequal-pair",
                    "hang an unequal pair, " + pct + " % on the left: " + result(uneven.get()),
                    uneven.get(),
                    edits("hinge=", "kind=pair", "split=" + pct + "%"));
            return;
        }
    }

    /** The tighter swing of both leaves; empty where one cannot be made or drags. */
    private Optional<Swing> ofPair(double split) {
        Hand left = new Hand(Side.LEFT, now.hand().swing());
        Optional<Swing> worse = Optional.empty();
        for (Hand hand : List.of(left, left.otherHinge())) {
            double share = hand.hinge() == Side.LEFT ? split : 1 - split;
            if (LeafLayout.troubleOfPair(ask, now.opening(), hand, share).isPresent()) return Optional.empty();
            Swings along =
                    Swings.over(LeafLayout.swingOfPair(ask, now.opening(), hand, now.opens(), share), ask.ground());
            if (!along.runningClears(0)) return Optional.empty();
            Swing tried = along.swing(false);
            boolean tighter = worse.map(
                            so -> tried.running().clear().compareTo(so.running().clear()) < 0)
                    .orElse(true);
            if (tighter) worse = Optional.of(tried);
        }
        return worse;
    }

    /** The swing where it clears everything and the ground by the margin. Most that a search tries do not, which is seen before the whole swing is worked out. */
    private Optional<Swing> clearing(SwingAsk tried) {
        return clearing(ask, tried);
    }

    private Optional<Swing> clearing(GateAsk on, SwingAsk tried) {
        Swings along = Swings.over(tried, on.ground());
        if (!along.runningClears(marginIn)) return Optional.empty();
        return Optional.of(along.swing(false)).filter(Swing::clearsObstacles);
    }

    private void offer(String id, String words, Swing tried, Optional<String> edit) {
        if (!tried.clearsGround() || !tried.clearsObstacles()) return;
        found.add(new Remedy(id, words, tried.room().ratio(), Optional.empty(), edit));
    }

    private String result(Swing tried) {
        return "clears by " + length(tried.running().clear().inches());
    }

    private String closedGap(double gapIn) {
        double limit = ask.gap().largest().inches();
        String over = gapIn > limit + 1e-9 ? ", more than the " + length(limit) + " allowed" : "";
        return "closed it leaves up to " + length(gapIn) + over;
    }

    private String length(double inches) {
        return ask.display().length(inches);
    }

    private static String percent(Slope slope) {
        return DecimalText.upTo(100 * slope.ratio(), 4) + "%";
    }

    private Optional<String> edits(String... changes) {
        StringBuilder all = new StringBuilder();
        for (String change : changes)
            all.append(all.isEmpty() ? "" : Remedy.AND_THEN)
                    .append("gates[")
                    .append(ask.gate().id())
                    .append("].")
                    .append(change);
        return Optional.of(all.toString());
    }

    private Optional<String> edit(String key, String value) {
        return Optional.of("gates[" + ask.gate().id() + "]." + key + "=" + value);
    }
}
