package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Fit;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.offer.FitPrices;

/** Each run priced each way: every price is that of the same job with that fit written in its file. */
class FitPricesTest {
    private static final Yard YARD = Yard.nursery();

    private static FitPrices prices() {
        return FitPrices.of(YARD.design(), StandardCatalogue.load(), job -> YARD.designOf(job));
    }

    @Test
    void eachWayCostsWhatTheJobWithThatFitCosts() {
        FitPrices.OfRun run = prices().runs().get(0);
        assertThat(run.ways()).extracting(FitPrices.Way::fit).containsExactly(Fit.values());
        for (FitPrices.Way way : run.ways()) {
            String now = "\"fit\": \"" + run.now().key() + "\"";
            Yard written = YARD.with(now, "\"fit\": \"" + way.fit().key() + "\"");
            assertThat(way.total()).isEqualTo(written.design().quote().price().total());
        }
    }

    @Test
    void theCheapestOfThosePassingAsMuchIsNamed() {
        for (FitPrices.OfRun run : prices().runs()) {
            FitPrices.Way best = run.cheapest().orElseThrow();
            long now = run.ways().stream()
                    .filter(way -> way.fit() == run.now())
                    .findFirst()
                    .orElseThrow()
                    .mustFix();
            assertThat(run.ways())
                    .filteredOn(way -> way.mustFix() <= now)
                    .allSatisfy(way -> assertThat(way.total()).isGreaterThanOrEqualTo(best.total()));
            assertThat(Arrays.asList(Fit.values())).contains(best.fit());
        }
    }
}
