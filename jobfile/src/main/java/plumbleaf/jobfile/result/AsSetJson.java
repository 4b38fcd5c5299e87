package plumbleaf.jobfile.result;

import java.util.List;
import plumbleaf.engine.gate.AsSetFit;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.takeoff.BoltItem;
import plumbleaf.engine.takeoff.LagItem;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** What the crew fits a leaf with: packers between posts as they stand, and bolts by their stack-up. */
final class AsSetJson {
    private AsSetJson() {}

    static Node fit(AsSetFit fit) {
        return Json.object()
                .put("date", fit.reading().date().toString())
                .put("clearIn", fit.clear().inches())
                .put("latchGapsIn", inches(fit.latchGaps()))
                .put("hingeGapsIn", inches(fit.hingeGaps()))
                .put("packers", fit.packers(), AsSetJson::packer)
                .put("misclosureIn", fit.misclosure().inches())
                .build();
    }

    private static Node inches(List<Length> lengths) {
        return Json.numbers(lengths.stream().map(Length::inches).toList());
    }

    private static Node packer(AsSetFit.Packer packer) {
        return Json.object()
                .put("hinge", packer.hinge())
                .put("alongIn", packer.along().inches())
                .put("insideIn", packer.inside().inches())
                .build();
    }

    static Node lag(LagItem lag) {
        return Json.object()
                .put("count", lag.count())
                .put("diameterIn", lag.diameter().inches())
                .put("lengthIn", lag.length().inches())
                .put("leadIn", lag.lead().inches())
                .build();
    }

    static Node bolt(BoltItem bolt) {
        Json.Members members = Json.object()
                .put("where", bolt.where())
                .put("count", bolt.count())
                .put("diameterIn", bolt.stack().size().diameter().inches())
                .put("gripIn", bolt.stack().grip().inches())
                .put("lengthIn", bolt.stack().order().inches())
                .put("drillIn", bolt.drill().inches())
                .put("stickOutIn", bolt.stack().stickOut().inches())
                .put("capNut", bolt.stack().needsCap());
        bolt.sleeve().ifPresent(sleeve -> members.put("sleeveIn", sleeve.inches()));
        return members.build();
    }
}
