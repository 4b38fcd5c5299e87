package plumbleaf.engine.strength;

import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Stress;

/**
 * A sheet in an opening of a frame, held along its edges and free to turn there, bent by wind: Navier's double series for a simply supported plate. The pull that a
 * bowed sheet finds between stiff edges is left out: a frame of tube gives way to it. Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed.,
 * article 28 and Table 8, from memory. Check: SheetBendingTest.
 *
 * @param thickness of the sheet
 * @param across one side of the opening
 * @param up the other
 */
public record SheetBending(Length thickness, Length across, Length up) {
    /** The least yield that structural sheet is commonly ordered with. Source: ASTM A1008 SS grade 33, from memory. */
    private static final Stress YIELD = Stress.ksi(33);

    /** Poisson's ratio of steel. Source: AISC 360-22 commentary, from memory. */
    private static final double POISSON = 0.3;

    /** {@code Mn = Fy Z <= 1.6 Fy S}, Z of a flat bar 1.5 S. Source: AISC 360-22 F11. */
    private static final double PLASTIC = 1.5;

    /** Odd waves each way; the last ones change the moment by less than a thousandth of it. */
    private static final int WAVES = 99;

    /** Stress at the middle of the sheet, in its shorter way. */
    public Stress stress(Pressure wind) {
        double t = thickness.inches();
        return Stress.psi(6 * momentFactor() * wind.inPsi() * shorterIn() * shorterIn() / (t * t));
    }

    /** Share of what it may carry in bending, {@code Fy 1.5 / 1.67}. */
    public double ratio(Pressure wind) {
        return stress(wind).psi() * TubeStrength.SAFETY / (PLASTIC * YIELD.psi());
    }

    /** How far its middle goes while it only bends; a sheet that goes farther than its own thickness begins to hang in its edges. */
    public Length bow(Pressure wind) {
        double t = thickness.inches();
        double stiffness = Steel.ELASTIC_MODULUS.psi() * t * t * t / (12 * (1 - POISSON * POISSON));
        double b = shorterIn();
        return Length.inches(bowFactor() * wind.inPsi() * b * b * b * b / stiffness);
    }

    /** {@code M / (p b2)}, b the shorter side. */
    double momentFactor() {
        double longer = longerIn() / shorterIn();
        return sum((along, over) -> (over * over + POISSON * along * along / (longer * longer)) * Math.PI * Math.PI);
    }

    /** {@code w D / (p b4)}. */
    double bowFactor() {
        return sum((along, over) -> 1);
    }

    private interface Term {
        double of(int along, int over);
    }

    /** The series at the middle of the sheet, on sides of {@code longer / shorter} and one. */
    private double sum(Term term) {
        double longer = longerIn() / shorterIn();
        double sum = 0;
        for (int along = 1; along <= WAVES; along += 2) {
            for (int over = 1; over <= WAVES; over += 2) {
                double sign = (along + over) / 2 % 2 == 1 ? 1 : -1;
                double wave = along * along / (longer * longer) + over * over;
                sum += sign * term.of(along, over) / (along * over * wave * wave);
            }
        }
        return 16 * sum / StrictMath.pow(Math.PI, 6);
    }

    private double shorterIn() {
        return Math.min(across.inches(), up.inches());
    }

    private double longerIn() {
        return Math.max(across.inches(), up.inches());
    }
}
