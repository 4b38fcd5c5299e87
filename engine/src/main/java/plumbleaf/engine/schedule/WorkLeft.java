package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.job.Actual;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.labour.TaskHours;
import plumbleaf.engine.pricing.Statement;

/**
 * The work of a job that is still to do. A job that is billed to the end, or paid, has none left. Of any other, what was written down as done comes off: {@code left =
 * hours x (1 - done / estimated)}, task by task and never below nothing, however long it really took. Days go down with the hours of their phase, whole or half. Work
 * that nobody wrote down is still to do. Concrete cures from the last day written down for its phase; who wrote no day waits as if it were poured today.
 */
final class WorkLeft {
    /** Of one person: what is too little to send anyone for, common practice, no source. */
    private static final double TOO_LITTLE = 0.25;

    private WorkLeft() {}

    static Schedule of(Job job, Quote quote, LocalDate from) {
        Schedule whole = quote.schedule();
        if (isOver(job, quote)) return new Schedule(List.of(), 0, whole.cureDays());
        if (job.log().hours().isEmpty()) return whole;
        Map<String, Double> left = left(job, quote);
        List<PlannedTask> tasks = new ArrayList<>();
        List<PlannedTask> waits = new ArrayList<>();
        double siteDays = 0;
        for (PlannedTask task : whole.tasks()) {
            if (task.hours() == 0) {
                if (!isCured(task, job, quote, whole.cureDays(), from)) waits.add(task);
                continue;
            }
            double hours = Math.min(task.hours(), left.getOrDefault(task.key(), task.hours()));
            if (hours < TOO_LITTLE) continue;
            // A wait counts only where work comes after it.
            tasks.addAll(waits);
            waits.clear();
            double days = Math.ceil(task.days() * hours / task.hours() * 2 - 1e-9) / 2;
            tasks.add(new PlannedTask(task.key(), task.name(), hours, days, task.first(), task.last()));
            if (!task.key().equals("shop")) siteDays += days;
        }
        return new Schedule(tasks, siteDays, whole.cureDays());
    }

    private static boolean isOver(Job job, Quote quote) {
        Statement account =
                Statement.of(quote.price(), job.log().changes(), job.money().billing());
        boolean billed = !account.billed().isZero() && account.unbilled().cents() <= 0;
        boolean paid = !account.paid().isZero() && account.balance().cents() <= 0;
        return billed || paid;
    }

    /** Hours still to do, by phase. */
    private static Map<String, Double> left(Job job, Quote quote) {
        Map<String, Double> estimated = new LinkedHashMap<>();
        Map<String, Double> done = new LinkedHashMap<>();
        for (TaskHours task : quote.labour().tasks())
            estimated.merge(task.rate().task(), task.quantity(), Double::sum);
        for (Actual actual : job.log().hours()) done.merge(actual.task(), actual.quantity(), Double::sum);
        Map<String, Double> left = new LinkedHashMap<>();
        for (TaskHours task : quote.labour().tasks()) {
            double share = done.getOrDefault(task.rate().task(), 0.0)
                    / estimated.getOrDefault(task.rate().task(), 1.0);
            left.merge(task.phase().key(), task.hours() * Math.max(0, 1 - share), Double::sum);
        }
        return left;
    }

    /** Whether this wait is one for concrete, and the last work on its phase lies far enough back. */
    private static boolean isCured(PlannedTask wait, Job job, Quote quote, int cureDays, LocalDate from) {
        if (!wait.key().equals("cure")) return false;
        LocalDate poured = LocalDate.MIN;
        for (Actual actual : job.log().hours())
            if (isSetting(actual, quote) && actual.date().or(from).isAfter(poured))
                poured = actual.date().or(from);
        return !poured.equals(LocalDate.MIN)
                && left(job, quote).getOrDefault("set", 0.0) < TOO_LITTLE
                && poured.plusDays(cureDays).isBefore(from);
    }

    private static boolean isSetting(Actual actual, Quote quote) {
        return quote.labour().tasks().stream()
                .anyMatch(task -> task.rate().task().equals(actual.task())
                        && task.phase().key().equals("set"));
    }
}
