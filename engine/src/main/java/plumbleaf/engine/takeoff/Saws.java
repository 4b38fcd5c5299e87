package plumbleaf.engine.takeoff;

import plumbleaf.engine.bars.SawRules;

/** The rules of both saws. */
public record Saws(SawRules steel, SawRules wood) {
    private static final long INCH = 25_400_000;

    /** 1/8 in. kerf; 1/2 in. off the mill end of steel, none off wood; rests from 24 in. (steel) and 48 in. (wood) are kept. Common practice, no source. */
    public static final Saws USUAL =
            new Saws(new SawRules(INCH / 8, INCH / 2, 24 * INCH), new SawRules(INCH / 8, 0, 48 * INCH));

    SawRules of(BarNeed.Saw saw) {
        return saw == BarNeed.Saw.STEEL ? steel : wood;
    }
}
