package plumbleaf.benchmarks;

import java.util.List;
import java.util.Locale;

/** Time against length on logarithmic axes: a mark a length, the fitted line, and the goal. */
final class ScalePicture {
    private static final double WIDE = 560;
    private static final double HIGH = 320;
    private static final double LEFT = 70;
    private static final double BELOW = 50;
    /** Powers of ten on the axes: miles, then seconds. */
    private static final int[] MILES = {-1, 2};

    private static final int[] SECONDS = {-3, 3};

    private ScalePicture() {}

    static String svg(List<Scale.Point> points) {
        StringBuilder out = new StringBuilder();
        out.append(text(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\""
                        + " font-family=\"sans-serif\" font-size=\"13\">\n",
                WIDE, HIGH));
        out.append("<title>Time to design a fence against its length</title>\n");
        out.append(text("<rect width=\"%.0f\" height=\"%.0f\" fill=\"#fff\"/>\n", WIDE, HIGH));
        for (int p = MILES[0]; p <= MILES[1]; p++) {
            out.append(line(x(power(p)), y(power(SECONDS[0])), x(power(p)), y(power(SECONDS[1])), "#ddd", 1));
            out.append(words(x(power(p)), HIGH - BELOW + 20, "middle", said(p) + " mi"));
        }
        for (int p = SECONDS[0]; p <= SECONDS[1]; p++) {
            out.append(line(x(power(MILES[0])), y(power(p)), x(power(MILES[1])), y(power(p)), "#ddd", 1));
            out.append(words(LEFT - 8, y(power(p)) + 4, "end", said(p) + " s"));
        }
        double slope = Scale.exponent(points);
        double middle = 0;
        for (Scale.Point p : points) middle += (Math.log(p.warmS()) - slope * Math.log(p.miles())) / points.size();
        double from = Math.exp(middle + slope * Math.log(power(MILES[0])));
        double to = Math.exp(middle + slope * Math.log(power(MILES[1])));
        out.append(line(x(power(MILES[0])), y(from), x(power(MILES[1])), y(to), "#2f6f4f", 2));
        for (Scale.Point p : points)
            out.append(
                    text("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\" fill=\"#2f6f4f\"/>\n", x(p.miles()), y(p.warmS())));
        out.append(text(
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"6\" fill=\"none\" stroke=\"#b04a2f\" stroke-width=\"2\"/>\n",
                x(10), y(1)));
        out.append(words(x(10) + 12, y(1) + 14, "start", "goal"));
        out.append(words(LEFT + 12, 24, "start", text("time grows with the length to the power %.2f", slope)));
        return out.append("</svg>\n").toString();
    }

    private static double power(int p) {
        return Math.pow(10, p);
    }

    private static String said(int p) {
        return p >= 0 ? "" + Math.round(power(p)) : text("%." + -p + "f", power(p));
    }

    private static double x(double miles) {
        return LEFT + (WIDE - LEFT - 30) * (Math.log10(miles) - MILES[0]) / (MILES[1] - MILES[0]);
    }

    private static double y(double seconds) {
        return HIGH - BELOW - (HIGH - BELOW - 12) * (Math.log10(seconds) - SECONDS[0]) / (SECONDS[1] - SECONDS[0]);
    }

    private static String line(double x1, double y1, double x2, double y2, String colour, double wide) {
        return text(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%.0f\"/>\n",
                x1, y1, x2, y2, colour, wide);
    }

    private static String words(double x, double y, String anchor, String words) {
        return text("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"#333\">%s</text>\n", x, y, anchor, words);
    }

    private static String text(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
