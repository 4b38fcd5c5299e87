package plumbleaf.jobfile.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Actual;
import plumbleaf.engine.job.Change;
import plumbleaf.engine.job.Complaint;
import plumbleaf.engine.job.ComplaintCause;
import plumbleaf.engine.job.JobLog;
import plumbleaf.engine.job.MoistureReading;
import plumbleaf.engine.job.UsedMaterial;
import plumbleaf.engine.money.Money;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** What happened since: {@code actuals}, {@code used}, {@code changes}, {@code warranty} and {@code moisture}. */
final class LogForm {
    private static final TextKind<ComplaintCause> CAUSE =
            TextKind.oneOf("a cause", List.of(ComplaintCause.values()), ComplaintCause::key);
    private static final double MOST_COUNTED = 1e6;
    private static final double MOST_DAYS = 1000;
    private static final LocalDate SOME_DAY = LocalDate.of(2000, 1, 1);

    private LogForm() {}

    static JobLog log(Fields job) {
        return new JobLog(hours(job), used(job), changes(job), complaints(job), moisture(job));
    }

    private static List<Actual> hours(Fields job) {
        List<Actual> hours = new ArrayList<>();
        for (Fields fields : job.objects("actuals"))
            hours.add(new Actual(
                    Open.of(fields.given("date", TextKind.DATE)),
                    fields.needed("task", TextKind.WORDS, ""),
                    fields.words("soil"),
                    fields.givenNumber("quantity", 0, MOST_COUNTED).orElse(0.0),
                    fields.givenNumber("hours", 0, MOST_COUNTED).orElse(0.0),
                    fields.words("note")));
        return hours;
    }

    private static List<UsedMaterial> used(Fields job) {
        List<UsedMaterial> used = new ArrayList<>();
        for (Fields fields : job.objects("used")) {
            UsedMaterial each = new UsedMaterial(
                    Open.of(fields.given("date", TextKind.DATE)),
                    fields.needed("item", TextKind.WORDS, ""),
                    fields.givenNumber("units", 0, MOST_COUNTED).orElse(0.0),
                    fields.givenNumber("returned", 0, MOST_COUNTED).orElse(0.0));
            if (each.returned() > each.units())
                fields.refuse(
                        "returned",
                        "more came back than was taken along",
                        "write how many were taken along under units, and how many of these came back");
            used.add(each);
        }
        return used;
    }

    private static List<Change> changes(Fields job) {
        List<Change> changes = new ArrayList<>();
        for (Fields fields : job.objects("changes"))
            changes.add(new Change(
                    fields.needed("id", TextKind.WORDS, ""),
                    fields.needed("date", TextKind.DATE, SOME_DAY),
                    fields.needed("what", TextKind.WORDS, ""),
                    fields.needed("price", TextKind.MONEY, Money.ZERO),
                    fields.givenNumber("days", -MOST_DAYS, MOST_DAYS).orElse(0.0),
                    fields.flag("accepted")));
        return changes;
    }

    private static List<Complaint> complaints(Fields job) {
        List<Complaint> complaints = new ArrayList<>();
        for (Fields fields : job.objects("warranty"))
            complaints.add(new Complaint(
                    fields.needed("date", TextKind.DATE, SOME_DAY),
                    fields.needed("what", TextKind.WORDS, ""),
                    fields.needed("cause", CAUSE, ComplaintCause.OTHER),
                    fields.givenNumber("hours", 0, MOST_COUNTED).orElse(0.0),
                    fields.given("cost", TextKind.MONEY).orElse(Money.ZERO)));
        return complaints;
    }

    private static List<MoistureReading> moisture(Fields job) {
        List<MoistureReading> readings = new ArrayList<>();
        for (Fields fields : job.objects("moisture"))
            readings.add(new MoistureReading(
                    fields.needed("date", TextKind.DATE, SOME_DAY),
                    fields.words("where"),
                    fields.needed("moisture", TextKind.shareUpTo(1), 0.0)));
        return readings;
    }

    static void write(JobLog log, Entries out) {
        out.objects("actuals", log.hours(), LogForm::writeHours);
        out.objects(
                "used",
                log.used(),
                (used, entries) -> entries.putIfAny(
                                "date", TextKind.DATE, used.date().value())
                        .words("item", used.item())
                        .number("units", used.units())
                        .number("returned", used.returned()));
        out.objects("changes", log.changes(), LogForm::writeChange);
        out.objects(
                "warranty",
                log.complaints(),
                (call, entries) -> entries.put("date", TextKind.DATE, call.date())
                        .words("what", call.what())
                        .put("cause", CAUSE, call.cause())
                        .number("hours", call.hours())
                        .put("cost", TextKind.MONEY, call.cost()));
        out.objects(
                "moisture",
                log.moisture(),
                (reading, entries) -> entries.put("date", TextKind.DATE, reading.date())
                        .words("where", reading.where())
                        .put("moisture", TextKind.SHARE, reading.moisture()));
    }

    private static void writeHours(Actual actual, Entries out) {
        out.putIfAny("date", TextKind.DATE, actual.date().value())
                .words("task", actual.task())
                .words("soil", actual.soil())
                .number("quantity", actual.quantity())
                .number("hours", actual.hours())
                .words("note", actual.note());
    }

    private static void writeChange(Change change, Entries out) {
        out.words("id", change.id())
                .put("date", TextKind.DATE, change.date())
                .words("what", change.what())
                .put("price", TextKind.MONEY, change.price())
                .number("days", change.days())
                .flag("accepted", change.accepted());
    }
}
