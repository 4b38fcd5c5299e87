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
        double l = length.inches();
        double b = apart.inches();
        double inLine = l * l * l / 6;
        double crosswise = l * b * b / 2;
        double polar = inLine + crosswise;
        double most = 0;
        for (int end = -1; end <= 1; end += 2)
            for (int line = -1; line <= 1; line += 2) {
                double z = end * l / 2;
                double y = line * b / 2;
                double n = off / (2 * l) + tilt * z / inLine + roll * y / crosswise;
                double c = across / (2 * l) - twist * z / polar;
                double a = along / (2 * l) + twist * y / polar;
                most = Math.max(most, Math.sqrt(n * n + c * c + a * a));
            }
        return Force.pounds(most);
    }
}
