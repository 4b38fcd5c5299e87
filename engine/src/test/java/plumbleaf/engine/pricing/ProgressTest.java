package plumbleaf.engine.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.money.Money;

/** Bills by what stands and what lies ready. */
class ProgressTest {
    @Test
    void whatIsInstalledAndStoredIsEarnedAndTheRestOfTheContractIsSaid() {
        // 40 posts at 85.00, 20 set and 10 in the pile; 2 gates at 1800.00, none yet: 1700 + 850, of 3400 + 3600.
        Progress progress = Progress.of(
                account(800_000, 100_000),
                billing(
                        0.10,
                        new Billing.Measured("posts", "each", 40, Money.dollars(85), 20, 10),
                        new Billing.Measured("gates", "each", 2, Money.dollars(1800), 0, 0)));
        assertThat(progress.values()).isEqualTo(Money.dollars(7000));
        assertThat(progress.apart()).isEqualTo(Money.dollars(1000));
        assertThat(progress.installed()).isEqualTo(Money.dollars(1700));
        assertThat(progress.stored()).isEqualTo(Money.dollars(850));
        assertThat(progress.retained()).isEqualTo(Money.dollars(255));
        assertThat(progress.next()).isEqualTo(Money.dollars(1550));
    }

    @Test
    void withAllBuiltInNothingIsKeptBackAndEveryValueIsEarned() {
        Progress progress = Progress.of(
                account(340_000, 0),
                billing(0.10, new Billing.Measured("posts", "each", 40, Money.dollars(85), 40, 0)));
        assertThat(progress.retained()).isEqualTo(Money.ZERO);
        assertThat(progress.earned()).isEqualTo(progress.values());
        assertThat(progress.apart()).isEqualTo(Money.ZERO);
    }

    /** Seeded: whatever goes from the pile into the ground, what is earned stays the same to the cent. */
    @Test
    void whatMovesFromThePileIntoTheGroundIsNotBilledTwice() {
        Random random = new Random(29);
        for (int i = 0; i < 500; i++) {
            Money each = Money.cents(1 + random.nextInt(500_000));
            double there = random.nextInt(400) / 4.0;
            double moved = random.nextInt(4 * (int) there + 1) / 4.0;
            Progress piled =
                    Progress.of(account(1, 0), billing(0.05, new Billing.Measured("x", "ft", 200, each, 0, there)));
            Progress built = Progress.of(
                    account(1, 0), billing(0.05, new Billing.Measured("x", "ft", 200, each, moved, there - moved)));
            assertThat(built.earned()).isEqualTo(piled.earned());
            assertThat(built.installed().plus(built.stored())).isEqualTo(built.earned());
            assertThat(built.next()).isEqualTo(piled.next());
        }
    }

    private static Statement account(long contract, long billed) {
        Money total = Money.cents(contract);
        Money asked = Money.cents(billed);
        return new Statement(total, Money.ZERO, total, asked, Money.ZERO, Money.ZERO, asked, total.minus(asked), total);
    }

    private static Billing billing(double kept, Billing.Measured... lines) {
        return new Billing(kept, List.of(), List.of(), List.of(), List.of(lines), List.of());
    }
}
