package plumbleaf.engine.line;

import java.util.List;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * How far from a post the next may stand where the bay is limited along the slope, since that is what a rail from stock reaches.
 */
final class SlopeReach {
    private SlopeReach() {}

    /**
     * The station where the chord of the ground first gets longer than the limit: {@code (t - s)^2 + (z(t) - z(s))^2 = M^2}. On one even grade g the level
     * length is {@code M / sqrt(1 + g^2)}. Good for ground flatter than 100 %, where a longer bay always has a longer chord. Check: SlopeBayCheck.
     *
     * @param fromIn s, the first post
     * @param limit M, longest bay along the slope, post centre to post centre
     */
    static double stationIn(Profile profile, double fromIn, Length limit) {
        double m = limit.inches();
        double zs = profile.elevationAt(new Offset(fromIn)).inches();
        List<ProfilePoint> ground = profile.between(new Offset(fromIn), new Offset(fromIn + m));
        for (int i = 1; i < ground.size(); i++) {
            double p = ground.get(i - 1).station().inches();
            double q = ground.get(i).station().inches();
            double zp = ground.get(i - 1).elevation().inches() - zs;
            double zq = ground.get(i).elevation().inches() - zs;
            double reached = (q - fromIn) * (q - fromIn) + zq * zq;
            if (reached < m * m || q <= p) continue;
            double grade = (zq - zp) / (q - p);
            double a = 1 + grade * grade;
            double b = (p - fromIn) + grade * zp;
            double c = (p - fromIn) * (p - fromIn) + zp * zp - m * m;
            return p + (-b + Math.sqrt(b * b - a * c)) / a;
        }
        return fromIn + m;
    }
}
