package plumbleaf.engine.frame;

/**
 * Sums what acts on a member before a section, about that section and in the member's own axes. In plain numbers: it is asked for at thousands of places of
 * every gate.
 */
final class ForcesBefore {
    private final double atIn;
    private double fx;
    private double fy;
    private double fz;
    private double mx;
    private double my;
    private double mz;

    /** @param endForces on the start, as {@link Element#endForces} has them */
    ForcesBefore(double atIn, double[] endForces) {
        this.atIn = atIn;
        this.mx = endForces[3];
        this.my = endForces[4];
        this.mz = endForces[5];
        force(0, endForces[0], endForces[1], endForces[2]);
    }

    /** @param toIn so far of it acts before the section */
    void add(MemberLoads.Spread spread, double toIn) {
        double run = toIn - spread.fromIn();
        couple(spread.couplePerInchLb(), run);
        Vector perInch = spread.perInchLb();
        force((spread.fromIn() + toIn) / 2, perInch.x() * run, perInch.y() * run, perInch.z() * run);
    }

    void add(MemberLoads.Point point) {
        couple(point.momentLbIn(), 1);
        force(
                point.atIn(),
                point.forceLb().x(),
                point.forceLb().y(),
                point.forceLb().z());
    }

    private void couple(Vector couple, double times) {
        mx += couple.x() * times;
        my += couple.y() * times;
        mz += couple.z() * times;
    }

    /** A force with its moment about the section. */
    private void force(double fromIn, double x, double y, double z) {
        double arm = fromIn - atIn;
        fx += x;
        fy += y;
        fz += z;
        my -= arm * z;
        mz += arm * y;
    }

    /** What the part beyond the section does to the part before it. */
    Internal internal() {
        return new Internal(-fx, -fy, -fz, -mx, -my, -mz);
    }
}
