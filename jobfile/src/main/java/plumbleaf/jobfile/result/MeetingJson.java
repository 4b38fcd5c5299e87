package plumbleaf.jobfile.result;

import plumbleaf.engine.design.PairDesign;
import plumbleaf.engine.sag.MeetingForces;
import plumbleaf.engine.strength.RodBending;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code gates[].meeting} of a pair: what holds its closed leaves where they meet. */
final class MeetingJson {
    private MeetingJson() {}

    static Json.Members meeting(PairDesign pair) {
        RodBending rod = pair.rod();
        return Json.object()
                .put("active", pair.active().key())
                .put("groundElevationIn", pair.place().ground().inches())
                .put(
                        "frameAboveGroundIn",
                        Json.object()
                                .put("a", pair.place().frameA().inches())
                                .put("b", pair.place().frameB().inches()))
                .put("topMissIn", pair.place().topMiss().inches())
                .put("stripIn", pair.asked().strip().inches())
                .put("rods", pair.rods())
                .put(
                        "rod",
                        Json.object()
                                .put("id", rod.rod().id())
                                .put("diameterIn", rod.rod().diameter().inches())
                                .put("playIn", rod.rod().playEachWay().inches())
                                .put("exposedIn", rod.exposed().inches())
                                .put("pushLb", rod.push().pounds())
                                .put("momentLbIn", rod.moment().poundInches())
                                .put("stressPsi", rod.stress().psi())
                                .put("allowableLbIn", rod.allowable().poundInches())
                                .put("utilisation", rod.utilisation()))
                .put(
                        "sleeve",
                        Json.object()
                                .put("aboveIn", pair.asked().sleeveAbove().inches())
                                .put("holeDiameterIn", pair.sleeve().diameter().inches())
                                .put("depthIn", pair.sleeve().depth().inches())
                                .put("depthNeededIn", pair.sleeveNeeded().inches())
                                .put("pushLb", pair.sleevePush().pounds()))
                .put("stopIn", pair.asked().stop().inches())
                .put("topKeeper", pair.asked().topKeeper())
                .put("topServiceIn", pair.topInService().inches())
                .put("topWindIn", pair.topInWind().inches())
                .put("dropDifferenceIn", pair.dropDifference().inches())
                .put("slamLb", pair.slam().pounds())
                .put("cases", pair.forces(), MeetingJson::forces);
    }

    private static Node forces(MeetingForces each) {
        return Json.object()
                .put("combination", each.combination().key())
                .put("wind", each.wind().key())
                .put("rodALb", each.rodA().pounds())
                .put("rodBLb", each.rodB().pounds())
                .put("latchLb", each.latch().pounds())
                .put("stripFootLb", each.stripFoot().pounds())
                .put("stripTopLb", each.stripTop().pounds())
                .put("stopALb", each.stopA().pounds())
                .put("stopBLb", each.stopB().pounds())
                .put("keeperALb", each.keeperA().pounds())
                .put("keeperBLb", each.keeperB().pounds())
                .put("topAIn", each.topA().inches())
                .put("topBIn", each.topB().inches())
                .build();
    }
}
