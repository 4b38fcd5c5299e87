package plumbleaf.engine.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** A tape of 10 ft from one shot to the next, which lies 6 ft lower: along the ground that is 8 ft in plan. */
class TapeLayTest {
    private static Ground taped(TapeLay lay, double downFeet) {
        return Ground.of(
                Books.book(
                        Books.station("S1", 0, 0),
                        new Shot(
                                "S2",
                                new ShotPlace.After("R1", "S1", Length.feet(10), lay, Offset.ZERO),
                                new ShotHeight.Falls("S1", new Offset(12 * downFeet)),
                                "")),
                List.of(Books.east(20)));
    }

    private static double stationFt(Ground ground) {
        return ground.profile("R1").points().get(1).station().inches() / 12;
    }

    private static List<Finding> said(Ground ground) {
        return ground.findings().stream()
                .filter(finding -> finding.id().equals("ground.tape"))
                .toList();
    }

    @Test
    void alongTheGroundItIsReduced() {
        Ground ground = taped(TapeLay.SLOPE, 6);
        assertThat(stationFt(ground)).isCloseTo(8, within(1e-9));
        assertThat(said(ground)).hasSize(1).allMatch(finding -> finding.severity() == Severity.PASS);
    }

    @Test
    void heldLevelItIsNot() {
        assertThat(stationFt(taped(TapeLay.LEVEL, 6))).isCloseTo(10, within(1e-9));
        assertThat(said(taped(TapeLay.LEVEL, 6))).isEmpty();
    }

    @Test
    void whereNobodySaidAndItMattersItIsAsked() {
        Ground ground = taped(TapeLay.UNSAID, 6);
        assertThat(stationFt(ground)).isCloseTo(10, within(1e-9));
        assertThat(said(ground)).hasSize(1);
        assertThat(said(ground).get(0).message())
                .isEqualTo("How was the tape held from S1 to S2? Nobody said: it is taken as level. Had it lain along"
                        + " the ground, its 10' 0\" would be 8' 0\" in plan.");
        assertThat(said(ground).get(0).remedies())
                .extracting(remedy -> remedy.edit().orElseThrow())
                .containsExactly("ground.shots[S2].taped=level", "ground.shots[S2].taped=slope");
        assertThat(said(taped(TapeLay.UNSAID, 0.5))).isEmpty();
    }

    /** Over a wall, say: such a tape was held level, and nothing is asked. */
    @Test
    void aTapeShorterThanTheFallDidNotLieAlongTheGround() {
        assertThat(said(taped(TapeLay.SLOPE, 11)))
                .hasSize(1)
                .allMatch(finding -> finding.severity() == Severity.MUST_FIX);
        assertThat(said(taped(TapeLay.UNSAID, 11))).isEmpty();
    }
}
