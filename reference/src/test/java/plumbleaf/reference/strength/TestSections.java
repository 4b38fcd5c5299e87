package plumbleaf.reference.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.engine.section.TubeProperties;

/** Sections of printed examples: by geometry, or with the printed property put in. */
final class TestSections {
    private TestSections() {}

    static Section round(double odIn, double wallIn, double fyKsi) {
        TubeProperties made = TubeProperties.round(Length.inches(odIn), Length.inches(wallIn));
        return section(Shape.ROUND, odIn, odIn, wallIn, fyKsi, made);
    }

    static Section tube(double depthIn, double widthIn, double wallIn, double fyKsi) {
        TubeProperties made =
                TubeProperties.rectangular(Length.inches(depthIn), Length.inches(widthIn), Length.inches(wallIn));
        return section(depthIn == widthIn ? Shape.SQUARE : Shape.RECTANGULAR, depthIn, widthIn, wallIn, fyKsi, made);
    }

    static Section section(
            Shape shape, double depthIn, double widthIn, double wallIn, double fyKsi, TubeProperties made) {
        return new Section(
                "EXAMPLE",
                "tube",
                "example",
                shape,
                Length.inches(depthIn),
                Length.inches(widthIn),
                Length.inches(wallIn),
                Length.inches(wallIn),
                Length.inches(wallIn),
                Force.pounds(1),
                made.areaIn2(),
                made.ixIn4(),
                made.sxIn3(),
                made.zxIn3(),
                made.iyIn4(),
                made.syIn3(),
                made.zyIn3(),
                made.jIn4(),
                Stress.ksi(fyKsi),
                Stress.ksi(fyKsi + 12),
                "looked-up",
                "example",
                "looked-up");
    }

    /** A symmetric section with area, inertia and moduli as printed; what is not printed follows from the sizes. */
    static TubeProperties printed(TubeProperties made, double areaIn2, double sIn3, double zIn3, double iIn4) {
        return new TubeProperties(areaIn2, iIn4, sIn3, zIn3, iIn4, sIn3, zIn3, made.jIn4());
    }
}
