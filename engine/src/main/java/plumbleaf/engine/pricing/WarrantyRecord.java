package plumbleaf.engine.pricing;

import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.job.Complaint;
import plumbleaf.engine.job.ComplaintCause;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;

/**
 * What calls under warranty came to over some jobs, and the reserve they would have asked for: {@code share = cost of all calls / price before tax of all jobs}, the jobs
 * without a call among them. A share of what was, not a promise of what will be; with few calls it says little.
 *
 * @param jobs looked at
 * @param causes those that occurred, in the order of {@link ComplaintCause}
 * @param cost hours at the rate of their job, and what was bought
 * @param price before tax of all jobs
 */
public record WarrantyRecord(int jobs, List<OfCause> causes, Money cost, Money price) {
    public WarrantyRecord {
        causes = List.copyOf(causes);
    }

    /** @param hours of one person */
    public record OfCause(ComplaintCause cause, int calls, double hours, Money cost) {
        private OfCause plus(OfCause more) {
            return new OfCause(cause, calls + more.calls, hours + more.hours, cost.plus(more.cost));
        }
    }

    /** A job and the calls about it. */
    public record Job(Price price, UnitPrice hourly, List<Complaint> calls) {
        public Job {
            calls = List.copyOf(calls);
        }
    }

    public static WarrantyRecord of(List<Job> jobs) {
        Map<ComplaintCause, OfCause> causes = new EnumMap<>(ComplaintCause.class);
        Money cost = Money.ZERO;
        Money price = Money.ZERO;
        for (Job job : jobs) {
            price = price.plus(job.price().price());
            for (Complaint call : job.calls()) {
                Money came = job.hourly().times(Terms.exact(call.hours())).plus(call.cost());
                cost = cost.plus(came);
                causes.merge(call.cause(), new OfCause(call.cause(), 1, call.hours(), came), OfCause::plus);
            }
        }
        return new WarrantyRecord(jobs.size(), new ArrayList<>(causes.values()), cost, price);
    }

    public int calls() {
        return causes.stream().mapToInt(OfCause::calls).sum();
    }

    /** Of the price before tax; zero where nothing was priced. */
    public double share() {
        if (price.cents() <= 0) return 0;
        return cost.inDollars().divide(price.inDollars(), MathContext.DECIMAL64).doubleValue();
    }
}
