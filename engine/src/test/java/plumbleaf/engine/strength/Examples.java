package plumbleaf.engine.strength;

import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodGrade;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.engine.section.TubeProperties;

/** Sections and woods for tests. */
final class Examples {
    static final WoodSpecies CEDAR = new WoodSpecies(
            "western_redcedar",
            "western redcedar",
            0.36,
            Moisture.percent(22),
            5,
            2.4,
            0.00234,
            new WoodGrade(
                    "western cedars No. 2",
                    Stress.psi(700),
                    Stress.psi(425),
                    Stress.psi(155),
                    Stress.psi(425),
                    Stress.psi(650),
                    Stress.psi(1_000_000),
                    Stress.psi(370_000),
                    false),
            "NDS Supplement 2018 Table 4A",
            "memory");

    private Examples() {}

    static Section pipe(double odIn, double wallIn) {
        return section(
                Shape.ROUND,
                odIn,
                wallIn,
                TubeProperties.round(Length.inches(odIn), Length.inches(wallIn)),
                "looked-up");
    }

    static Section square(double sizeIn, double wallIn, String yieldConfidence) {
        Length size = Length.inches(sizeIn);
        return section(
                Shape.SQUARE,
                sizeIn,
                wallIn,
                TubeProperties.rectangular(size, size, Length.inches(wallIn)),
                yieldConfidence);
    }

    private static Section section(
            Shape shape, double sizeIn, double wallIn, TubeProperties made, String yieldConfidence) {
        Length wall = Length.inches(wallIn);
        Length size = Length.inches(sizeIn);
        return new Section(
                "EXAMPLE",
                "tube",
                "example tube",
                shape,
                size,
                size,
                wall,
                wall,
                wall.times(0.93),
                Force.pounds(3),
                made.areaIn2(),
                made.ixIn4(),
                made.sxIn3(),
                made.zxIn3(),
                made.iyIn4(),
                made.syIn3(),
                made.zyIn3(),
                made.jIn4(),
                Stress.ksi(36),
                Stress.ksi(58),
                yieldConfidence,
                "example",
                "computed");
    }
}
