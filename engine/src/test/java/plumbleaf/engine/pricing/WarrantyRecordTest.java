package plumbleaf.engine.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Complaint;
import plumbleaf.engine.job.ComplaintCause;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;

class WarrantyRecordTest {
    private static final LocalDate DAY = LocalDate.of(2028, 2, 1);
    private static final UnitPrice HOURLY = UnitPrice.of("60.00");

    @Test
    void theReserveIsWhatCallsCostOfThePriceOfAllJobs() {
        WarrantyRecord record = WarrantyRecord.of(List.of(
                new WarrantyRecord.Job(
                        price(8000),
                        HOURLY,
                        List.of(
                                call(ComplaintCause.HINGE, 1.5, 2000),
                                call(ComplaintCause.SOIL, 0.5, 0),
                                call(ComplaintCause.HINGE, 0.5, 0))),
                new WarrantyRecord.Job(price(2000), HOURLY, List.of())));
        assertThat(record.calls()).isEqualTo(3);
        assertThat(record.cost()).isEqualTo(Money.dollars(170));
        assertThat(record.share()).isCloseTo(0.017, within(1e-12));
        assertThat(record.causes())
                .extracting(WarrantyRecord.OfCause::cause)
                .containsExactly(ComplaintCause.SOIL, ComplaintCause.HINGE);
        assertThat(record.causes().get(1).hours()).isEqualTo(2);
    }

    @Test
    void withoutAJobThereIsNoShare() {
        assertThat(WarrantyRecord.of(List.of()).share()).isZero();
    }

    private static Complaint call(ComplaintCause cause, double hours, long cents) {
        return new Complaint(DAY, "sags", cause, hours, Money.cents(cents));
    }

    private static Price price(long dollars) {
        PriceLine line = new PriceLine(
                Category.MATERIAL,
                "x",
                "x",
                1,
                "each",
                UnitPrice.of("1"),
                Money.dollars(dollars),
                false,
                List.of("P1"));
        Terms terms = Terms.plain(
                BigDecimal.ZERO, new Overhead.OfCost(BigDecimal.ZERO), BigDecimal.ZERO, BigDecimal.ZERO, List.of());
        return Pricing.of(List.of(line), new HouseRules(Money.ZERO, Money.cents(1)), terms);
    }
}
