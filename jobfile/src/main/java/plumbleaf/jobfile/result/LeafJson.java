package plumbleaf.jobfile.result;

import java.util.List;
import plumbleaf.engine.gate.Cope;
import plumbleaf.engine.gate.Crest;
import plumbleaf.engine.gate.Galvanizing;
import plumbleaf.engine.gate.Hole;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafTrim;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Nailer;
import plumbleaf.engine.gate.Panel;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.gate.Weld;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code gates[].leaves[]}: outline, members with their cuts, weight, welds. */
final class LeafJson {
    private LeafJson() {}

    static Node leaf(Leaf leaf) {
        List<Place> corners = leaf.outline().corners();
        Place centre = leaf.weight().centreOfGravity();
        return Json.object()
                .put("id", leaf.id())
                .put("hinge", leaf.hand().hinge().key())
                .put("swing", leaf.hand().swing().key())
                .put("widthIn", leaf.width().inches())
                .put("outline", corners, LeafJson::inPlane)
                .put("members", leaf.members(), LeafJson::member)
                .put("weightLb", leaf.weight().wet().pounds())
                .put("weightDryLb", leaf.weight().dry().pounds())
                .put("frameWeightLb", leaf.weight().frame().pounds())
                .put("hardwareWeightLb", leaf.weight().hardware().pounds())
                .put(
                        "centreOfGravity",
                        Json.object()
                                .put("rIn", centre.r().inches())
                                .put("nIn", centre.n().inches())
                                .put("zIn", centre.z().inches()))
                .put(
                        "diagonalsIn",
                        Json.numbers(
                                List.of(apart(corners.get(0), corners.get(2)), apart(corners.get(1), corners.get(3)))))
                .put("welds", leaf.welds(), LeafJson::weld)
                .put("nailers", leaf.nailers(), LeafJson::nailer)
                .put("picketGapIn", leaf.picketGap().inches())
                .put("pickets", leaf.pickets(), LeafJson::picket)
                .put("trim", leaf.trim(), LeafJson::trim)
                .put("topEdge", topEdge(leaf))
                .put("faceIn2", leaf.outline().face().squareInches())
                .put("panels", leaf.panels(), LeafJson::panel)
                .put("galvanizing", galvanizing(Galvanizing.of(leaf)))
                .build();
    }

    private static Node trim(LeafTrim board) {
        return Json.object()
                .put("use", board.use())
                .put("rail", board.rail())
                .put("widthIn", board.board().width().inches())
                .put("thicknessIn", board.board().thickness().inches())
                .put("longPointIn", board.longPoint().inches())
                .put("endAngleDeg", board.endFromSquare().inDegrees())
                .put("weightLb", board.wet().pounds())
                .build();
    }

    private static Json.Members topEdge(Leaf leaf) {
        Crest crest = leaf.outline().crest();
        return Json.object()
                .put("kind", crest.edge().key())
                .put("curveIn", crest.edge().curve().inches())
                .put("radiusIn", crest.radius(leaf.width()).inches())
                .put("aboveFrameIn", crest.step().inches())
                .put("sagittaIn", crest.sagitta(leaf.width()).inches())
                .put("points", leaf.outline().crestLine(), LeafJson::inPlane);
    }

    private static Node panel(Panel panel) {
        return Json.object()
                .put("id", panel.id())
                .put("widthIn", panel.width().inches())
                .put("heightIn", panel.height().inches())
                .put("areaIn2", panel.area().squareInches())
                .put("edgeIn", panel.edge().inches())
                .put("weightLb", panel.weight().pounds())
                .build();
    }

    private static Json.Members galvanizing(Galvanizing dipped) {
        return Json.object()
                .put("steelLb", dipped.steel().pounds())
                .put("zincLb", dipped.zinc().pounds())
                .put("vents", dipped.vents(), LeafJson::vent)
                .put("hangPoints", dipped.hangPoints(), LeafJson::inPlane);
    }

    private static Node vent(Galvanizing.Vent vent) {
        return Json.object()
                .put("member", vent.member())
                .put("end", vent.end() + 1)
                .put("count", vent.count())
                .put("diameterIn", vent.diameter().inches())
                .put("where", vent.where())
                .build();
    }

    private static Node cope(Cope cope) {
        return Json.object()
                .put("end", cope.end() + 1)
                .put("fromSquareDeg", cope.fromSquare().inDegrees())
                .put("depthIn", cope.depth().inches())
                .put(
                        "template",
                        cope.template(),
                        point -> Json.object()
                                .put("aroundIn", point.around().inches())
                                .put("backIn", point.back().inches())
                                .build())
                .build();
    }

    private static double apart(Place one, Place other) {
        double r = one.r().inches() - other.r().inches();
        double z = one.z().inches() - other.z().inches();
        return Math.sqrt(r * r + z * z);
    }

    private static Node inPlane(Place place) {
        return Json.object()
                .put("rIn", place.r().inches())
                .put("zIn", place.z().inches())
                .build();
    }

    private static Node member(Member member) {
        return Json.object()
                .put("id", member.id())
                .put("name", member.role().words())
                .put("section", member.section().id())
                .put("cutLengthIn", member.cutLength().inches())
                .put("longPointIn", member.longPoint().inches())
                .put("shortPointIn", member.shortPoint().inches())
                .put(
                        "endAnglesDeg",
                        Json.numbers(List.of(
                                member.firstEnd().fromSquare().inDegrees(),
                                member.lastEnd().fromSquare().inDegrees())))
                .put("ends", member.ends().key())
                .put("weightLb", member.weight().pounds())
                .put("holes", member.holes(), LeafJson::hole)
                .put("copes", Cope.of(member), LeafJson::cope)
                .build();
    }

    private static Node hole(Hole hole) {
        Json.Members members = Json.object()
                .put("what", hole.what())
                .put("fromDatumIn", hole.fromDatum().inches());
        hole.diameter().value().ifPresent(diameter -> members.put("diameterIn", diameter.inches()));
        return members.build();
    }

    private static Node weld(Weld weld) {
        return Json.object()
                .put("joint", weld.joint())
                .put("kind", weld.kind().words())
                .put("lengthIn", weld.length().inches())
                .put("where", weld.where())
                .put("runs", weld.runs())
                .put("flush", weld.flush())
                .build();
    }

    private static Node nailer(Nailer nailer) {
        Json.Members members = Json.object()
                .put("rail", nailer.rail())
                .put("lengthIn", nailer.length().inches())
                .put("longPointIn", nailer.longPoint().inches())
                .put("endAngleDeg", nailer.endFromSquare().inDegrees())
                .put("bolts", nailer.bolts(), bolt -> Json.number(bolt.inches()));
        if (nailer.upright()) members.put("upright", true);
        return members.build();
    }

    private static Node picket(Picket picket) {
        Json.Members members = Json.object()
                .put("widthIn", picket.across().inches())
                .put("lengthIn", picket.along().inches());
        if (picket.lying()) members.put("lying", true);
        return members.build();
    }
}
