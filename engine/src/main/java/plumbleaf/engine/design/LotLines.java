package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.PropertyLine;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.rule.NearBuilding;
import plumbleaf.engine.rule.OverLine;
import plumbleaf.engine.rule.PlaceRules;
import plumbleaf.engine.rule.RuleTable;

/**
 * Runs against the lot lines they keep off: how near a face comes, and whether it goes over or stands beyond. A yard lies on the inside of its fence, so that a lot
 * line which a run goes along has to lie on the outside of it. Check: PlaceRulesCheck.
 */
final class LotLines {
    /** A run further than this beyond the set-back has nothing to do with the line. Judgement. */
    private static final Length BESIDE_LINE = Length.feet(10);

    /** A leg turned from the line by less than 30 degrees goes along it. Judgement. */
    private static final double PARALLEL = StrictMath.cos(StrictMath.toRadians(30));

    private final RuleTable rules;
    private final PropertyLine line;

    private LotLines(RuleTable rules, PropertyLine line) {
        this.rules = rules;
        this.line = line;
    }

    static List<Finding> of(Job job, Layout layout, RuleTable rules) {
        List<Finding> findings = new ArrayList<>();
        for (PropertyLine line : job.rules().propertyLines()) {
            findings.add(PlaceRules.vouched(line));
            for (Run run : job.runs()) findings.addAll(new LotLines(rules, line).of(run, layout.run(run.id())));
        }
        return findings;
    }

    /** Of a run that comes within a few yards of the line; its face is half a post off its centers. */
    private List<Finding> of(Run run, RunLayout laid) {
        List<PlanPoint> vertices = laid.line().line().vertices();
        double nearest = Double.POSITIVE_INFINITY;
        boolean beyond = false;
        for (int i = 0; i + 1 < vertices.size(); i++) {
            PlanPoint from = vertices.get(i);
            PlanPoint to = vertices.get(i + 1);
            double away = NearBuilding.toLine(from, to, line.points()).inches();
            nearest = Math.min(nearest, away);
            beyond |= isBeyond(run, from, to);
        }
        double half = 0;
        for (Post post : laid.posts()) half = Math.max(half, post.width().inches() / 2);
        Length face = Length.inches(Math.max(0, nearest - half));
        if (OverLine.goes(vertices, line.points())) return List.of(PlaceRules.overLine(run.id(), line));
        if (beyond) return List.of(PlaceRules.beyondLine(run.id(), line, face, rules));
        if (line.setback().isZero() && nearest < half)
            return List.of(PlaceRules.onLine(run.id(), line, Length.inches(half - nearest), rules));
        return face.compareTo(line.setback().plus(BESIDE_LINE)) <= 0
                ? List.of(PlaceRules.setback(run.id(), line, face, rules))
                : List.of();
    }

    /** Whether the piece of the lot line that a leg goes along, the nearest of several, lies on the yard's side of the leg. */
    private boolean isBeyond(Run run, PlanPoint from, PlanPoint to) {
        double nearest = BESIDE_LINE.inches();
        boolean inside = false;
        for (int i = 0; i + 1 < line.points().size(); i++) {
            PlanPoint one = line.points().get(i);
            PlanPoint other = line.points().get(i + 1);
            double away = NearBuilding.toLine(from, to, List.of(one, other)).inches();
            if (away > nearest || !goesAlong(from, to, one, other)) continue;
            double left = one.leftOf(from, to) + other.leftOf(from, to);
            nearest = away;
            inside = run.outside() == Side.RIGHT ? left > 0 : left < 0;
        }
        return inside;
    }

    /** Nearly parallel, and beside each other for half of the shorter at least: where a lot line jogs, the piece beyond the jog is another leg's. */
    private static boolean goesAlong(PlanPoint from, PlanPoint to, PlanPoint one, PlanPoint other) {
        double leg = from.distanceTo(to).inches();
        double piece = one.distanceTo(other).inches();
        if (leg == 0 || piece == 0) return false;
        double first = along(from, to, one) / leg;
        double last = along(from, to, other) / leg;
        if (Math.abs(last - first) / piece < PARALLEL) return false;
        double beside = Math.min(leg, Math.max(first, last)) - Math.max(0, Math.min(first, last));
        return beside >= Math.min(leg, piece) / 2;
    }

    private static double along(PlanPoint from, PlanPoint to, PlanPoint at) {
        return (to.xIn() - from.xIn()) * (at.xIn() - from.xIn()) + (to.yIn() - from.yIn()) * (at.yIn() - from.yIn());
    }
}
