package plumbleaf.engine.wind;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Speed;

/**
 * Wind on a straight stretch of fence, every case the standard asks for: uniform, and in strips from either end.
 * Source: ASCE 7-16 29.3.1 and Figure 29.3-1; 29.4 and Table 29.4-2 for open screens; 29.7 for the floor. Check: WallWindCheck.
 *
 * @param cases in the order A, C-start, C-end; or open alone
 */
public record WallWind(WallStretch stretch, List<WindCase> cases) {
    /** ASCE 7-16 29.7: least pressure on the whole area of the structure, strength level. */
    static final double LEAST_PSF = 16;

    public WallWind {
        cases = List.copyOf(cases);
    }

    /** Design wind, with the least pressure the standard allows on the whole face. */
    public static WallWind of(SiteWind site, WallStretch stretch, WindTables tables) {
        if (!stretch.screen().isWall()) {
            Pressure floored = stretch.screen().openPressure(site, stretch.top(), tables);
            double least = LEAST_PSF
                    * stretch.screen().solidShare()
                    / (VelocityPressure.at(site, stretch.top(), tables).psf()
                            * VelocityPressure.gustAndDirection(site));
            double onGross = Math.max(least, stretch.screen().openOnGross(site, stretch.top(), tables));
            return new WallWind(stretch, List.of(uniform("open", stretch, floored.psf(), onGross)));
        }
        WallWind plain = plain(site, stretch, tables);
        return new WallWind(
                stretch,
                plain.cases.stream().map(wind -> floored(wind, stretch)).toList());
    }

    /** A gust of any speed, without the floor: what a service gust or a rated gust brings. It scales with the square of the speed. */
    public static WallWind gust(SiteWind site, Speed speed, WallStretch stretch, WindTables tables) {
        SiteWind gusty =
                new SiteWind(speed, site.exposure(), site.edition(), site.risk(), site.topographic(), site.elevation());
        return plain(gusty, stretch, tables);
    }

    private static WallWind plain(SiteWind site, WallStretch stretch, WindTables tables) {
        if (!stretch.screen().isWall()) {
            Pressure pressure = stretch.screen().openGust(site, stretch.top(), tables);
            double onGross = stretch.screen().openOnGross(site, stretch.top(), tables);
            return new WallWind(stretch, List.of(uniform("open", stretch, pressure.psf(), onGross)));
        }
        WallCoefficients table = new WallCoefficients(tables);
        double perCoefficient = VelocityPressure.at(site, stretch.top(), tables).psf()
                * VelocityPressure.gustAndDirection(site)
                * stretch.screen().openingsFactor();
        List<WindCase> cases = new ArrayList<>();
        double uniform = table.uniform(stretch.heightRatio(), stretch.aspect());
        double openings = stretch.screen().openingsFactor();
        cases.add(uniform("A", stretch, perCoefficient * uniform, openings * uniform));
        if (stretch.aspect() >= WallCoefficients.CASE_C_FROM) {
            cases.add(new WindCase("C-start", strips(table, stretch, perCoefficient)));
            cases.add(new WindCase("C-end", mirrored(strips(table, stretch.turnedRound(), perCoefficient), stretch)));
        }
        return new WallWind(stretch, cases);
    }

    private static WindCase uniform(String name, WallStretch stretch, double psf, double coefficient) {
        return new WindCase(
                name, List.of(new PressureStrip(Length.ZERO, stretch.length(), Pressure.psf(psf), coefficient)));
    }

    private static List<PressureStrip> strips(WallCoefficients table, WallStretch stretch, double perCoefficient) {
        double sIn = stretch.surface().inches();
        double returnRatio = stretch.returnAtStart().inches() / sIn;
        List<PressureStrip> strips = new ArrayList<>();
        for (EndStrip strip : table.strips(stretch.heightRatio(), stretch.aspect(), returnRatio)) {
            strips.add(new PressureStrip(
                    Length.inches(strip.from() * sIn),
                    Length.inches(strip.to() * sIn),
                    Pressure.psf(perCoefficient * strip.coefficient()),
                    stretch.screen().openingsFactor() * strip.coefficient()));
        }
        return strips;
    }

    private static List<PressureStrip> mirrored(List<PressureStrip> strips, WallStretch stretch) {
        double lengthIn = stretch.length().inches();
        List<PressureStrip> turned = new ArrayList<>();
        for (int at = strips.size() - 1; at >= 0; at--) {
            PressureStrip strip = strips.get(at);
            turned.add(new PressureStrip(
                    Length.inches(Math.max(0, lengthIn - strip.to().inches())),
                    Length.inches(Math.max(0, lengthIn - strip.from().inches())),
                    strip.pressure(),
                    strip.coefficient()));
        }
        return turned;
    }

    /** The floor is on the whole area: a case whose sum is less is raised in all its strips alike. */
    private static WindCase floored(WindCase wind, WallStretch stretch) {
        double sum = wind.sumPsfFt(Length.ZERO, stretch.length());
        double least = LEAST_PSF * stretch.length().inFeet();
        return sum < least ? wind.times(least / sum) : wind;
    }

    /**
     * The worst case on the part between two stations: force, its height, the mean pressure. The strips are integrated, so an end post gets what its own
     * half bay gets.
     */
    public TributaryWind over(Length from, Length to) {
        WindCase worst = cases.get(0);
        double sum = worst.sumPsfFt(from, to);
        for (WindCase wind : cases) {
            double here = wind.sumPsfFt(from, to);
            if (here > sum) {
                worst = wind;
                sum = here;
            }
        }
        double widthFt = Math.max(0, to.inFeet() - from.inFeet());
        return new TributaryWind(
                Force.pounds(sum * stretch.surface().inFeet()),
                stretch.resultantHeight(),
                Pressure.psf(widthFt > 0 ? sum / widthFt : 0),
                worst.name(),
                widthFt > 0 ? worst.sumCoefficientFt(from, to) / widthFt : 0,
                Area.squareFeet(widthFt * stretch.surface().inFeet()));
    }

    /** The moment about ground line that {@link #over} has, in lb-in, without all else it tells: what a search for posts asks millions of times. */
    double momentOver(Length from, Length to) {
        double most = 0;
        for (WindCase wind : cases) most = Math.max(most, wind.sumPsfFt(from, to));
        return most * stretch.surface().inFeet() * stretch.resultantHeight().inches();
    }
}
