package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/**
 * The saddle at the end of a round tube that butts against another: how deep it is cut, and the line of the cut laid flat, for a paper template wrapped
 * round the tube.
 *
 * @param end 0 for the member's first end, 1 for its last
 * @param fromSquare how far from square it meets the other tube
 * @param depth from the tips of its ears, where the long point lies, to the bottom of the saddle
 * @param template the cut, once round from the side where the corner with the other tube is closed most
 */
public record Cope(int end, Angle fromSquare, Length depth, List<Point> template) {
    /** Steps once round: every 15 degrees. */
    private static final int STEPS = 24;

    public Cope {
        template = List.copyOf(template);
    }

    /**
     * @param around along the girth of the outside
     * @param back from the tips of the ears
     */
    public record Point(Length around, Length back) {}

    /** The copes of a member against tubes of its own size; none where its ends are sawn. */
    public static List<Cope> of(Member member) {
        List<Cope> copes = new ArrayList<>();
        List<MemberEnd> ends = List.of(member.firstEnd(), member.lastEnd());
        for (int i = 0; i < 2; i++)
            if (ends.get(i).coped() && !ends.get(i).cuts().isEmpty())
                copes.add(cut(
                        i,
                        member.section().depth(),
                        member.section().depth(),
                        ends.get(i).cuts().get(0).fromSquare()));
        return copes;
    }

    /**
     * Two cylinders that meet, axes crossing: along the branch's axis from the crossing its wall reaches {@code s = (sqrt(R2 - r2 sin2 w) + r cos w sin a) / cos
     * a}, R the other tube, r the branch, w round the branch, a from square. Laid flat, w becomes {@code r w}. The outside surface is what is marked; the
     * inside edge of the wall touches a little later, which grinding takes off. Holds for r up to R.
     * Source: plane geometry of two cylinders. Check: CopeCheck.
     */
    public static Cope cut(int end, Length branch, Length other, Angle fromSquare) {
        double r = branch.inches() / 2;
        double big = other.inches() / 2;
        double a = Math.abs(fromSquare.radians());
        if (r > big + 1e-9) throw new IllegalArgumentException("A branch is no wider than what it is coped to");
        double[] reach = new double[STEPS + 1];
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i <= STEPS; i++) {
            double w = 2 * Math.PI * i / STEPS;
            double side = r * StrictMath.sin(w);
            reach[i] = (Math.sqrt(Math.max(0, big * big - side * side)) + r * StrictMath.cos(w) * StrictMath.sin(a))
                    / StrictMath.cos(a);
            least = Math.min(least, reach[i]);
            most = Math.max(most, reach[i]);
        }
        List<Point> template = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++)
            template.add(new Point(
                    Length.inches(2 * Math.PI * r * i / STEPS), Length.inches(Math.max(0, reach[i] - least))));
        return new Cope(end, Angle.radians(a), Length.inches(most - least), template);
    }
}
