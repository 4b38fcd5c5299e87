package plumbleaf.jobfile.result;

import java.util.List;
import plumbleaf.engine.gate.Hole;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Nailer;
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
                .put(
                        "endAnglesDeg",
                        Json.numbers(List.of(
                                member.firstEnd().fromSquare().inDegrees(),
                                member.lastEnd().fromSquare().inDegrees())))
                .put("ends", member.ends().key())
                .put("weightLb", member.weight().pounds())
                .put("holes", member.holes(), LeafJson::hole)
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
                .build();
    }

    private static Node nailer(Nailer nailer) {
        return Json.object()
                .put("rail", nailer.rail())
                .put("lengthIn", nailer.length().inches())
                .put("longPointIn", nailer.longPoint().inches())
                .put("endAngleDeg", nailer.endFromSquare().inDegrees())
                .put("bolts", nailer.bolts(), bolt -> Json.number(bolt.inches()))
                .build();
    }

    private static Node picket(Picket picket) {
        return Json.object()
                .put("widthIn", picket.width().inches())
                .put("lengthIn", picket.length().inches())
                .build();
    }
}
