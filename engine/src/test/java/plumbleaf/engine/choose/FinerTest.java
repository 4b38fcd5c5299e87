package plumbleaf.engine.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
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

/** The cheapest for each limit is what a list of all builds in order of price shows. */
class FinerTest {
    /** A build drops so much, and passes where its last digit is not 3. */
    private static final Function<Integer, List<Finding>> NO_THREES = drop -> List.<Finding>of(Checked.of(
            "t", Severity.MUST_FIX, "P1", "", Basis.judgement("test"), Measure.demand(drop % 10 == 3 ? 2 : 0, 1, "")));

    @Test
    void agreesWithAListOfAllBuilds() {
        Random random = new Random(20261129);
        for (int round = 0; round < 300; round++) {
            List<Parts<Integer, Integer>> parts = new ArrayList<>();
            for (int a = 0; a < 1 + random.nextInt(6); a++) {
                List<Candidate<Integer>> ons = new ArrayList<>();
                for (int b = 0; b < 1 + random.nextInt(8); b++)
                    ons.add(new Candidate<>("b" + b, random.nextInt(60), Money.cents(random.nextInt(12))));
                ons.sort(Comparator.comparing((Candidate<Integer> each) -> each.price())
                        .thenComparing(Candidate::id));
                parts.add(new Parts<>(
                        new Candidate<>("a" + a, random.nextInt(60), Money.cents(random.nextInt(12))), ons));
            }
            List<Finer<Integer>> found = Finer.of(
                    parts, Integer::sum, NO_THREES, (a, limit) -> b -> a + b <= limit + 5, drop -> drop, 100, 20, 4);
            assertThat(found).isEqualTo(listed(parts));
        }
    }

    private static List<Finer<Integer>> listed(List<Parts<Integer, Integer>> parts) {
        List<Candidate<Integer>> all = new ArrayList<>();
        new InOrderOfPrice<>(parts, Integer::sum).forEachRemaining(all::add);
        List<Finer<Integer>> found = new ArrayList<>();
        for (Candidate<Integer> each : all)
            while (found.size() < 4
                    && each.build() <= 100 - (found.size() + 1) * 20
                    && Cheapest.passes(NO_THREES.apply(each.build())))
                found.add(new Finer<>(100 - (found.size() + 1) * 20, each.build(), each));
        return found;
    }
}
