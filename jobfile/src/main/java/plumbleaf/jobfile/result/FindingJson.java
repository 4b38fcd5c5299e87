package plumbleaf.jobfile.result;

import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** Findings with what was measured, the limit, what it rests on, and what would cure it. */
public final class FindingJson {
    private FindingJson() {}

    /** One finding as the result has it. */
    public static Node finding(Finding finding) {
        Json.Members members = Json.object()
                .put("id", finding.id())
                .put("severity", finding.severity().key())
                .put("part", finding.part())
                .put("message", finding.message());
        finding.measure()
                .ifPresent(measure -> members.put("measured", measure.measured())
                        .put("limit", measure.limit())
                        .putOrNull("ratio", measure.ratio())
                        .put("unit", measure.unit()));
        return members.put("basis", finding.basis().words())
                .put("remedies", finding.remedies(), FindingJson::remedy)
                .build();
    }

    private static Node remedy(Remedy remedy) {
        Json.Members members = Json.object().put("id", remedy.id()).put("words", remedy.words());
        members.putOrNull("ratio", remedy.ratio());
        remedy.priceChange().ifPresent(change -> members.put("priceChange", change.plain()));
        remedy.edit().ifPresent(edit -> members.put("edit", edit));
        return members.build();
    }
}
