package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Existing;
import plumbleaf.engine.job.OldFence;
import plumbleaf.engine.job.Plug;
import plumbleaf.engine.job.PlugFate;
import plumbleaf.engine.material.Concrete;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * What comes out and is hauled off: old fences by the foot, the concrete that is pulled as cylinders {@code pi/4 D^2 L} at its density, and the loads it takes.
 * Source: geometry; 10 by 30 in. weighs 205 lb. Check: TornOutCheck.
 *
 * @param fence weight of posts, rails, boards and wire
 * @param treated of that, what is treated or painted and goes apart
 * @param plugs how many are pulled
 * @param concrete weight of those
 * @param left how many stay in the ground
 * @param loads of the truck, treated wood and concrete each on loads of their own
 */
public record TornOut(Force fence, Force treated, int plugs, Force concrete, int left, int loads) {
    public static TornOut of(Existing existing, Truck truck) {
        double fence = 0;
        double treated = 0;
        double concrete = 0;
        int plugs = 0;
        int left = 0;
        List<Plug> single = new ArrayList<>();
        for (Plug plug : existing.plugs()) if (plug.fate() == PlugFate.PULL) single.add(plug);
        for (OldFence old : existing.fences()) {
            double own = old.length().inFeet() * old.perFoot().pounds();
            fence += own;
            if (old.treated()) treated += own;
            plugs += old.pulled();
            concrete +=
                    old.pulled() * weight(old.plugDiameter(), old.plugDepth()).pounds();
            if (old.concrete()) left += old.posts() - old.pulled();
        }
        for (Plug plug : single)
            concrete += weight(plug.diameter(), plug.depth()).pounds();
        plugs += single.size();
        left += existing.plugs().size() - single.size();
        int loads = loads(truck, fence - treated) + loads(truck, treated) + loads(truck, concrete);
        return new TornOut(Force.pounds(fence), Force.pounds(treated), plugs, Force.pounds(concrete), left, loads);
    }

    /** Of a cylinder of concrete. */
    public static Force weight(Length diameter, Length depth) {
        double d = diameter.inFeet();
        return Force.pounds(Math.PI * d * d / 4 * depth.inFeet() * Concrete.DENSITY.pcf());
    }

    private static int loads(Truck truck, double pounds) {
        return pounds <= 0 ? 0 : truck.trips(Force.pounds(pounds));
    }

    public boolean isNothing() {
        return fence.isZero() && plugs == 0;
    }

    public Force all() {
        return fence.plus(concrete);
    }
}
