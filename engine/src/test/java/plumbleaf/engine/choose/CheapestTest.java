package plumbleaf.engine.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.money.Money;

class CheapestTest {
    /** A build is its strength; it passes from 50 on. */
    private static final Function<Integer, List<Finding>> NEEDS_50 = strength -> List.<Finding>of(Checked.of(
            "post.bending", Severity.MUST_FIX, "P1", "", Basis.judgement("test"), Measure.demand(50, strength, "lb")));

    @Test
    void takesTheCheapestThatPassesAndKeepsWhyEachCheaperOneFails() {
        List<Candidate<Integer>> builds = List.of(
                build("strong", 90, 300), build("weak", 10, 100), build("enough", 55, 200), build("dear", 60, 250));
        Choice<Integer> choice = Cheapest.of(builds, NEEDS_50, 1);
        assertThat(choice.cheapest().map(Candidate::id)).contains("enough");
        assertThat(choice.next()).extracting(Candidate::id).containsExactly("dear");
        assertThat(choice.rejected()).extracting(Rejected::id).containsExactly("weak");
        assertThat(choice.rejected().get(0).because().id()).isEqualTo("post.bending");
    }

    @Test
    void saysWhenNoneWillDo() {
        Choice<Integer> choice = Cheapest.of(List.of(build("a", 1, 1), build("b", 2, 2)), NEEDS_50, 3);
        assertThat(choice.cheapest()).isEmpty();
        assertThat(choice.rejected()).hasSize(2);
    }

    @Test
    void equalPricesAreTakenById() {
        assertThat(Cheapest.of(List.of(build("b", 60, 5), build("a", 60, 5)), NEEDS_50, 0)
                        .cheapest()
                        .map(Candidate::id))
                .contains("a");
    }

    @Test
    void agreesWithLookingAtAllOfThem() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            List<Candidate<Integer>> builds = new ArrayList<>();
            for (int i = 0; i < 40; i++) builds.add(build("b" + i, random.nextInt(70), random.nextInt(50)));
            long cheapest = builds.stream()
                    .filter(build -> build.build() >= 50)
                    .mapToLong(build -> build.price().cents())
                    .min()
                    .orElse(-1);
            Collections.shuffle(builds, random);
            Choice<Integer> choice = Cheapest.of(builds, NEEDS_50, 3);
            assertThat(choice.cheapest().map(best -> best.price().cents()).orElse(-1L))
                    .isEqualTo(cheapest);
        }
    }

    private static Candidate<Integer> build(String id, int strength, long cents) {
        return new Candidate<>(id, strength, Money.cents(cents));
    }
}
