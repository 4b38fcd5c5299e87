package plumbleaf.jobfile.result;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HingeUse;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.design.SagLimits;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.gate.Regrade;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Release;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.takeoff.BoltItem;
import plumbleaf.engine.takeoff.LagItem;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code gates[]}: build, hand, leaves, swing, sag, forces, load path. */
final class GateJson {
    private GateJson() {}

    static Node gate(GateDesign gate, Design design) {
        GatePlan plan = gate.plan();
        Json.Members members = Json.object()
                .put("id", gate.id())
                .put("run", gate.asked().run())
                .put("kind", kindKey(gate.asked().kind()))
                .put("hands", plan.hands(), GateJson::hand)
                .put("handSentence", plan.sentence())
                .put("release", releaseKey(gate.asked().release()))
                .put("stationIn", plan.opening().station().inches())
                .put("openingIn", plan.opening().clear().inches())
                .put("gradePct", plan.grade().inPercent())
                .put("pinElevationIn", plan.pinElevation().inches())
                .put("build", build(gate.build()))
                .put("leaves", plan.leaves(), LeafJson::leaf);
        plan.swing().ifPresent(swing -> members.put("swing", SwingJson.swing(swing, ofGate(gate, design))));
        members.put(
                "everyHand",
                plan.everyHand(),
                (Swing swing) -> SwingJson.hand(swing).build());
        if (gate.hung().size() == 1) hung(gate, gate.hung().get(0), design, members);
        if (gate.hung().size() == 2) members.put("hung", gate.hung(), leaf -> leafOfPair(gate, leaf, design));
        gate.pair().ifPresent(pair -> members.put("meeting", MeetingJson.meeting(pair)));
        plan.slide()
                .ifPresent(slide -> members.put(
                        "slide",
                        gate.slide()
                                .map(carried -> SlideJson.carried(slide, carried, design))
                                .orElseGet(() -> SlideJson.plan(slide))));
        members.put("regrades", plan.regrades(), GateJson::regrade);
        members.put("asSetFits", plan.fits(), AsSetJson::fit);
        members.put("bolts", bolts(gate), AsSetJson::bolt);
        List<LagItem> lags = lags(gate);
        if (!lags.isEmpty()) members.put("lagScrews", lags, AsSetJson::lag);
        return members.put("loadPath", gate.loadPath(), GateJson::link).build();
    }

    /** What the whole design says of a gate, or of a leaf of a pair: its remedies have their price there. */
    private static List<Finding> ofGate(GateDesign gate, Design design) {
        boolean single = gate.plan().hangs().size() == 1;
        return design.findings().stream()
                .filter(finding -> finding.part().equals(gate.id())
                        || (!single && gate.plan().hang(finding.part()).isPresent()))
                .toList();
    }

    /** A leaf of a pair, with all that a single gate has on its own level. */
    private static Node leafOfPair(GateDesign gate, HungLeaf hung, Design design) {
        LeafHang hang = gate.plan().hang(hung.id()).orElseThrow();
        List<Finding> own = design.findings().stream()
                .filter(finding -> finding.part().equals(hung.id()))
                .toList();
        Json.Members members = Json.object()
                .put("leaf", hung.id())
                .put("gradePct", hang.grade().inPercent())
                .put("pinElevationIn", hang.pinElevation().inches())
                .put("swing", SwingJson.swing(hang.swing(), own))
                .put("sag", sag(hung))
                .put("hinges", hung.hinges(), hinge -> hinge(hinge, hung))
                .put("hingePost", post(hung.post(), hung, design, true));
        design.post(hung.post()).ifPresent(post -> members.put("footings", footings(post, hung.sag())));
        int at = gate.hung().indexOf(hung);
        gate.pair()
                .filter(pair -> pair.rated().size() > at)
                .ifPresent(pair ->
                        members.put("ratedGustMph", PostJson.rated(pair.rated().get(at))));
        return members.build();
    }

    private static Node regrade(Regrade cut) {
        return Json.object()
                .put("part", cut.part())
                .put("soilFt3", cut.soil().cubicFeet())
                .put("deepestIn", cut.deepest().inches())
                .put("fillFt3", cut.fill().cubicFeet())
                .put("highestIn", cut.highest().inches())
                .build();
    }

    private static String kindKey(GateKind kind) {
        return kind.match(swing -> "swing", pair -> "pair", slide -> "slide", flagged -> "flagged");
    }

    private static String releaseKey(Release release) {
        return release.match(priced -> "priced", hold -> "hold", released -> "released");
    }

    private static void hung(GateDesign gate, HungLeaf hung, Design design, Json.Members members) {
        members.put("sag", sag(hung))
                .put("hinges", hung.hinges(), hinge -> hinge(hinge, hung))
                .put("hingePost", post(gate.hingePost(), hung, design, true))
                .put("latchPost", post(gate.latchPost(), hung, design, false));
        design.post(gate.hingePost()).ifPresent(post -> members.put("footings", footings(post, hung.sag())));
    }

    private static Node hand(Hand hand) {
        return Json.object()
                .put("hinge", hand.hinge().key())
                .put("swing", hand.swing().key())
                .build();
    }

    static Json.Members build(PickedGate build) {
        Json.Members members = Json.object();
        build.hanging().ifPresent(hanging -> {
            members.put("hinge", hanging.hinge());
            hanging.side().ifPresent(side -> members.put("hingeSide", side.key()));
        });
        return members.put("frame", build.frame().id())
                .put("flat", build.frame().depth().compareTo(build.frame().width()) < 0)
                .put("braces", build.bracing().diagonals())
                .put("bracing", build.bracing().key())
                .put("joint", build.joint().key())
                .put("hingePost", build.hingePost().id())
                .put("latchPost", build.latchPost().id())
                .put("holeDiameterIn", build.hole().diameter().inches())
                .put("depthIn", build.hole().depth().inches());
    }

    private static Json.Members sag(HungLeaf hung) {
        GateSag sag = hung.sag();
        SagLimits limits = hung.limits();
        double after = Math.max(0, sag.afterHangingSoft().inches());
        double released = Math.max(0, sag.releaseSoft().inches());
        return SagJson.sag(sag)
                .put("afterHangingSoftIn", sag.afterHangingSoft().inches())
                .put("dryRiseIn", hung.dryRise().inches())
                .put(
                        "limits",
                        Json.object()
                                .put("latch", limit(after, limits.latch().inches()))
                                .put("eye", limit(after, limits.eye().inches()))
                                .put("release", limit(released, limits.release().inches())));
    }

    private static Json.Members limit(double measuredIn, double limitIn) {
        Json.Members members = Json.object().put("measuredIn", measuredIn).put("limitIn", limitIn);
        return limitIn > 0 ? members.put("ratio", measuredIn / limitIn) : members.put("ratio", Json.nothing());
    }

    private static Node hinge(HingeUse hinge, HungLeaf hung) {
        return Json.object()
                .put("id", hinge.id())
                .put("zIn", hinge.z().inches())
                .put("horizontalLb", hinge.horizontal().pounds())
                .put("capacityLb", hinge.capacity().pounds())
                .putOrNull("utilisation", hinge.utilisation())
                .put("worstCase", SagJson.caseName(hinge.worst()))
                .put("cases", SagJson.hingeCases(hinge.id(), hung.cases()))
                .build();
    }

    private static Json.Members post(String id, HungLeaf hung, Design design, boolean hingePost) {
        Json.Members members =
                Json.object().put("post", id).put("momentAtGradeLbIn", SagJson.postCases(hung.cases(), hingePost));
        design.post(id).ifPresent(post -> members.put("utilisation", post.utilisation()));
        if (hingePost && Double.isFinite(hung.amplification())) members.put("amplification", hung.amplification());
        return members;
    }

    /** Both posts of a gate stand in the same hole; its turn and the next six inches, where anyone digs, are those of the hinge post. */
    private static Json.Members footings(PostDesign post, GateSag sag) {
        Json.Members members = Json.object().put("diameterIn", post.hole().inches());
        PostJson.footing(post, members).put("rotationRad", sag.footingTurn().radians());
        sag.sixDeeper()
                .ifPresent(deeper -> members.put("nextSixInches", Json.object().put("dropIn", deeper.inches())));
        return members;
    }

    private static Node link(LinkUse link) {
        return Json.object()
                .put("link", link.link())
                .put("part", link.part())
                .put("utilisation", link.utilisation())
                .put("case", link.inCase())
                .put("formula", link.work().formula())
                .put("numbers", link.work().numbers())
                .put("clause", link.work().clause())
                .build();
    }

    private static List<LagItem> lags(GateDesign gate) {
        List<LagItem> lags = new ArrayList<>();
        for (Leaf leaf : gate.plan().leaves())
            LagItem.of(leaf, gate.partsOf(leaf)).ifPresent(lags::add);
        return lags;
    }

    private static List<BoltItem> bolts(GateDesign gate) {
        List<BoltItem> bolts = new ArrayList<>();
        for (Leaf leaf : gate.plan().leaves()) bolts.addAll(BoltItem.of(leaf, gate.partsOf(leaf)));
        return bolts;
    }
}
