package plumbleaf.jobfile.result;

import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code cutPlans[]}. */
final class CutPlanJson {
    private static final double NM_PER_INCH = 25_400_000.0;

    private CutPlanJson() {}

    static Node plan(CutPlan plan) {
        return Json.object()
                .put("stock", plan.stock())
                .put("kerfIn", plan.saw().kerfNm() / NM_PER_INCH)
                .put("endTrimIn", plan.saw().endTrimNm() / NM_PER_INCH)
                .put("bars", plan.bars(), CutPlanJson::bar)
                .put("cost", plan.cost().plain())
                .put("lowerBound", plan.lowerBound().plain())
                .put("proven", plan.proven())
                .put("setUps", Json.count(plan.setUps()))
                .put("setUpsAtLeast", Json.count(plan.leastSetUps()))
                .build();
    }

    private static Node bar(CutBar bar) {
        return Json.object()
                .put("lengthIn", bar.lengthNm() / NM_PER_INCH)
                .put("fromOffcut", bar.fromOffcut())
                .put("cuts", bar.cuts(), CutPlanJson::cut)
                .put("offcutIn", bar.offcutNm() / NM_PER_INCH)
                .put("offcutUsable", bar.offcutUsable())
                .build();
    }

    private static Node cut(Cut cut) {
        return Json.object()
                .put("member", cut.piece())
                .put("longPointIn", cut.longPointNm() / NM_PER_INCH)
                .put("flip", cut.flip())
                .put("lapIn", cut.lapNm() / NM_PER_INCH)
                .build();
    }
}
