package plumbleaf.jobfile.result;

import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.SlideDesign;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.gate.SlideShape;
import plumbleaf.engine.gate.SlideTravel;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.sag.RollerForce;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.sag.SlideSag;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code gates[].slide}: the sizes of a slide leaf, its way over the ground, and how its rollers, posts and receiver carry it. */
final class SlideJson {
    private SlideJson() {}

    static Json.Members plan(SlidePlan plan) {
        SlideShape shape = plan.shape();
        Offset half = Offset.inches(plan.leaf().make().tube().width().inches() / 2);
        return Json.object()
                .put("slides", plan.kind().opensTo().key())
                .put("beside", plan.kind().spec().beside().key())
                .put("rollers", plan.rollers().id())
                .put("tailIn", shape.tail().inches())
                .put("overlapIn", shape.overlap().inches())
                .put("frontRollersIn", shape.frontRollers().inches())
                .put("rearRollersIn", shape.rearRollers().inches())
                .put("spacingIn", shape.spacing().inches())
                .put("travelIn", shape.travel().inches())
                .put("acrossIn", shape.across().inches())
                .put("envelope", plan.envelope(half), SlideJson::point)
                .put("way", way(plan.travel()));
    }

    private static Json.Members way(SlideTravel travel) {
        return Json.object()
                .put("minClearanceIn", travel.least().inches())
                .put("atIn", travel.at().inches())
                .put("runningMinIn", travel.running().inches())
                .put("laterRiseIn", travel.laterRise().inches())
                .put("closedMinIn", travel.closedLeast().inches())
                .put("closedMaxIn", travel.closedLargest().inches())
                .put("ground", travel.ground(), SlideJson::stretch);
    }

    private static Node stretch(SlideTravel.Stretch stretch) {
        return Json.object()
                .put("fromIn", stretch.from().inches())
                .put("toIn", stretch.to().inches())
                .put("startIn", stretch.start().inches())
                .put("endIn", stretch.end().inches())
                .put("extrapolated", stretch.extrapolated())
                .build();
    }

    private static Node point(PlanPoint point) {
        return Json.object().put("xIn", point.xIn()).put("yIn", point.yIn()).build();
    }

    static Json.Members carried(SlidePlan plan, SlideDesign slide, Design design) {
        SlideSag sag = slide.sag();
        Json.Members members = plan(plan)
                .put("frontPost", slide.frontPost())
                .put("rearPost", slide.rearPost())
                .put("receiverPost", slide.receiverPost())
                .put("nose", nose(sag))
                .put("rollingLb", slide.rolling().pounds())
                .put("startingLb", slide.starting().pounds())
                .put("stopLb", slide.stop().pounds())
                .put("cases", slide.cases(), SlideJson::each);
        design.post(slide.rearPost()).ifPresent(post -> {
            Json.Members footing = Json.object().put("diameterIn", post.hole().inches());
            members.put("rearFooting", PostJson.footing(post, footing));
        });
        return members;
    }

    private static Json.Members nose(SlideSag sag) {
        return Json.object()
                .put("totalIn", sag.total().inches())
                .put(
                        "byCause",
                        Json.object()
                                .put("frameIn", sag.byCause().frame().inches())
                                .put("playIn", sag.byCause().play().inches())
                                .put("postsIn", sag.byCause().posts().inches())
                                .put("footingsIn", sag.byCause().footings().inches()))
                .put("camberIn", sag.camber().inches())
                .put("atSettingIn", sag.atSetting().inches())
                .put("rearLowerIn", sag.rearLower().inches())
                .put("afterSettingIn", sag.afterSetting().inches())
                .put("softIn", sag.softly().inches())
                .put("stiffIn", sag.stiffly().inches())
                .put("personIn", sag.person().inches())
                .put("acrossIn", sag.across().inches())
                .put("tailIn", sag.tail().inches());
    }

    private static Node each(SlideCase each) {
        return Json.object()
                .put("combination", each.combination().key())
                .put("leaf", each.state().key())
                .put("travelIn", each.travel().inches())
                .put("wind", each.wind().key())
                .put("front", rollers(each.front()))
                .put("rear", rollers(each.rear()))
                .put("receiverLowLb", each.receiverLowLb())
                .put("receiverHighLb", each.receiverHighLb())
                .build();
    }

    private static Json.Members rollers(RollerForce force) {
        return Json.object()
                .put("downLb", force.down().pounds())
                .put("acrossLowLb", force.acrossLow().pounds())
                .put("acrossHighLb", force.acrossHigh().pounds());
    }
}
