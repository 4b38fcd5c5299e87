package plumbleaf.reference.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * What a tape held along the ground loses in plan: 1.94 ft in 100 on a 20 % grade; and over a bend, piece by piece.
 *
 * Source: plane geometry, 100 - 100 / sqrt(1 + 0.2^2) = 1.942 ft.
 * Tolerance: the printed digit, 0.005 ft; 1e-9 in. on the closed form.
 */
class SlopeTapeCheck {
    @Test
    void aHundredFeetAlongTwentyPerCent() {
        Profile even = profile(0, 0, 3000, 600);
        Length level = even.levelLength(Length.ZERO, Length.feet(100));
        assertThat(100 - level.inFeet()).isCloseTo(1.94, within(0.005));
        assertThat(level.inches()).isCloseTo(1200 / Math.sqrt(1.04), within(1e-9));
    }

    @Test
    void overABendEachPieceIsReducedByItsOwnGrade() {
        Profile bent = profile(0, 0, 400, 300, 1000, 300);
        assertThat(bent.levelLength(Length.ZERO, Length.inches(600)).inches()).isCloseTo(500, within(1e-9));
        assertThat(bent.levelLength(Length.inches(200), Length.inches(350)).inches())
                .isCloseTo(300, within(1e-9));
    }

    private static Profile profile(double... stationsAndHeights) {
        List<ProfilePoint> points = new ArrayList<>();
        for (int i = 0; i < stationsAndHeights.length; i += 2)
            points.add(new ProfilePoint(
                    "S" + (i / 2 + 1), new Offset(stationsAndHeights[i]), new Offset(stationsAndHeights[i + 1])));
        return new Profile("R1", points);
    }
}
