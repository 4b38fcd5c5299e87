package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.MemberForce;

/** The joints of a hung leaf: its frame's welds and what carries it at every hinge. */
final class GateJoints {
    private GateJoints() {}

    /** The most used end of a frame's members. */
    private record WeldUse(Member member, MemberForce force, CaseForces worst, double utilisation) {}

    static List<LinkUse> links(HungLeaf hung, Joint joint, Catalogue catalogue) {
        List<LinkUse> links = new ArrayList<>();
        WeldUse weld = frameWeld(hung.gate(), hung.cases(), joint, true);
        links.add(new LinkUse(
                "frame weld",
                weld.member().id(),
                weld.utilisation(),
                HingeJoint.name(weld.worst()),
                new LinkWork(
                        FrameWelds.FORMULA,
                        numbers(weld, joint),
                        FrameWelds.CLAUSE,
                        FrameWelds.lines(weld.member(), weld.force(), joint))));
        for (HingeJoint each : HingeJoints.of(hung, catalogue)) links.add(each.link(hung.cases()));
        return links;
    }

    static List<Finding> findings(HungLeaf hung, Joint joint, Catalogue catalogue, DesignBasis basis) {
        List<Finding> findings = new ArrayList<>();
        findings.add(frameFinding(hung.gate(), hung.cases(), joint, basis));
        List<Finding> all = new ArrayList<>();
        for (HingeJoint each : HingeJoints.of(hung, catalogue)) all.add(each.finding(hung.cases(), basis));
        findings.addAll(worstOfEach(all));
        findings.addAll(WoodPostJoints.findings(hung, basis, fixing -> HingeJoints.size(fixing, catalogue)));
        return findings;
    }

    /** One finding for each check of a part: a post has its wall judged at every hinge. */
    private static Collection<Finding> worstOfEach(List<Finding> all) {
        Map<String, Finding> worst = new LinkedHashMap<>();
        for (Finding each : all) {
            String key = each.id() + " " + each.part();
            Finding before = worst.get(key);
            if (before == null || Ties.isMore(ratio(each), ratio(before))) worst.put(key, each);
        }
        return worst.values();
    }

    private static double ratio(Finding finding) {
        return finding.measure().map(measure -> measure.ratio().orElse(0)).orElse(0.0);
    }

    static Finding frameFinding(HungGate gate, List<CaseForces> cases, Joint joint, DesignBasis basis) {
        String id = gate.leaf().id();
        WeldUse still = frameWeld(gate, cases, joint, false);
        WeldUse windy = frameWeld(gate, cases, joint, true);
        boolean stillFails = still.utilisation() > 1;
        WeldUse told = stillFails ? still : windy;
        return Checked.of(
                "leaf.weld",
                stillFails || basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION,
                id,
                id + ": the weld at the end of " + told.member().id() + " carries "
                        + DecimalText.fixed(told.utilisation(), 2) + " of what it may ("
                        + HingeJoint.name(told.worst()) + "): " + numbers(told, joint) + ".",
                Basis.clause(FrameWelds.CLAUSE),
                Measure.demand(told.utilisation(), 1, ""));
    }

    private static String numbers(WeldUse weld, Joint joint) {
        return DecimalText.whole(FrameWelds.perInch(weld.member(), weld.force(), joint)) + " lb an inch of "
                + DecimalText.whole(FrameWelds.allowable(weld.member().section()));
    }

    private static WeldUse frameWeld(HungGate gate, List<CaseForces> cases, Joint joint, boolean withWind) {
        CaseForces first = cases.get(0);
        WeldUse most = new WeldUse(gate.leaf().members().get(0), first.members().get(0), first, -1);
        for (CaseForces each : cases) {
            if (!withWind && each.combination().hasWind()) continue;
            for (MemberForce force : each.members()) {
                Member member = gate.leaf().member(force.member()).orElseThrow();
                double here = FrameWelds.use(member, force, joint);
                if (Ties.isMore(here, most.utilisation())) most = new WeldUse(member, force, each, here);
            }
        }
        return most;
    }
}
