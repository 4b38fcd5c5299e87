package plumbleaf.engine.frame;

import plumbleaf.engine.quantity.DecimalText;

/** Three components along the global axes: a direction, an arm in inches, a force in pounds or a moment in pound-inches. */
public record Vector(double x, double y, double z) {
    public static final Vector ZERO = new Vector(0, 0, 0);
    public static final Vector X = new Vector(1, 0, 0);
    public static final Vector Y = new Vector(0, 1, 0);
    public static final Vector Z = new Vector(0, 0, 1);

    public Vector {
        if (!finite(x) || !finite(y) || !finite(z))
            throw new IllegalArgumentException("Vector must have three finite numbers");
        x = x + 0.0;
        y = y + 0.0;
        z = z + 0.0;
    }

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    public Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    public Vector negated() {
        return times(-1);
    }

    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    public boolean isZero() {
        return x == 0 && y == 0 && z == 0;
    }

    /** The same direction, one long. */
    public Vector unit() {
        double length = length();
        if (length == 0) throw new IllegalArgumentException("A vector of no length has no direction");
        return times(1 / length);
    }

    /** {@code (1, 0, -2.5)}, for messages. */
    public String text() {
        return "(" + DecimalText.shortest(x) + ", " + DecimalText.shortest(y) + ", " + DecimalText.shortest(z) + ")";
    }

    private static boolean finite(double value) {
        return Math.abs(value) <= Double.MAX_VALUE;
    }
}
