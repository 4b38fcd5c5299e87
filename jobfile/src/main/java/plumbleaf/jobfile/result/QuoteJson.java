package plumbleaf.jobfile.result;

import java.time.LocalDate;
import java.util.List;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.TaskHours;
import plumbleaf.engine.schedule.PlannedTask;
import plumbleaf.engine.schedule.PourDay;
import plumbleaf.engine.schedule.PourDays;
import plumbleaf.engine.schedule.Schedule;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code hours[]} and {@code schedule}. */
final class QuoteJson {
    private QuoteJson() {}

    static Node task(TaskHours task) {
        return Json.object()
                .put("task", task.rate().task())
                .put("phase", task.phase().key())
                .put("quantity", task.quantity())
                .put("hours", task.hours())
                .put("causes", Json.texts(task.causes()))
                .build();
    }

    static Json.Members schedule(Design design) {
        Schedule schedule = design.quote().schedule();
        return Json.object()
                .put("siteDays", schedule.siteDays())
                .put("tasks", schedule.tasks(), QuoteJson::planned)
                .put("pours", PourDays.of(schedule, holes(design)), QuoteJson::pour);
    }

    private static List<PourDays.Hole> holes(Design design) {
        return design.posts().stream()
                .filter(post -> !post.hole().isZero() && !post.depth().isZero())
                .map(post -> new PourDays.Hole(
                        post.id(),
                        !post.post().gate().isEmpty(),
                        post.concrete().volume()))
                .toList();
    }

    private static Node pour(PourDay day) {
        Json.Members members = Json.object().put("day", Json.count(day.number()));
        day("date", day.date(), members);
        return members.put("posts", Json.texts(day.posts())).build();
    }

    private static Node planned(PlannedTask task) {
        Json.Members members = Json.object()
                .put("key", task.key())
                .put("name", task.name())
                .put("hours", task.hours())
                .put("days", task.days());
        day("first", task.first(), members);
        day("last", task.last(), members);
        return members.build();
    }

    private static void day(String key, Stated<LocalDate> day, Json.Members members) {
        day.value().ifPresent(is -> members.put(key, TextKind.DATE.write().apply(is)));
    }
}
