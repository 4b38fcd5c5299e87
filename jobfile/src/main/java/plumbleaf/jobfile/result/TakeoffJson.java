package plumbleaf.jobfile.result;

import plumbleaf.engine.takeoff.Cause;
import plumbleaf.engine.takeoff.OtherWay;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code takeoff[]}: what is bought, how it is sold, and which parts it is for. */
final class TakeoffJson {
    private TakeoffJson() {}

    static Node line(TakeoffLine line) {
        Json.Members members = Json.object().put("neededFor", line.need().work());
        line.need()
                .day()
                .value()
                .ifPresent(day -> members.put("neededBy", TextKind.DATE.write().apply(day)));
        return members.put("group", line.group().key())
                .put("item", line.item())
                .put("name", line.sold().name())
                .put("supplier", line.sold().supplier())
                .put("net", line.net())
                .put("netUnit", line.sold().of().key())
                .put("withWaste", line.withWaste())
                .put("units", Json.count(line.units()))
                .put("unit", line.sold().unit().key())
                .put("cost", line.cost().plain())
                .put("weightLb", line.weight().pounds())
                .put("cut", line.cut())
                .put("fromYard", line.fromYard())
                .put("others", line.others(), TakeoffJson::other)
                .put("causes", line.causes(), TakeoffJson::cause)
                .build();
    }

    private static Node other(OtherWay other) {
        return Json.object()
                .put("name", other.sold().name())
                .put("supplier", other.sold().supplier())
                .put("units", Json.count(other.units()))
                .put("unit", other.sold().unit().key())
                .put("cost", other.cost().plain())
                .put("cheaperFrom", other.cheaperFrom())
                .put("lookedTo", other.lookedTo())
                .build();
    }

    private static Node cause(Cause cause) {
        return Json.object()
                .put("part", cause.part())
                .put("quantity", cause.quantity())
                .build();
    }
}
