package plumbleaf.jobfile.result;

import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.sag.ByCause;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HingeForce;
import plumbleaf.engine.sag.IceDrop;
import plumbleaf.engine.sag.LatchLive;
import plumbleaf.engine.sag.LeafSway;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code gates[].sag}, and the forces of the load cases on hinges and posts. */
final class SagJson {
    private SagJson() {}

    private static Json.Members sway(LeafSway sway) {
        return Json.object()
                .put("framePlayIn", sway.framePlay().inches())
                .put("withoutRodsIn", sway.withoutRods().inches())
                .put("twistGustIn", sway.twistGust().inches())
                .put("twistWindIn", sway.twistWind().inches())
                .put("naturalHz", sway.hertz())
                .put(
                        "rods",
                        sway.rods(),
                        rod -> Json.object()
                                .put("member", rod.member())
                                .put("pullLb", rod.pull().pounds())
                                .put("slack", rod.slack())
                                .build());
    }

    /** {@code sag.ice}, where the job asks for it. */
    private static Json.Members ice(IceDrop ice) {
        return Json.object()
                .put("thicknessIn", ice.thickness().inches())
                .put("weightLb", ice.weight().pounds())
                .put("dropIn", ice.drop().inches());
    }

    static Json.Members sag(GateSag sag) {
        ByCause cause = sag.byCause();
        return Json.object()
                .put("totalIn", sag.total().inches())
                .put(
                        "byCause",
                        Json.object()
                                .put("leafIn", cause.leaf().inches())
                                .put("hingeFlexIn", cause.hingeFlex().inches())
                                .put("hingeSlackIn", cause.hingeSlack().inches())
                                .put("postIn", cause.post().inches())
                                .put("footingIn", cause.footing().inches()))
                .put("hangAllowanceIn", sag.hangAllowance().inches())
                .put("sway", sway(sag.sway()))
                .put(
                        "byTime",
                        Json.object()
                                .put("camberIn", sag.byTime().camber().inches())
                                .put("atReleaseIn", sag.byTime().atRelease().inches())
                                .put(
                                        "afterHangingIn",
                                        sag.byTime().afterHanging().total().inches())
                                .put(
                                        "afterHanging",
                                        Json.object()
                                                .put(
                                                        "creepIn",
                                                        sag.byTime()
                                                                .afterHanging()
                                                                .creep()
                                                                .inches())
                                                .put(
                                                        "wearIn",
                                                        sag.byTime()
                                                                .afterHanging()
                                                                .wear()
                                                                .inches())
                                                .put(
                                                        "seasonIn",
                                                        sag.byTime()
                                                                .afterHanging()
                                                                .season()
                                                                .inches())
                                                .put(
                                                        "residualIn",
                                                        sag.byTime()
                                                                .afterHanging()
                                                                .residual()
                                                                .inches())))
                .put("latchLiveIn", sag.latchLive().size().inches())
                .put("latchLiveFrom", sag.latchLive().from())
                .put(
                        "latchLive",
                        Json.object().put("person", live(sag.person())).put("gust", live(sag.gust())))
                .putIfAny("ice", sag.ice().map(drop -> ice(drop).build()))
                .put(
                        "soil",
                        Json.object()
                                .put(
                                        "soft",
                                        Json.object()
                                                .put(
                                                        "totalIn",
                                                        sag.soil().soft().inches()))
                                .put(
                                        "likely",
                                        Json.object()
                                                .put(
                                                        "totalIn",
                                                        sag.soil().likely().inches()))
                                .put(
                                        "stiff",
                                        Json.object()
                                                .put(
                                                        "totalIn",
                                                        sag.soil().stiff().inches())));
    }

    /** {@code D+0.6W closed wind-in}: what a load case is called in keys. */
    static Json.Members caseName(CaseForces forces) {
        return Json.object()
                .put("combination", forces.combination().key())
                .put("leaf", forces.state().key())
                .put("angleDeg", forces.angle().inDegrees())
                .put("wind", forces.wind().key());
    }

    /** The forces on one hinge's place on the post, case by case. */
    static Node hingeCases(String hinge, List<CaseForces> cases) {
        return Json.list(cases, forces -> {
            Json.Members members = caseName(forces);
            for (HingeForce force : forces.hinges()) {
                if (force.id().equals(hinge))
                    members.put("horizontalLb", force.horizontal().pounds())
                            .put("acrossLb", force.across().pounds())
                            .put("verticalLb", force.down().pounds());
            }
            return members.build();
        });
    }

    /** The moments at grade on one of the posts, case by case. */
    static Node postCases(List<CaseForces> cases, boolean hingePost) {
        return Json.list(cases, forces -> {
            BaseAction action = hingePost ? forces.hingePost() : forces.latchPost();
            return caseName(forces)
                    .put("along", action.momentAlong().poundInches())
                    .put("across", action.momentAcross().poundInches())
                    .put("size", action.size().poundInches())
                    .put("torsion", action.torsion().poundInches())
                    .build();
        });
    }

    private static Json.Members live(LatchLive live) {
        return Json.object()
                .put("downIn", live.down().inches())
                .put("awayIn", live.away().inches());
    }
}
