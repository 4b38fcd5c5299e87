package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Redesigner;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.web.Trial;

/** What answers move, held against whole designs. */
class TriedPricesTest {
    private final Catalogue catalogue = StandardCatalogue.load();
    private final Standards standards = StandardTables.load().standards();

    @Test
    void whereAllOfTheGateIsSaidOrLeftItCostsWhatAWholeDesignCosts() {
        DocumentText text = DocumentText.of(Trial.yard());
        TriedPrices prices = new TriedPrices(design(text), designs(), this::read, this::book);
        assertThat(prices.total(text)).contains(total(text));
        DocumentText far = text.with("site.access.carry", "\"100'\"");
        assertThat(prices.total(far)).contains(total(far)).isNotEqualTo(Optional.of(total(text)));
    }

    @Test
    void aGateIsMadeAsItIsUnlessThatHoldsAtNoDepth() {
        DocumentText text = DocumentText.of(Trial.yard()).without("builds.G1.depth");
        Design now = design(text);
        TriedPrices prices = new TriedPrices(now, designs(), this::read, this::book);
        DocumentText frozen = text.with("site.frost.depth", "\"60\\\"\"");
        // Deeper holes for the same posts are dearer, and no cheaper than what a search would take instead.
        assertThat(prices.total(frozen).orElseThrow().cents())
                .isGreaterThan(total(text).cents())
                .isGreaterThanOrEqualTo(total(frozen).cents());
        DocumentText wide = text.with("gates[0].opening", "\"8'\"");
        assertThat(prices.total(wide)).contains(total(wide));
    }

    @Test
    void anOldPostThatHoldsCostsNoNewOne() {
        DocumentText text = DocumentText.of(Trial.yard());
        TriedPrices prices = new TriedPrices(design(text), designs(), this::read, this::book);
        DocumentText old = text.with("gates[0].latchPost", "{ \"support\": \"existing\" }");
        assertThat(prices.totalAsDug(old).orElseThrow().cents())
                .isLessThan(total(text).cents());
        assertThat(prices.totalAsDug(text.with("gates[0].opening", "\"wide\""))).isEmpty();
    }

    private Redesigner designs() {
        return new Redesigner(catalogue, standards, new ProvenCutPlanner());
    }

    private JobReading read(String text) {
        return JobFile.read("the job", text, catalogue);
    }

    private PriceBook book(Job job) {
        return PriceBooks.of(job).orElseThrow();
    }

    private Design design(DocumentText text) {
        Job job = read(text.text()).job().orElseThrow();
        return designs().of(job, book(job));
    }

    private Money total(DocumentText text) {
        return design(text).quote().price().total();
    }
}
