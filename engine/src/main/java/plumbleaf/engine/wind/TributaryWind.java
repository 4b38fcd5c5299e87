package plumbleaf.engine.wind;

import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Pressure;

/**
 * Wind on the part of a fence that one post or one leaf carries, strength level.
 *
 * @param force resultant
 * @param height of the resultant above ground
 * @param mean pressure on the gross face of that part
 * @param windCase the case that governs
 * @param coefficient what q G is multiplied by, the mean over the part: not divided out of the pressure but summed beside it, so that each is a check of the other; zero where it is not known
 * @param face gross area of the part, by its length and height; zero where it is not known
 */
public record TributaryWind(Force force, Length height, Pressure mean, String windCase, double coefficient, Area face) {
    /** A wind that is given, and not worked out here. */
    public TributaryWind(Force force, Length height, Pressure mean, String windCase) {
        this(force, height, mean, windCase, 0, Area.ZERO);
    }

    /** Moment about ground line: {@code M = F z}. Check: WallWindCheck. */
    public Moment momentAtGrade() {
        return Moment.poundInches(force.pounds() * height.inches());
    }

    /**
     * With the wind on the part beside it: forces and moments add, and the mean pressure is that of both faces together.
     */
    public TributaryWind plus(TributaryWind other) {
        double pounds = force.pounds() + other.force.pounds();
        if (pounds <= 0) return this;
        double momentLbIn =
                momentAtGrade().poundInches() + other.momentAtGrade().poundInches();
        double areaFt2 = areaFt2() + other.areaFt2();
        return new TributaryWind(
                Force.pounds(pounds),
                Length.inches(momentLbIn / pounds),
                Pressure.psf(areaFt2 > 0 ? pounds / areaFt2 : 0),
                force.compareTo(other.force) >= 0 ? windCase : other.windCase,
                over(other),
                face.plus(other.face));
    }

    /** The coefficient over both faces. */
    private double over(TributaryWind other) {
        double area = face.squareInches() + other.face.squareInches();
        if (area <= 0) return 0;
        return (coefficient * face.squareInches() + other.coefficient * other.face.squareInches()) / area;
    }

    private double areaFt2() {
        return mean.psf() > 0 ? force.pounds() / mean.psf() : 0;
    }

    /** The same wind at another share, as speeds scale it. */
    public TributaryWind times(double factor) {
        return new TributaryWind(force.times(factor), height, mean.times(factor), windCase, coefficient * factor, face);
    }
}
