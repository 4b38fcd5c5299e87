package plumbleaf.engine.labour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.job.Actual;

/**
 * Learns rates from done work: the median of the last records, with an interval for it that asks nothing of how the hours are distributed: between the k-th smallest
 * and the k-th largest of n, which holds the true median with probability {@code 1 - 2 P(B < k)}, B the heads of n fair coins. The k is the largest that
 * still gives {@link LearnedRate#SURE}; with fewer than five records none does, and the ends are the smallest and the largest.
 * Source: order statistics interval of the median, H. A. David and H. N. Nagaraja, Order Statistics, 3rd ed. (2003), section 7.1 (from memory). Check: LearningCheck.
 */
public final class Learning {
    /** Older records than these many say how it was, not how it is: judgement. */
    public static final int LATEST = 15;

    private Learning() {}

    /** @param hours of any number of jobs; records without a quantity say nothing about a rate */
    public static List<LearnedRate> of(List<Actual> hours, List<LabourRate> book) {
        List<LearnedRate> learned = new ArrayList<>();
        for (LabourRate rate : book) {
            List<Actual> records = latest(hours, rate);
            if (!records.isEmpty()) learned.add(learned(rate, records));
        }
        return learned;
    }

    private static List<Actual> latest(List<Actual> hours, LabourRate rate) {
        List<Actual> records = hours.stream()
                .filter(actual -> actual.quantity() > 0
                        && actual.task().equals(rate.task())
                        && actual.soil().equals(rate.soil()))
                .sorted(Comparator.comparing(
                        (Actual actual) -> actual.date().match(said -> said.is().toString(), open -> "")))
                .toList();
        return records.subList(Math.max(0, records.size() - LATEST), records.size());
    }

    private static LearnedRate learned(LabourRate rate, List<Actual> records) {
        double[] each = records.stream()
                .mapToDouble(record -> record.hours() / record.quantity())
                .sorted()
                .toArray();
        int n = each.length;
        int k = sureOrder(n);
        double median = n % 2 == 1 ? each[n / 2] : (each[n / 2 - 1] + each[n / 2]) / 2;
        return new LearnedRate(
                rate,
                n,
                records.stream().mapToDouble(Actual::quantity).sum(),
                records.stream().mapToDouble(Actual::hours).sum(),
                median,
                each[k - 1],
                each[n - k],
                coverage(n, k));
    }

    /** The largest k that is sure enough; 1 where none is. */
    static int sureOrder(int n) {
        int k = 1;
        while (2 * (k + 1) <= n && coverage(n, k + 1) >= LearnedRate.SURE) k++;
        return k;
    }

    /** Probability that the true median lies between the k-th smallest and the k-th largest of n. */
    public static double coverage(int n, int k) {
        double term = 1;
        for (int i = 0; i < n; i++) term /= 2;
        double below = 0;
        for (int heads = 0; heads < k; heads++) {
            below += term;
            term = term * (n - heads) / (heads + 1);
        }
        return Math.max(0, 1 - 2 * below);
    }
}
