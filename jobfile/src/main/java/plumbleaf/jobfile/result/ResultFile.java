package plumbleaf.jobfile.result;

import java.util.List;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Difference;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.ground.GroundPoint;
import plumbleaf.engine.job.Assumption;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.labour.LearnedRate;
import plumbleaf.engine.labour.TaskVariance;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.Progress;
import plumbleaf.engine.pricing.Statement;
import plumbleaf.engine.schedule.NoticeDate;
import plumbleaf.engine.takeoff.ItemVariance;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.ObjectNode;
import plumbleaf.jobfile.offer.Together;

/**
 * Writes a design as the result: every computed quantity under a key with its unit, in full precision, the same bytes for the same
 * design.
 */
public final class ResultFile {
    public static final String FORMAT = "plumbleaf-design";
    public static final int VERSION = 1;

    private ResultFile() {}

    public static String write(Design design) {
        return JsonWriter.write(tree(design));
    }

    public static ObjectNode tree(Design design) {
        Job job = design.job();
        Json.Members result =
                Json.object().put("format", FORMAT).put("version", VERSION).put("title", job.title());
        job.date()
                .value()
                .ifPresent(date -> result.put("date", TextKind.DATE.write().apply(date)));
        result.put("verdict", design.verdict().key())
                .put("basis", job.site().basis().key());
        design.rated().ifPresent(rated -> result.put("ratedGustMph", PostJson.rated(rated)));
        return result.put("assumed", job.assumed(), ResultFile::assumed)
                .put("findings", design.findings(), FindingJson::finding)
                .put("shots", design.ground().points(), ResultFile::shot)
                .put("posts", design.posts(), PostJson::post)
                .put("bays", design.layout().bays(), BayJson::bay)
                .put("gates", design.gates(), gate -> GateJson.gate(gate, design))
                .put("choices", design.choices(), ChoiceJson::choice)
                .put("takeoff", design.quote().takeoff().lines(), TakeoffJson::line)
                .put("cutPlans", design.quote().takeoff().cutPlans(), CutPlanJson::plan)
                .put("hours", design.quote().labour().tasks(), QuoteJson::task)
                .put("schedule", QuoteJson.schedule(design))
                .put("money", MoneyJson.price(design.quote().price()))
                .build();
    }

    /** One line of the take-off alone. */
    public static Node takeoffLine(TakeoffLine line) {
        return TakeoffJson.line(line);
    }

    /** One cut plan alone. */
    public static Node cutPlan(CutPlan plan) {
        return CutPlanJson.plan(plan);
    }

    /** One search for a build alone. */
    public static Node choice(GateChoice choice) {
        return ChoiceJson.choice(choice);
    }

    /** The price alone. */
    public static Node money(Price price) {
        return MoneyJson.price(price).build();
    }

    /** An option beside the job itself. */
    public static Node offered(Offered offered) {
        return LedgerJson.offered(offered);
    }

    /** A changed job beside the accepted one. */
    public static Node difference(String title, Difference difference) {
        return LedgerJson.difference(title, difference);
    }

    /** What the customer owes. */
    public static Node statement(
            String title, Statement statement, Progress progress, Billing billing, List<NoticeDate> notices) {
        return LedgerJson.statement(title, statement, progress, billing, notices);
    }

    /** Options ticked together: one design, or why there is none. */
    public static Node together(Together together) {
        return LedgerJson.together(together);
    }

    /** Hours and materials written down beside those estimated and ordered. */
    public static Node hours(String title, List<TaskVariance> tasks, List<ItemVariance> items) {
        return LedgerJson.hours(title, tasks, items);
    }

    /** What done work makes of the rates. */
    public static Node learned(List<LearnedRate> rates) {
        return LedgerJson.learned(rates);
    }

    private static Node assumed(Assumption assumption) {
        return Json.object()
                .put("field", assumption.field())
                .put("value", assumption.value())
                .put("why", assumption.why())
                .build();
    }

    private static Node shot(GroundPoint point) {
        return Json.object()
                .put("id", point.shot())
                .put("xIn", point.point().plan().xIn())
                .put("yIn", point.point().plan().yIn())
                .put("elevationIn", point.point().elevation().inches())
                .build();
    }
}
