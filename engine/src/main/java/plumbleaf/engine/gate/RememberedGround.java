package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.SurfaceFacet;
import plumbleaf.engine.ground.SurfacePiece;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Ground that keeps the pieces it was last asked for: every build of a gate, and most of its remedies, swing over the same ones. Gives exactly what the
 * ground itself gives.
 */
public final class RememberedGround implements GroundUnder {
    /** Pin axes kept: both sides of an opening for a single leaf and for a pair, with room for what the remedies try. */
    private static final int KEPT = 16;

    private record Kept(PlanPoint pin, Length leafRadius, Length cover, List<SurfaceFacet> facets) {}

    private record Doubted(String part, PlanPoint pin, Length leafRadius, List<PlanPoint> used, List<Finding> doubts) {}

    private final GroundUnder ground;
    private final List<Doubted> doubted = new ArrayList<>();
    private final List<Kept> kept = new ArrayList<>();

    private RememberedGround(GroundUnder ground) {
        this.ground = ground;
    }

    /** The ground, remembering; one that remembers already stays as it is. */
    public static GroundUnder of(GroundUnder ground) {
        return ground instanceof RememberedGround ? ground : new RememberedGround(ground);
    }

    @Override
    public Offset elevation(PlanPoint onTheLine) {
        return ground.elevation(onTheLine);
    }

    @Override
    public List<SurfaceFacet> around(PlanPoint pin, Length leafRadius, Length cover) {
        for (Kept each : kept) {
            boolean same = each.pin.equals(pin) && each.leafRadius.equals(leafRadius) && each.cover.equals(cover);
            if (same) return each.facets;
        }
        List<SurfaceFacet> facets = ground.around(pin, leafRadius, cover);
        if (kept.size() == KEPT) kept.remove(0);
        kept.add(new Kept(pin, leafRadius, cover, facets));
        return facets;
    }

    @Override
    public List<SurfacePiece> along(PlanPoint from, PlanPoint to) {
        return ground.along(from, to);
    }

    @Override
    public Length laterRise(PlanPoint from, PlanPoint to) {
        return ground.laterRise(from, to);
    }

    @Override
    public List<Finding> doubts(String part, PlanPoint pin, Length leafRadius, List<PlanPoint> used) {
        for (Doubted each : doubted) {
            boolean same = each.part.equals(part)
                    && each.pin.equals(pin)
                    && each.leafRadius.equals(leafRadius)
                    && each.used.equals(used);
            if (same) return each.doubts;
        }
        List<Finding> doubts = ground.doubts(part, pin, leafRadius, used);
        if (doubted.size() == KEPT) doubted.remove(0);
        doubted.add(new Doubted(part, pin, leafRadius, List.copyOf(used), doubts));
        return doubts;
    }
}
