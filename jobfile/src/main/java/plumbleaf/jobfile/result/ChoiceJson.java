package plumbleaf.jobfile.result;

import plumbleaf.engine.choose.Candidate;
import plumbleaf.engine.choose.Finer;
import plumbleaf.engine.choose.Rejected;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.money.Money;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code choices[]}: the cheapest build that passes, what comes next, and why every cheaper one fails. */
final class ChoiceJson {
    private ChoiceJson() {}

    static Node choice(GateChoice choice) {
        return Json.object()
                .put("gate", choice.gate())
                .put("builds", choice.choice().all())
                .put("best", choice.choice().best(), ChoiceJson::candidate)
                .put("next", choice.choice().next(), ChoiceJson::candidate)
                .put("lessDrop", choice.finer(), each -> finer(choice, each))
                .put("rejected", choice.choice().rejected(), ChoiceJson::rejected)
                .build();
    }

    private static Node candidate(Candidate<PickedGate> candidate) {
        return Json.object()
                .put("id", candidate.id())
                .put("price", candidate.price().plain())
                .put("build", GateJson.build(candidate.build()))
                .build();
    }

    /** The price of each further 1/16 in. less that comes after hanging. */
    private static Node finer(GateChoice choice, Finer<PickedGate> finer) {
        Money from = choice.choice().best().get(0).price();
        return Json.object()
                .put("id", finer.candidate().id())
                .put("price", finer.candidate().price().plain())
                .put("moreThanBest", finer.candidate().price().minus(from).plain())
                .put("limitIn", finer.limit())
                .put("afterHangingSoftIn", finer.measure())
                .put("build", GateJson.build(finer.candidate().build()))
                .build();
    }

    private static Node rejected(Rejected rejected) {
        Json.Members members = Json.object()
                .put("id", rejected.id())
                .put("price", rejected.price().plain())
                .put("because", rejected.because().id())
                .put("message", rejected.because().message());
        rejected.because().measure().ifPresent(measure -> members.putOrNull("ratio", measure.ratio()));
        return members.build();
    }
}
