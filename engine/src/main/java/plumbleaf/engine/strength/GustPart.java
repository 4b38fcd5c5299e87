package plumbleaf.engine.strength;

/**
 * One link of a build in the wind: all numbers in the same unit.
 *
 * @param link {@code post P3}, {@code footing F3}
 * @param standing what dead load takes of it
 * @param windAtSpeed strength-level wind demand at the speed asked about, no floor, no 0.6
 * @param allowable what it may carry in allowable-stress design
 * @param ultimate what it is expected to carry
 */
public record GustPart(String link, double standing, double windAtSpeed, double allowable, double ultimate) {
    /** Allowable-stress design takes 0.6 of strength-level wind. Source: ASCE 7-16 2.4.1. */
    private static final double ASD = 0.6;

    /** How many times the wind may grow until the allowable is reached. */
    double timesToAllowable() {
        return windAtSpeed > 0 ? Math.max(0, allowable - standing) / (ASD * windAtSpeed) : Double.MAX_VALUE;
    }

    double timesToUltimate() {
        return windAtSpeed > 0 ? Math.max(0, ultimate - standing) / windAtSpeed : Double.MAX_VALUE;
    }
}
