package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Gravity;

/** Adds up a leaf: weight, centre of gravity and inertia about the pin axis. */
final class LeafWeights {
    private double pounds;
    private double rPounds;
    private double nPounds;
    private double zPounds;
    private double inertiaLbIn2;

    private LeafWeights() {}

    static LeafWeight of(List<Member> members, Infill infill, List<Fitting> fittings) {
        LeafWeights sum = new LeafWeights();
        double frame = 0;
        for (Member member : members) {
            sum.line(member.weight(), member.from(), member.to());
            frame += member.weight().pounds();
        }
        double hardware = 0;
        for (Fitting fitting : fittings) {
            sum.line(fitting.weight(), fitting.at(), fitting.at());
            hardware += fitting.weight().pounds();
        }
        double dryWood = 0;
        for (Nailer nailer : infill.nailers()) {
            double half = nailer.upright()
                    ? 0
                    : nailer.length().inches()
                            / 2
                            * StrictMath.cos(nailer.endFromSquare().radians());
            Place middle = nailer.middle();
            sum.line(
                    nailer.wet(),
                    moved(middle, -half, middle.z().inches()),
                    moved(middle, half, middle.z().inches()));
            dryWood += nailer.dry().pounds();
        }
        for (Picket picket : infill.pickets()) {
            double z = picket.middle().inches();
            double r = picket.r().inches();
            Place near = Place.at(r, picket.n().inches(), z);
            Place far = Place.at(r + picket.width().inches(), picket.n().inches(), z);
            sum.line(picket.wet(), near, far);
            dryWood += picket.dry().pounds();
        }
        for (LeafTrim board : infill.trim()) {
            List<Place> ends = board.corners();
            Place middle = board.middle();
            sum.line(
                    board.wet(),
                    Place.at(
                            ends.get(0).r().inches(),
                            middle.n().inches(),
                            middle.z().inches()),
                    Place.at(
                            ends.get(1).r().inches(),
                            middle.n().inches(),
                            middle.z().inches()));
            dryWood += board.dry().pounds();
        }
        for (Panel panel : infill.panels()) {
            sum.panel(panel);
            dryWood += panel.weight().pounds();
        }
        return new LeafWeight(
                Force.pounds(frame),
                Force.pounds(hardware),
                Force.pounds(sum.pounds),
                Force.pounds(frame + hardware + dryWood),
                Place.at(sum.rPounds / sum.pounds, sum.nPounds / sum.pounds, sum.zPounds / sum.pounds),
                sum.inertiaLbIn2 / Gravity.IN_PER_S2);
    }

    /** A weight spread evenly along a straight line: second moment about the axis {@code W ((r1 r1 + r1 r2 + r2 r2) / 3 + n n)}. */
    private void line(Force weight, Place from, Place to) {
        double w = weight.pounds();
        double r1 = from.r().inches();
        double r2 = to.r().inches();
        double n = (from.n().inches() + to.n().inches()) / 2;
        pounds += w;
        rPounds += w * (r1 + r2) / 2;
        nPounds += w * n;
        zPounds += w * (from.z().inches() + to.z().inches()) / 2;
        inertiaLbIn2 += w * ((r1 * r1 + r1 * r2 + r2 * r2) / 3 + n * n);
    }

    /** A panel whose weight lies evenly on its area, by Simpson's rule across its width, which is exact for straight edges. */
    private void panel(Panel panel) {
        double from = panel.corners().get(0).r().inches();
        double to = panel.corners().get(1).r().inches();
        double whole = (panel.heightIn(0) + panel.heightIn(1)) / 2;
        double[] weights = {1 / 6.0, 4 / 6.0, 1 / 6.0};
        for (int i = 0; i < 3; i++) {
            double share = i / 2.0;
            double r = from + share * (to - from);
            Place at = Place.at(r, 0, (panel.bottomIn(share) + panel.topIn(share)) / 2);
            line(Force.pounds(panel.weight().pounds() * weights[i] * panel.heightIn(share) / whole), at, at);
        }
    }

    private static Place moved(Place place, double byR, double zIn) {
        return Place.at(place.r().inches() + byR, place.n().inches(), zIn);
    }
}
