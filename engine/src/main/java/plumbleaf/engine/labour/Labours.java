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

/** Hours from work and rates: quantity times hours for one. */
public final class Labours {
    private Labours() {}

    public static Labour of(List<Work> works, List<LabourRate> rates) {
        return of(works, LabourRates.of(rates));
    }

    public static Labour of(List<Work> works, LabourRates rates) {
        Map<LabourRate, Double> quantities = new LinkedHashMap<>();
        Map<LabourRate, Set<String>> causes = new LinkedHashMap<>();
        Map<String, Finding> missing = new LinkedHashMap<>();
        for (Work work : works) {
            if (work.quantity() == 0) continue;
            Optional<LabourRate> rate = rates.rateFor(work);
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
