package plumbleaf.jobfile.result;

import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.gate.Clearance;
import plumbleaf.engine.gate.Swing;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code gates[].swing}: clearance over the ground, how far it opens, and what would help. */
final class SwingJson {
    private SwingJson() {}

    /** @param findings of the gate, whose remedies belong to the swing where their id begins with {@code swing.} */
    static Node swing(Swing swing, List<Finding> findings) {
        return hand(swing)
                .put("curve", swing.curve(), SwingJson::point)
                .put("remedies", remedies(findings), remedy -> {
                    Json.Members members = Json.object().put("id", remedy.id()).put("words", remedy.words());
                    members.putOrNull("ratio", remedy.ratio());
                    remedy.priceChange().ifPresent(change -> members.put("priceChange", change.plain()));
                    remedy.edit().ifPresent(edit -> members.put("edit", edit));
                    return members.build();
                })
                .build();
    }

    private static List<Remedy> remedies(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.id().startsWith("swing."))
                .flatMap(finding -> finding.remedies().stream())
                .distinct()
                .toList();
    }

    /** What a hand's swing comes to, without its curve. */
    static Json.Members hand(Swing swing) {
        return Json.object()
                .put("hinge", swing.hand().hinge().key())
                .put("swing", swing.hand().swing().key())
                .put("opensDeg", swing.opens().inDegrees())
                .put("minClearanceIn", swing.least().clear().inches())
                .put("atRadiusIn", swing.least().atRadius().inches())
                .put("atAngleDeg", swing.least().atAngle().inDegrees())
                .put("minOfFacesIn", swing.leastOfFaces().clear().inches())
                .put("runningMinIn", swing.running().clear().inches())
                .put("maxAngleDeg", swing.maxAngle().inDegrees())
                .put("limitedBy", swing.limitedBy().key())
                .put("shotErrorIn", swing.shotError().inches());
    }

    private static Node point(Clearance clearance) {
        return Json.object()
                .put("angleDeg", clearance.atAngle().inDegrees())
                .put("clearanceIn", clearance.clear().inches())
                .put("atRadiusIn", clearance.atRadius().inches())
                .build();
    }
}
