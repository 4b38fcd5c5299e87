package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.ground.SurfaceFacet;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Level ground to a distance north of a line that runs east, then a bank. */
record BankGround(double fromIn, double slope) implements SweptGround {
    private static final double FAR_IN = 1000;

    private Plane level() {
        return new Plane(PlanPoint.ORIGIN.at(Offset.ZERO), 0, 0);
    }

    private Plane bank() {
        return new Plane(PlanPoint.inches(0, fromIn).at(Offset.ZERO), 0, slope);
    }

    @Override
    public Offset elevation(PlanPoint onTheLine) {
        return Offset.inches(Math.max(0, slope * (onTheLine.yIn() - fromIn)));
    }

    @Override
    public List<SurfaceFacet> around(PlanPoint pin, Length leafRadius, Length cover) {
        return List.of(facet(-FAR_IN, fromIn, level()), facet(fromIn, FAR_IN, bank()));
    }

    private static SurfaceFacet facet(double southIn, double northIn, Plane plane) {
        List<PlanPoint> corners = List.of(
                PlanPoint.inches(-FAR_IN, southIn),
                PlanPoint.inches(FAR_IN, southIn),
                PlanPoint.inches(FAR_IN, northIn),
                PlanPoint.inches(-FAR_IN, northIn));
        return new SurfaceFacet(
                corners.stream().map(at -> at.at(plane.heightAt(at))).toList(), plane, false);
    }
}
