package plumbleaf.jobfile.result;

import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayFill;
import plumbleaf.engine.line.BayPickets;
import plumbleaf.engine.line.FencePicket;
import plumbleaf.engine.line.RailPiece;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code bays[]}. */
final class BayJson {
    private BayJson() {}

    static Node bay(Bay bay) {
        return Json.object()
                .put("id", bay.id())
                .put("run", bay.run())
                .put("from", bay.from())
                .put("to", bay.to())
                .put("startIn", bay.start().inches())
                .put("levelLengthIn", bay.level().inches())
                .put("slopeLengthIn", bay.slopeLength().inches())
                .put("groundGradePct", bay.groundGrade().inPercent())
                .put("gradePct", bay.grade().inPercent())
                .put("fit", bay.fit().key())
                .put("stepIn", bay.step().inches())
                .put(
                        "topElevationsIn",
                        Json.object()
                                .put("from", bay.topFrom().inches())
                                .put("to", bay.topTo().inches()))
                .put(
                        "bottomElevationsIn",
                        Json.object()
                                .put("from", bay.bottomFrom().inches())
                                .put("to", bay.bottomTo().inches()))
                .put("rails", bay.rails(), BayJson::rail)
                .put("infill", infill(bay.fill()))
                .put("pickets", pickets(bay.pickets()))
                .put("groundGapMinIn", bay.groundGapMin().inches())
                .put("groundGapMaxIn", bay.groundGapMax().inches())
                .put("heightMaxIn", bay.heightMax().inches())
                .build();
    }

    private static Node rail(RailPiece rail) {
        return Json.object()
                .put("cutLengthIn", rail.cut().inches())
                .put("longPointIn", rail.longPoint().inches())
                .put("endAnglesDeg", rail.endsFromSquare(), angle -> Json.number(angle.inDegrees()))
                .build();
    }

    private static Json.Members infill(BayFill fill) {
        return fill.match(
                open -> Json.object().put("kind", "open"),
                pickets -> Json.object()
                        .put("kind", "pickets")
                        .put("frontLayer", (int) pickets.row().pickets().stream()
                                .filter(picket -> picket.layer() == FencePicket.Layer.FRONT)
                                .count())
                        .put("sightThroughDeg", pickets.sight().inDegrees()),
                lying -> Json.object()
                        .put("kind", "lying")
                        .put("boards", lying.boards(), BayJson::rail)
                        .put("gapIn", lying.gap().inches())
                        .put("ripIn", lying.rip().inches())
                        .put("gapDriestIn", lying.gapDriest().inches())
                        .put("gapWettestIn", lying.gapWettest().inches()),
                panel -> Json.object()
                        .put("kind", "panel")
                        .put("lengthIn", panel.length().inches())
                        .put("cut", panel.cut())
                        .put("panelPickets", panel.pickets())
                        .put("clearIn", panel.clear().inches())
                        .put("endGapIn", panel.end().inches())
                        .put("swivelDeg", panel.swivel().inDegrees()),
                fabric -> Json.object()
                        .put("kind", "fabric")
                        .put("lengthIn", fabric.length().inches())
                        .put("heightIn", fabric.height().inches())
                        .put("openingIn", fabric.opening().inches()),
                mesh -> Json.object()
                        .put("kind", "mesh")
                        .put("sheetsIn", mesh.sheets(), sheet -> Json.number(sheet.inches()))
                        .put("heightIn", mesh.height().inches())
                        .put("openingIn", mesh.opening().inches()));
    }

    private static Json.Members pickets(BayPickets pickets) {
        return Json.object()
                .put("count", pickets.count())
                .put("gapIn", pickets.gap().inches())
                .put("ripIn", pickets.rip().inches())
                .put("gapDriestIn", pickets.gapDriest().inches())
                .put("gapWettestIn", pickets.gapWettest().inches())
                .put(
                        "lengthsIn",
                        pickets.pickets(),
                        picket -> Json.number(picket.length().inches()));
    }
}
