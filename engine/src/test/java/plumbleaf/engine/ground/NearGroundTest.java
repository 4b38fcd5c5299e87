package plumbleaf.engine.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;

/** Looking only at what is near gives the surface that looking at everything gives. Seeded. */
class NearGroundTest {
    private static final int FEET = 900;

    @Test
    void theSurfaceIsTheSame() {
        Random random = new Random(41);
        RunLine run = Books.east(FEET);
        List<Shot> shots = new ArrayList<>();
        for (int ft = 0; ft <= FEET; ft += 30)
            shots.add(Books.station("S" + (shots.size() + 1), ft, random.nextInt(40)));
        for (int i = 0; i < 120; i++)
            shots.add(Books.inside(
                    "S" + (shots.size() + 1), random.nextInt(FEET), 1 + random.nextInt(60), random.nextInt(40)));
        Ground ground = Ground.of(Books.book(shots.toArray(Shot[]::new)), List.of(run));
        NearGround near = NearGround.of(ground, run);
        for (int i = 0; i < 300; i++) {
            PlanPoint pin = PlanPoint.inches(random.nextDouble() * FEET * 12, random.nextDouble() * 700 - 100);
            Length reach = Length.inches(20 + random.nextInt(1200));
            Surface all = ground.surfaceNear(pin, reach, run, Slope.ratio(0.02));
            Surface some = near.surfaceNear(pin, reach, Slope.ratio(0.02));
            assertThat(some.triangles().triangles()).isEqualTo(all.triangles().triangles());
            assertThat(some.findings()).isEqualTo(all.findings());
            assertThat(some.heightAt(pin)).isEqualTo(all.heightAt(pin));
        }
    }
}
