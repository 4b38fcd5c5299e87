package plumbleaf.engine.labour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The rates of a price book by their task, those that go before others first, so that each piece of work finds its own at once. */
public final class LabourRates {
    /** The rate that names the soil goes before one for any; of sizes the least that is enough. */
    private static final Comparator<LabourRate> GOES_FIRST = Comparator.comparing(
                    (LabourRate rate) -> rate.soil().isEmpty())
            .thenComparing(rate -> rate.upTo().isZero())
            .thenComparing(LabourRate::upTo);

    private final Map<String, List<LabourRate>> byTask = new LinkedHashMap<>();

    private LabourRates() {}

    public static LabourRates of(List<LabourRate> rates) {
        LabourRates all = new LabourRates();
        for (LabourRate rate : rates)
            all.byTask.computeIfAbsent(rate.task(), task -> new ArrayList<>()).add(rate);
        all.byTask.values().forEach(each -> each.sort(GOES_FIRST));
        return all;
    }

    Optional<LabourRate> rateFor(Work work) {
        for (LabourRate rate : byTask.getOrDefault(work.task(), List.of()))
            if (rate.holdsFor(work)) return Optional.of(rate);
        return Optional.empty();
    }
}
