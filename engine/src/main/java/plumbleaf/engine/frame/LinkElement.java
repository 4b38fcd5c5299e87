package plumbleaf.engine.frame;

/** The workings of one link: how far its two sides have parted in its own axes, and what that costs the twelve directions of its nodes. */
final class LinkElement {
    final Link link;
    /** Six partings, {@code to} less {@code from}, for each of the twelve node directions. */
    private final double[][] parting = new double[6][12];

    private final double[][] nodeStiffness;

    LinkElement(Link link, Vector fromPlace, Vector toPlace) {
        this.link = link;
        Vector ex = link.xAxis().unit();
        Vector ey = link.yAxis().minus(ex.times(ex.dot(link.yAxis()))).unit();
        Vector[] axes = {ex, ey, ex.cross(ey)};
        for (int i = 0; i < 3; i++) {
            set(parting[i], 0, axes[i].negated());
            set(parting[i], 3, link.atIn().minus(fromPlace).cross(axes[i]).negated());
            set(parting[i], 6, axes[i]);
            set(parting[i], 9, link.atIn().minus(toPlace).cross(axes[i]));
            set(parting[3 + i], 3, axes[i].negated());
            set(parting[3 + i], 9, axes[i]);
        }
        this.nodeStiffness = made();
    }

    double[][] nodeStiffness() {
        return nodeStiffness;
    }

    private double[][] made() {
        double[][] k = new double[12][12];
        for (int i = 0; i < 12; i++)
            for (int j = 0; j < 12; j++)
                for (int d = 0; d < 6; d++) k[i][j] += parting[d][i] * link.stiffness(d) * parting[d][j];
        return k;
    }

    double[] partings(double[] nodes) {
        double[] apart = new double[6];
        for (int d = 0; d < 6; d++) for (int j = 0; j < 12; j++) apart[d] += parting[d][j] * nodes[j];
        return apart;
    }

    /** What the springs pull with, on {@code from}, in their own axes. */
    double[] forces(double[] nodes) {
        double[] forces = partings(nodes);
        for (int d = 0; d < 6; d++) forces[d] *= link.stiffness(d);
        return forces;
    }

    private static void set(double[] row, int at, Vector value) {
        row[at] = value.x();
        row[at + 1] = value.y();
        row[at + 2] = value.z();
    }
}
