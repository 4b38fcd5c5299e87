package plumbleaf.engine.frame;

import plumbleaf.engine.quantity.DecimalText;

/**
 * Six springs at one point between two nodes, in their own axes: a hinge. Rigid arms join the point to both nodes, so a link between
 * nodes apart stays in balance. A stiffness of zero is a release.
 *
 * @param atIn where the springs are
 * @param xAxis the springs' x; their y is the part of {@code yAxis} square to it
 * @param yAxis any vector with a part towards the springs' y
 * @param uxLbPerIn along the springs' x, and so on
 * @param rxLbInPerRad about the springs' x, and so on
 */
public record Link(
        String id,
        String from,
        String to,
        Vector atIn,
        Vector xAxis,
        Vector yAxis,
        double uxLbPerIn,
        double uyLbPerIn,
        double uzLbPerIn,
        double rxLbInPerRad,
        double ryLbInPerRad,
        double rzLbInPerRad) {
    /** Stiff enough to be rigid beside any tube (a 1 in. square steel bar 30 in. long is a hundredth of it), soft enough to keep ten digits. */
    public static final double RIGID_LB_PER_IN = 1e8;

    /** As {@link #RIGID_LB_PER_IN}, for turning. */
    public static final double RIGID_LB_IN_PER_RAD = 1e10;

    public Link {
        if (id.isEmpty()) throw new IllegalArgumentException("A link needs a name");
        if (from.equals(to)) throw new IllegalArgumentException("Link " + id + ": joins node " + from + " to itself");
        notNegative(id, uxLbPerIn);
        notNegative(id, uyLbPerIn);
        notNegative(id, uzLbPerIn);
        notNegative(id, rxLbInPerRad);
        notNegative(id, ryLbInPerRad);
        notNegative(id, rzLbInPerRad);
        if (!(xAxis.cross(yAxis).length() > 1e-9 * xAxis.length() * yAxis.length()))
            throw new IllegalArgumentException("Link " + id + ": its two axes have the same direction");
    }

    double stiffness(int dof) {
        return switch (dof) {
            case 0 -> uxLbPerIn;
            case 1 -> uyLbPerIn;
            case 2 -> uzLbPerIn;
            case 3 -> rxLbInPerRad;
            case 4 -> ryLbInPerRad;
            default -> rzLbInPerRad;
        };
    }

    private static void notNegative(String id, double value) {
        if (!(value >= 0 && value <= Double.MAX_VALUE))
            throw new IllegalArgumentException(
                    "Link " + id + ": a stiffness must be 0 or more, was " + DecimalText.shortest(value));
    }
}
