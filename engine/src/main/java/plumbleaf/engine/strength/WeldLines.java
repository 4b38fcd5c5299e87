package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * Two like weld lines side by side, taken as lines of no width: down both sides of a plate, or above and below a tube.
 *
 * @param length L of each
 * @param apart b, between them
 */
public record WeldLines(Length length, Length apart) {
    /**
     * Greatest force on an inch, by the elastic vector method over the four ends: with A = 2 L, {@code I = L3/6} along the lines, {@code L b2/2} across them,
     * J their sum: off {@code N/A + Ma z/I + Mz y/(L b2/2)}, across {@code Fy/A + T z/J}, along {@code Fz/A + T y/J}, z = L/2, y = b/2, added as vectors with
     * their signs. Source: elastic method, welds as lines: Blodgett, Design of Welded Structures; AISC Manual part 8 (from memory). Check: WeldLinesCheck.
     *
     * @param off N, square to the plane of the lines, lb
     * @param across Fy, in their plane, square to them
     * @param along Fz, along them
     * @param twist T, in their plane, lb-in
     * @param tilt Ma, that lifts their ends
     * @param roll Mz, that lifts one line and presses the other
     */
    public Force perInch(double off, double across, double along, double twist, double tilt, double roll) {
        return Force.pounds(worst(off, across, along, twist, tilt, roll).whole());
    }

    /**
     * What an inch feels at one of the four ends, lb/in.
     *
     * @param end -1 or +1, which end of its line
     * @param line -1 or +1, which line
     */
    record Felt(int end, int line, double off, double across, double along) {
        double whole() {
            return Math.sqrt(off * off + across * across + along * along);
        }
    }

    /** Where an inch feels most. */
    Felt worst(double off, double across, double along, double twist, double tilt, double roll) {
        Felt worst = new Felt(-1, -1, 0, 0, 0);
        for (int end = -1; end <= 1; end += 2)
            for (int line = -1; line <= 1; line += 2) {
                double z = end * length.inches() / 2;
                double y = line * apart.inches() / 2;
                Felt here = new Felt(
                        end,
                        line,
                        off / areaIn() + tilt * z / inLineIn3() + roll * y / crosswiseIn3(),
                        across / areaIn() - twist * z / polarIn3(),
                        along / areaIn() + twist * y / polarIn3());
                if (here.whole() > worst.whole()) worst = here;
            }
        return worst;
    }

    double areaIn() {
        return 2 * length.inches();
    }

    /** I, along the lines. */
    double inLineIn3() {
        double l = length.inches();
        return l * l * l / 6;
    }

    double crosswiseIn3() {
        return length.inches() * apart.inches() * apart.inches() / 2;
    }

    double polarIn3() {
        return inLineIn3() + crosswiseIn3();
    }
}
