package plumbleaf.engine.section;

import plumbleaf.engine.quantity.Length;

/**
 * Properties of a tube from its sizes, about its own axes: x bends in the depth.
 *
 * <p>Square and rectangular tubes have round corners: sharp ones overstate a 2 x 2 x 0.12 by about 7 % in I.
 */
public record TubeProperties(
        double areaIn2,
        double ixIn4,
        double sxIn3,
        double zxIn3,
        double iyIn4,
        double syIn3,
        double zyIn3,
        double jIn4) {

    /**
     * Round tube: {@code A = pi (D2 - d2)/4, I = pi (D4 - d4)/64, S = 2I/D, Z = (D3 - d3)/6, J = 2I}, d inside.
     * Source: closed form, any strength-of-materials text. Check: TubePropertiesCheck (S4, S7, P1 to P4).
     *
     * @param diameter outside
     * @param wall the wall that counts
     */
    public static TubeProperties round(Length diameter, Length wall) {
        double outIn = diameter.inches();
        double inIn = outIn - 2 * wall.inches();
        if (!(wall.inches() > 0 && inIn >= 0)) throw new IllegalArgumentException("Wall must fit into the diameter");
        double i = Math.PI * (outIn * outIn * outIn * outIn - inIn * inIn * inIn * inIn) / 64;
        double s = 2 * i / outIn;
        double z = (outIn * outIn * outIn - inIn * inIn * inIn) / 6;
        return new TubeProperties(Math.PI * (outIn * outIn - inIn * inIn) / 4, i, s, z, i, s, z, 2 * i);
    }

    /**
     * Square or rectangular tube with an outside corner radius of 2 t and an inside one of t.
     * Source: corner radii of the AISC Manual's tabulated properties (A500), which this reproduces to 1 %. Check: TubePropertiesCheck (P5 to P8).
     */
    public static TubeProperties rectangular(Length depth, Length width, Length wall) {
        return rectangular(depth, width, wall, wall.times(2));
    }

    /**
     * Square or rectangular tube with a corner radius of one's own; inside it is less by the wall, never below zero. J by Bredt's thin-wall
     * formula {@code 4 Am2 t / p} on the mid-line. Source: closed form; J as in AISC Manual Part 1. Check: TubePropertiesCheck (S5, S6).
     *
     * @param cornerRadius outside
     */
    public static TubeProperties rectangular(Length depth, Length width, Length wall, Length cornerRadius) {
        double h = depth.inches();
        double b = width.inches();
        double t = wall.inches();
        double r = cornerRadius.inches();
        if (!(t > 0 && 2 * t <= Math.min(h, b) && 2 * r <= Math.min(h, b)))
            throw new IllegalArgumentException("Wall and corner must fit into the tube");
        RoundedBlock out = new RoundedBlock(h, b, r);
        RoundedBlock in = new RoundedBlock(h - 2 * t, b - 2 * t, Math.max(0, r - t));
        double ix = out.inertia() - in.inertia();
        double iy = out.turned().inertia() - in.turned().inertia();
        double midRadius = Math.max(0, r - t / 2);
        double midArea = (b - t) * (h - t) - (4 - Math.PI) * midRadius * midRadius;
        double midLine = 2 * ((b - t) + (h - t)) - 2 * midRadius * (4 - Math.PI);
        return new TubeProperties(
                out.area() - in.area(),
                ix,
                2 * ix / h,
                out.plastic() - in.plastic(),
                iy,
                2 * iy / b,
                out.turned().plastic() - in.turned().plastic(),
                4 * midArea * midArea * t / midLine);
    }

    /** A full rectangle whose four corners are rounded off; sizes in inches. A corner loses a spandrel: the square less its quarter circle. */
    private record RoundedBlock(double h, double b, double r) {
        double area() {
            return b * h - 4 * spandrel();
        }

        /** About the axis at half the depth. */
        double inertia() {
            double fromArcCentre = r * r * r * r * (1.0 / 3 - Math.PI / 16);
            double own = fromArcCentre - spandrel() * fromCentreOfArc() * fromCentreOfArc();
            return b * h * h * h / 12 - 4 * (own + spandrel() * arm() * arm());
        }

        /** Plastic modulus: first moment of both halves. */
        double plastic() {
            return b * h * h / 4 - 4 * spandrel() * arm();
        }

        RoundedBlock turned() {
            return new RoundedBlock(b, h, r);
        }

        private double spandrel() {
            return (1 - Math.PI / 4) * r * r;
        }

        private double fromCentreOfArc() {
            return r == 0 ? 0 : r * r * r / 6 / spandrel();
        }

        private double arm() {
            return h / 2 - r + fromCentreOfArc();
        }
    }
}
