package plumbleaf.jobfile.result;

import java.util.List;
import plumbleaf.engine.design.Difference;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.labour.LearnedRate;
import plumbleaf.engine.labour.TaskVariance;
import plumbleaf.engine.pricing.Progress;
import plumbleaf.engine.pricing.Statement;
import plumbleaf.engine.schedule.NoticeDate;
import plumbleaf.engine.takeoff.ItemVariance;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.offer.Together;

/** Options, changes, bills and hours, as programs read them. */
final class LedgerJson {
    private LedgerJson() {}

    static Node statement(
            String title, Statement statement, Progress progress, Billing billing, List<NoticeDate> notices) {
        Json.Members out = Json.object()
                .put("title", title)
                .put("total", statement.total().plain())
                .put("changes", statement.changes().plain())
                .put("contract", statement.contract().plain())
                .put("billed", statement.billed().plain())
                .put("retained", statement.retained().plain())
                .put("paid", statement.paid().plain())
                .put("due", statement.due().plain())
                .put("unbilled", statement.unbilled().plain())
                .put("balance", statement.balance().plain())
                .put("notices", notices, LedgerJson::notice);
        if (!billing.measured().isEmpty()) out.put("progress", progress(progress));
        if (!billing.submittals().isEmpty()) out.put("submittals", billing.submittals(), LedgerJson::submittal);
        return out.build();
    }

    private static Node progress(Progress progress) {
        return Json.object()
                .put("lines", progress.lines(), LedgerJson::line)
                .put("values", progress.values().plain())
                .put("apart", progress.apart().plain())
                .put("installed", progress.installed().plain())
                .put("stored", progress.stored().plain())
                .put("earned", progress.earned().plain())
                .put("retained", progress.retained().plain())
                .put("next", progress.next().plain())
                .build();
    }

    private static Node line(Progress.Line line) {
        return Json.object()
                .put("what", line.of().what())
                .put("unit", line.of().unit())
                .put("value", line.value().plain())
                .put("installed", line.installed().plain())
                .put("stored", line.stored().plain())
                .build();
    }

    private static Node submittal(Billing.Submittal submittal) {
        return Json.object()
                .put("what", submittal.what())
                .put("words", submittal.words())
                .build();
    }

    private static Node notice(NoticeDate date) {
        Json.Members out = Json.object().put("what", date.notice().what());
        date.due().value().ifPresent(day -> out.put("due", day.toString()));
        date.notice().sent().value().ifPresent(day -> out.put("sent", day.toString()));
        return out.put("planned", date.planned()).put("words", date.words()).build();
    }

    static Node offered(Offered offered) {
        return Json.object()
                .put("id", offered.option().id())
                .put("name", offered.option().name())
                .put("kind", offered.option().kind().key())
                .put("verdict", offered.design().verdict().key())
                .put("total", offered.design().quote().price().total().plain())
                .put("difference", difference("", offered.difference()))
                .build();
    }

    static Node together(Together together) {
        Json.Members out = Json.object()
                .put("ticked", together.ticked(), option -> Json.text(option.id()))
                .put("base", together.base().plain())
                .put("alone", together.alone(), each -> Json.text(each.plain()));
        if (!together.canBe()) return out.put("reason", together.reason()).build();
        return out.put("together", together.together().plain())
                .put("total", together.total().plain())
                .build();
    }

    static Node difference(String title, Difference difference) {
        Json.Members out = Json.object();
        if (!title.isEmpty()) out.put("title", title);
        return out.put("price", difference.price().plain())
                .put("siteDays", difference.siteDays())
                .put(
                        "parts",
                        difference.parts(),
                        part -> Json.object()
                                .put("part", part.part())
                                .put("way", part.way().key())
                                .build())
                .put(
                        "lines",
                        difference.lines(),
                        line -> Json.object()
                                .put("name", line.name())
                                .put("unit", line.unit())
                                .put("before", line.before())
                                .put("after", line.after())
                                .put("amount", line.amount().plain())
                                .build())
                .build();
    }

    static Node hours(String title, List<TaskVariance> tasks, List<ItemVariance> items) {
        return Json.object()
                .put("title", title)
                .put(
                        "tasks",
                        tasks,
                        task -> Json.object()
                                .put("task", task.task())
                                .put("name", task.name())
                                .put("estimatedQuantity", task.estimatedQuantity())
                                .put("estimatedHours", task.estimatedHours())
                                .put("doneQuantity", task.doneQuantity())
                                .put("takenHours", task.takenHours())
                                .put("overHours", task.overHours())
                                .build())
                .put(
                        "materials",
                        items,
                        item -> Json.object()
                                .put("item", item.item())
                                .put("name", item.name())
                                .put("unit", item.unit())
                                .put("ordered", item.ordered())
                                .put("used", item.used())
                                .put("returned", item.returned())
                                .put("over", item.over())
                                .put("worth", item.worth().plain())
                                .build())
                .build();
    }

    static Node learned(List<LearnedRate> rates) {
        return Json.object()
                .put(
                        "rates",
                        rates,
                        rate -> Json.object()
                                .put("task", rate.book().task())
                                .put("soil", rate.book().soil())
                                .put("per", rate.book().per())
                                .put("bookHours", rate.book().hours())
                                .put("records", rate.records())
                                .put("medianHours", rate.median())
                                .put("lowHours", rate.low())
                                .put("highHours", rate.high())
                                .put("coverage", rate.coverage())
                                .put("suggestsAnother", rate.suggestsAnother())
                                .build())
                .build();
    }
}
