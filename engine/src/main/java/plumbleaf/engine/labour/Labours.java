package plumbleaf.engine.labour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/** Hours from work and rates: quantity times hours for one. The rate that names the soil goes before one for any; of sizes the least that is enough. */
public final class Labours {
    private Labours() {}

    public static Labour of(List<Work> works, List<LabourRate> rates) {
        Map<LabourRate, Double> quantities = new LinkedHashMap<>();
        Map<LabourRate, Set<String>> causes = new LinkedHashMap<>();
        Map<String, Finding> missing = new LinkedHashMap<>();
        for (Work work : works) {
            if (work.quantity() == 0) continue;
            Optional<LabourRate> rate = rateFor(work, rates);
            if (rate.isEmpty()) {
                missing.putIfAbsent(work.task() + "/" + work.soil(), noRate(work));
                continue;
            }
            quantities.merge(rate.get(), work.quantity(), Double::sum);
            causes.computeIfAbsent(rate.get(), any -> new LinkedHashSet<>()).add(work.cause());
        }
        List<TaskHours> tasks = new ArrayList<>();
        quantities.forEach((rate, quantity) -> tasks.add(new TaskHours(
                rate,
                quantity,
                quantity * rate.hours(),
                List.copyOf(causes.getOrDefault(rate, new LinkedHashSet<>())))));
        tasks.sort(Comparator.comparing(TaskHours::phase));
        return new Labour(tasks, new ArrayList<>(missing.values()));
    }

    private static Optional<LabourRate> rateFor(Work work, List<LabourRate> rates) {
        return rates.stream()
                .filter(rate -> rate.holdsFor(work))
                .min(Comparator.comparing((LabourRate rate) -> rate.soil().isEmpty())
                        .thenComparing(rate -> rate.upTo().isZero())
                        .thenComparing(LabourRate::upTo));
    }

    private static Finding noRate(Work work) {
        String where = work.soil().isEmpty() ? "" : " in " + work.soil();
        return Checked.note(
                "labour.rate",
                Severity.CANNOT_SAY,
                work.cause(),
                "No hours in the price book for " + work.task() + where
                        + "; the price is without them. Add a row, or make a bigger size part of one.",
                Basis.judgement("price book"));
    }
}
