package plumbleaf.engine.pricing;

import java.math.BigDecimal;
import java.util.function.Function;
import plumbleaf.engine.money.Money;

/** How the running of the firm is charged to a job. */
public sealed interface Overhead {
    <T> T match(Function<OfCost, T> ofCost, Function<PerDay, T> perDay);

    /** A share of cost: 0.12 for 12 %. */
    record OfCost(BigDecimal share) implements Overhead {
        public OfCost {
            if (share.signum() < 0) throw new IllegalArgumentException("Overhead must be zero or more");
        }

        @Override
        public <T> T match(Function<OfCost, T> ofCost, Function<PerDay, T> perDay) {
            return ofCost.apply(this);
        }
    }

    /** So much a crew-day, which is fairer to small jobs. */
    record PerDay(Money each, BigDecimal days) implements Overhead {
        @Override
        public <T> T match(Function<OfCost, T> ofCost, Function<PerDay, T> perDay) {
            return perDay.apply(this);
        }
    }
}
