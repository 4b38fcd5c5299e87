package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.Actual;
import plumbleaf.engine.job.Stated;

/**
 * The first and the last day of work on a job: as written down where hours were, else as planned. The last one moves on with the plan until hours are later than it.
 *
 * @param begun whether hours are written down, so that the first day is no plan any more
 */
public record WorkSpan(Stated<LocalDate> first, Stated<LocalDate> last, boolean begun) {
    public static WorkSpan of(Schedule schedule, List<Actual> hours) {
        List<LocalDate> worked = hours.stream()
                .flatMap(each -> each.date().value().stream())
                .sorted()
                .toList();
        List<PlannedTask> works =
                schedule.tasks().stream().filter(task -> task.hours() > 0).toList();
        Optional<LocalDate> first =
                works.stream().flatMap(task -> task.first().value().stream()).min(LocalDate::compareTo);
        Optional<LocalDate> last =
                works.stream().flatMap(task -> task.last().value().stream()).max(LocalDate::compareTo);
        if (!worked.isEmpty()) {
            LocalDate latest = worked.get(worked.size() - 1);
            first = Optional.of(worked.get(0));
            last = last.filter(planned -> planned.isAfter(latest)).or(() -> Optional.of(latest));
        }
        return new WorkSpan(stated(first), stated(last), !worked.isEmpty());
    }

    private static Stated<LocalDate> stated(Optional<LocalDate> day) {
        return day.map(Stated::of).orElseGet(Stated::open);
    }
}
