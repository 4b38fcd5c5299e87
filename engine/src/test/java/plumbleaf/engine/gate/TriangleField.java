package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.geometry.SpacePoint;
import plumbleaf.engine.ground.SurfaceFacet;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Rough ground for tests: a net of triangles over shaken grid points, from a seed. */
final class TriangleField implements SweptGround {
    private final List<SurfaceFacet> facets = new ArrayList<>();

    TriangleField(long seed, double halfSizeIn, int cells, double roughnessIn, double gradeEast, double gradeNorth) {
        Random random = new Random(seed);
        SpacePoint[][] points = new SpacePoint[cells + 1][cells + 1];
        double step = 2 * halfSizeIn / cells;
        for (int i = 0; i <= cells; i++) {
            for (int j = 0; j <= cells; j++) {
                boolean edge = i == 0 || j == 0 || i == cells || j == cells;
                double shake = edge ? 0 : 0.3 * step;
                double x = -halfSizeIn + i * step + shake * (2 * random.nextDouble() - 1);
                double y = -halfSizeIn + j * step + shake * (2 * random.nextDouble() - 1);
                double z = gradeEast * x + gradeNorth * y + roughnessIn * (2 * random.nextDouble() - 1);
                points[i][j] = SpacePoint.inches(x, y, z);
            }
        }
        for (int i = 0; i < cells; i++) {
            for (int j = 0; j < cells; j++) {
                add(points[i][j], points[i + 1][j], points[i + 1][j + 1]);
                add(points[i][j], points[i + 1][j + 1], points[i][j + 1]);
            }
        }
    }

    private void add(SpacePoint a, SpacePoint b, SpacePoint c) {
        facets.add(new SurfaceFacet(List.of(a, b, c), Plane.through(a, b, c).orElseThrow(), false));
    }

    @Override
    public Offset elevation(PlanPoint at) {
        for (SurfaceFacet facet : facets)
            if (inside(facet, at)) return facet.plane().heightAt(at);
        throw new IllegalArgumentException("Off the field");
    }

    @Override
    public List<SurfaceFacet> around(PlanPoint pin, Length leafRadius, Length cover) {
        return facets;
    }

    private static boolean inside(SurfaceFacet facet, PlanPoint at) {
        for (int i = 0; i < 3; i++) {
            PlanPoint a = facet.corners().get(i).plan();
            PlanPoint b = facet.corners().get((i + 1) % 3).plan();
            double cross = (b.xIn() - a.xIn()) * (at.yIn() - a.yIn()) - (b.yIn() - a.yIn()) * (at.xIn() - a.xIn());
            if (cross < -1e-9) return false;
        }
        return true;
    }
}
