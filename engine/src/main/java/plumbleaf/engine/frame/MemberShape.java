package plumbleaf.engine.frame;

/** How the points of a member moved in one case. */
final class MemberShape {
    private final Element element;
    private final double[] endForces;
    private final MemberLoads loads;
    private final double[] own;
    private final double[] breaks;

    MemberShape(Element element, CaseState state, int index) {
        this.element = element;
        this.endForces = state.endForces.get(index);
        this.loads = state.loads.get(index);
        this.own = element.ownMovement(state.localMovements.get(index), loads);
        this.breaks = element.breaks(loads);
    }

    Motion motionAt(double atIn) {
        Stiffness s = element.member.stiffness();
        double along = own[0];
        double across = own[1] + own[5] * atIn;
        double up = own[2] - own[4] * atIn;
        double twist = own[3];
        double slopeY = own[4];
        double slopeZ = own[5];
        for (int i = 0; i + 1 < breaks.length && breaks[i] < atIn; i++) {
            double from = breaks[i];
            double to = Math.min(breaks[i + 1], atIn);
            double[] places = {from, (from + to) / 2, to};
            double[] weights = {(to - from) / 6, (to - from) * 4 / 6, (to - from) / 6};
            for (int p = 0; p < 3; p++) {
                Internal here = element.internalAt(places[p], endForces, loads, p == 0);
                double turnZ = weights[p] * here.mzLbIn() / (s.ePsi() * s.izIn4());
                double turnY = weights[p] * here.myLbIn() / (s.ePsi() * s.iyIn4());
                along += weights[p] * here.nLb() / (s.ePsi() * s.areaIn2());
                twist += weights[p] * here.tLbIn() / (s.gPsi() * s.jIn4());
                slopeZ += turnZ;
                slopeY += turnY;
                across += turnZ * (atIn - places[p]);
                up -= turnY * (atIn - places[p]);
            }
        }
        return new Motion(
                element.toGlobal(new Vector(along, across, up)), element.toGlobal(new Vector(twist, slopeY, slopeZ)));
    }
}
