package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.DepthNeed;
import plumbleaf.engine.footing.LateralSoil;
import plumbleaf.engine.footing.LateralWork;
import plumbleaf.engine.footing.NearFooting;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;

/**
 * Footings that stand so near to each other that wind pushes both into the same ground, where that alone leaves one too shallow: how deep it must be with what is left of the soil. One that is too
 * shallow by itself is told so elsewhere. Their springs, and so the drop of a gate, are left as they are: under its own weight one footing moves and the other stands still.
 */
final class NearFootings {
    /** Less than this no depth is dug. */
    private static final double SEEN_IN = 0.05;

    private final Map<Square, List<PostDesign>> squares = new LinkedHashMap<>();
    private final DisplayUnits display;

    /** Squares of this size hold every neighbour that counts in those around them: seven widths of the widest hole. */
    private final double squareIn;

    private record Square(long x, long y) {}

    private NearFootings(List<PostDesign> posts, DisplayUnits display) {
        this.display = display;
        double widestIn = 1;
        for (PostDesign post : posts)
            widestIn = Math.max(
                    widestIn,
                    post.footing().map(is -> is.hole().diameter().inches()).orElse(0.0));
        this.squareIn = NearFooting.FAR_WIDTHS * widestIn;
        for (PostDesign post : posts)
            if (post.footing().isPresent())
                squares.computeIfAbsent(square(post, 0, 0), at -> new ArrayList<>())
                        .add(post);
    }

    static List<Finding> of(List<PostDesign> posts, DisplayUnits display) {
        NearFootings near = new NearFootings(posts, display);
        List<Finding> findings = new ArrayList<>();
        Map<String, List<Finding>> alike = new LinkedHashMap<>();
        for (PostDesign post : posts) {
            String run = post.post().run();
            near.of(post)
                    .ifPresent(
                            post.post().gate().isEmpty()
                                    ? alike.computeIfAbsent(run, key -> new ArrayList<>())::add
                                    : findings::add);
        }
        for (List<Finding> group : alike.values())
            if (!group.isEmpty()) findings.add(PostFindings.worst(Findings.join(group)));
        return findings;
    }

    private Square square(PostDesign post, int right, int up) {
        return new Square(
                (long) Math.floor(post.post().at().xIn() / squareIn) + right,
                (long) Math.floor(post.post().at().yIn() / squareIn) + up);
    }

    /** The wind that asks for the deepest hole in what is left of the soil. */
    private Optional<Finding> of(PostDesign post) {
        Optional<Finding> worst = Optional.empty();
        double most = 0;
        for (DepthNeed need : post.footing().map(is -> is.needs()).orElse(List.of())) {
            Optional<LateralWork> wind =
                    need.lateral().filter(work -> work.worst().combination().hasWind());
            if (wind.isEmpty()) continue;
            Left left = left(post, wind.get());
            Length needed = with(wind.get(), left.share()).depth();
            boolean stoodAlone = wind.get().depth().inches() <= post.depth().inches() + SEEN_IN;
            boolean stands = needed.inches() <= post.depth().inches() + SEEN_IN;
            if (!stoodAlone || stands || needed.inches() <= most) continue;
            most = needed.inches();
            worst = Optional.of(finding(post, need, left, needed));
        }
        return worst;
    }

    /**
     * What is left of the soil.
     *
     * @param nearest the footing that takes most of it
     */
    private record Left(double share, String nearest, Length apart) {}

    private Left left(PostDesign post, LateralWork work) {
        double share = 1;
        double least = 1;
        Left left = new Left(1, "", Length.ZERO);
        for (int right = -1; right <= 1; right++)
            for (int up = -1; up <= 1; up++)
                for (PostDesign other : squares.getOrDefault(square(post, right, up), List.of())) {
                    Length apart = post.post().at().distanceTo(other.post().at());
                    boolean counts = !other.id().equals(post.id())
                            && !apart.isZero()
                            && apart.inches()
                                    < NearFooting.FAR_WIDTHS * work.width().inches();
                    if (!counts) continue;
                    double factor = NearFooting.factor(apart, work.width(), inLine(post, other, work));
                    share *= factor;
                    if (factor < least) {
                        least = factor;
                        left = new Left(share, other.id(), apart);
                    }
                }
        return new Left(share, left.nearest(), left.apart());
    }

    /** cos^2 between the way the post is tipped and the line to the other one. */
    private static double inLine(PostDesign post, PostDesign other, LateralWork work) {
        BaseAction action = work.worst().action();
        double along = action.momentAlong().poundInches();
        double across = action.momentAcross().poundInches();
        double size = along * along + across * across;
        if (size == 0) return 0;
        Direction line = Direction.from(post.post().at(), other.post().at());
        Direction facing = post.post().facing();
        double forward = line.east() * facing.east() + line.north() * facing.north();
        double aside = line.north() * facing.east() - line.east() * facing.north();
        double cos = Math.abs(along * forward) + Math.abs(across * aside);
        return Math.min(1, cos * cos / size);
    }

    private static LateralWork with(LateralWork work, double share) {
        return new LateralWork(
                work.worst(),
                new LateralSoil(work.soil().perFoot().times(share), work.soil().looseTop()),
                work.doubled(),
                work.width(),
                work.slab());
    }

    private Finding finding(PostDesign post, DepthNeed need, Left left, Length needed) {
        String message = "Footing F" + post.id().substring(1) + " stands " + display.length(left.apart()) + " from F"
                + left.nearest().substring(1) + ": wind pushes both into the ground between them, of which "
                + DecimalText.fixed(left.share(), 2) + " is left; with that it must be " + display.length(needed)
                + " deep and is dug " + display.length(post.depth()) + ".";
        return Checked.of(
                "footing.near",
                need.binds() ? Severity.MUST_FIX : Severity.CAUTION,
                post.id(),
                message,
                Basis.fromMemory("Reese and Van Impe, reduction of lateral soil beside another pier"),
                Measure.demand(needed.inches(), post.depth().inches(), "in"));
    }
}
