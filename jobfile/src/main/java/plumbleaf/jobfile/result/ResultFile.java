package plumbleaf.jobfile.result;

import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.ground.GroundPoint;
import plumbleaf.engine.job.Assumption;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.Price;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.ObjectNode;

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
                .put("schedule", QuoteJson.schedule(design.quote().schedule()))
                .put("money", MoneyJson.price(design.quote().price()))
                .build();
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
