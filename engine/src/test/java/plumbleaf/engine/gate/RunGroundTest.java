package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Benchmark;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.GroundBook;
import plumbleaf.engine.ground.LaterGround;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.ground.Shot;
import plumbleaf.engine.ground.ShotHeight;
import plumbleaf.engine.ground.ShotPlace;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/** A gate at station 18 ft of a run to the east, on ground shot at its feet and at the leaf's end. */
class RunGroundTest {
    private static final RunLine RUN =
            new RunLine("R1", new PlanLine(PlanPoint.ORIGIN, List.of(Direction.EAST), List.of(Length.feet(45))), true);

    private static GatePlan plan(List<Shot> shots, List<LaterGround> later) {
        GroundBook book = new GroundBook(new Benchmark("nail", Offset.ZERO), List.of(), shots, List.of(), later);
        RunGround ground = new RunGround(Ground.of(book, List.of(RUN)), RUN, Slope.ZERO);
        return Gates.plan(GateSamples.ask(
                GateSamples.gate(
                        GateSamples.swing(new Hand(Side.LEFT, SwingWay.IN), 90),
                        GateSamples.leaf(new LeafShape.Raked(), 3),
                        List.of()),
                GateSamples.opening(Direction.EAST, Side.RIGHT),
                GateSamples.parts(new Cladding.Open(), Joint.MITERED, 1),
                ground));
    }

    private static Shot shot(String id, double feet, double insideFeet, double elevationIn) {
        return new Shot(
                id,
                new ShotPlace.OnRun("R1", Length.feet(feet), Offset.feet(insideFeet)),
                new ShotHeight.Elevation(Offset.inches(elevationIn)),
                "");
    }

    private static List<Shot> onTheLine() {
        return new ArrayList<>(
                List.of(shot("S1", 0, 0, 0), shot("S2", 18, 0, 0), shot("S3", 22, 0, 0), shot("S4", 45, 0, 0)));
    }

    /** Level on the line, 2 in. up 4-1/2 ft behind it: the leaf at 90 degrees stands over 2 x 47 / 54 in. of rise. */
    @Test
    void theGroundBesideTheLineIsThatOfTheShots() {
        List<Shot> shots = onTheLine();
        shots.add(shot("S5", 16, 4.5, 2));
        shots.add(shot("S6", 24, 4.5, 2));
        GatePlan plan = plan(shots, List.of());
        assertThat(plan.swings().get(0).least().clear().inches()).isCloseTo(3 - 2 * 47 / 54.0, within(1e-9));
        assertThat(plan.findings()).extracting(Finding::id).noneMatch(id -> id.startsWith("ground."));
    }

    @Test
    void groundCarriedOnBeyondTheShotsIsNeverSilent() {
        List<Shot> shots = onTheLine();
        shots.add(shot("S5", 18, 1, 0.5));
        GatePlan plan = plan(shots, List.of());
        assertThat(plan.findings()).extracting(Finding::id).anyMatch(id -> id.startsWith("ground."));
    }

    @Test
    void groundThatWillRiseTakesItOffTheRunningClearance() {
        List<Shot> shots = onTheLine();
        shots.add(shot("S5", 16, 5, 0));
        shots.add(shot("S6", 24, 5, 0));
        List<LaterGround> pavers =
                List.of(new LaterGround("R1", Length.feet(17), Length.feet(30), Length.inches(2.25), "pavers"));
        Swing swing = plan(shots, pavers).swings().get(0);
        assertThat(swing.least().clear().inches()).isCloseTo(3, within(1e-9));
        assertThat(swing.running().clear().inches()).isCloseTo(0.75, within(1e-9));
    }
}
