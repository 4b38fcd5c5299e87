package plumbleaf.engine.gate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.SurfaceFacet;
import plumbleaf.engine.ground.SurfacePiece;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Ground that notes what it was asked and what it answered. What was worked out on it holds on any other ground that answers the same: a shot changed at the far
 * end of a yard leaves a gate as it is.
 */
public final class TracedGround implements GroundUnder {
    private record Around(PlanPoint pin, Length leafRadius, Length cover) {}

    private record Later(PlanPoint from, PlanPoint to) {}

    private record Doubts(String part, PlanPoint pin, Length leafRadius, List<PlanPoint> used) {}

    private final GroundUnder ground;
    private final Map<PlanPoint, Offset> elevations = new LinkedHashMap<>();
    private final Map<Later, Length> later = new LinkedHashMap<>();
    private final Map<Around, List<SurfaceFacet>> around = new LinkedHashMap<>();
    private final Map<Later, List<SurfacePiece>> walks = new LinkedHashMap<>();
    private final Map<Doubts, List<Finding>> doubts = new LinkedHashMap<>();

    public TracedGround(GroundUnder ground) {
        this.ground = ground;
    }

    /** Whether another ground answers all that was asked of this one so far in the same way. */
    public boolean isAnsweredAlikeBy(GroundUnder other) {
        return elevations.entrySet().stream()
                        .allMatch(asked -> other.elevation(asked.getKey()).equals(asked.getValue()))
                && later.entrySet().stream()
                        .allMatch(asked -> other.laterRise(
                                        asked.getKey().from(), asked.getKey().to())
                                .equals(asked.getValue()))
                && around.entrySet().stream().allMatch(asked -> {
                    Around at = asked.getKey();
                    return other.around(at.pin(), at.leafRadius(), at.cover()).equals(asked.getValue());
                })
                && walks.entrySet().stream()
                        .allMatch(asked -> other.along(
                                        asked.getKey().from(), asked.getKey().to())
                                .equals(asked.getValue()))
                && doubts.entrySet().stream().allMatch(asked -> {
                    Doubts of = asked.getKey();
                    return other.doubts(of.part(), of.pin(), of.leafRadius(), of.used())
                            .equals(asked.getValue());
                });
    }

    @Override
    public Offset elevation(PlanPoint onTheLine) {
        return elevations.computeIfAbsent(onTheLine, ground::elevation);
    }

    @Override
    public List<SurfaceFacet> around(PlanPoint pin, Length leafRadius, Length cover) {
        return around.computeIfAbsent(
                new Around(pin, leafRadius, cover), at -> ground.around(at.pin(), at.leafRadius(), at.cover()));
    }

    @Override
    public List<SurfacePiece> along(PlanPoint from, PlanPoint to) {
        return walks.computeIfAbsent(new Later(from, to), at -> ground.along(at.from(), at.to()));
    }

    @Override
    public Length laterRise(PlanPoint from, PlanPoint to) {
        return later.computeIfAbsent(new Later(from, to), at -> ground.laterRise(at.from(), at.to()));
    }

    @Override
    public List<Finding> doubts(String part, PlanPoint pin, Length leafRadius, List<PlanPoint> used) {
        return doubts.computeIfAbsent(
                new Doubts(part, pin, leafRadius, List.copyOf(used)),
                of -> ground.doubts(of.part(), of.pin(), of.leafRadius(), of.used()));
    }
}
