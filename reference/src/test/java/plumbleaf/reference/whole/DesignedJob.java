package plumbleaf.reference.whole;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.footing.DepthNeed;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.ground.GroundPoint;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HingeForce;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** What a design says, number by number, under plain names that a second program can use too. */
final class DesignedJob {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();

    private final Map<String, Double> numbers = new LinkedHashMap<>();

    private DesignedJob() {}

    /** Every number of a job's design, by name. */
    static Map<String, Double> numbers(String file, String text) {
        Job job = JobFile.read(file, text, CATALOGUE).job().orElseThrow();
        Standards standards = StandardTables.load().standards();
        Design design = Designs.of(job, CATALOGUE, standards, PriceBooks.of(job).orElseThrow(), new ProvenCutPlanner());
        DesignedJob designed = new DesignedJob();
        for (GroundPoint shot : design.ground().points())
            designed.put("shot." + shot.shot() + ".elevationIn", shot.point().zIn());
        design.posts().forEach(designed::post);
        design.layout().bays().forEach(designed::bay);
        design.gates().forEach(designed::gate);
        return designed.numbers;
    }

    private void put(String name, double value) {
        numbers.put(name, value);
    }

    private void post(PostDesign post) {
        String at = "post." + post.id() + ".";
        put(at + "stationIn", post.post().station().inches());
        put(at + "gradeElevationIn", post.post().grade().inches());
        put(at + "concreteFt3", post.concrete().volume().cubicFeet());
        post.footing().ifPresent(footing -> {
            for (DepthNeed need : footing.needs())
                put(at + "depth." + need.cause().key() + "In", need.depth().inches());
        });
        put(at + "bending", post.check().utilisation());
        for (CombinedAction action : post.actions()) {
            String to = at + action.combination().key() + "." + action.state() + "." + action.wind() + ".";
            put(to + "acrossLb", action.action().across().pounds());
            put(to + "momentAcrossLbIn", action.action().momentAcross().poundInches());
            put(to + "momentAlongLbIn", action.action().momentAlong().poundInches());
        }
    }

    private void bay(Bay bay) {
        String at = "bay." + bay.id() + ".";
        put(at + "levelLengthIn", bay.level().inches());
        put(at + "gradePct", bay.grade().inPercent());
        put(at + "railCutLengthIn", bay.rails().get(0).cut().inches());
        put(at + "railEndDeg", bay.rails().get(0).endsFromSquare().get(0).inDegrees());
    }

    private void gate(GateDesign gate) {
        for (Leaf leaf : gate.plan().leaves()) leaf(leaf);
        for (Swing swing : gate.plan().everyHand()) {
            String at = "swing." + swing.hand().hinge().key() + "-"
                    + swing.hand().swing().key() + ".";
            put(at + "minClearanceIn", swing.least().clear().inches());
            put(at + "atRadiusIn", swing.least().atRadius().inches());
            put(at + "atAngleDeg", swing.least().atAngle().inDegrees());
            put(at + "maxAngleDeg", swing.maxAngle().inDegrees());
        }
        gate.hung().forEach(this::hung);
    }

    private void leaf(Leaf leaf) {
        put("leaf.widthIn", leaf.width().inches());
        for (int i = 0; i < 4; i++) {
            put("leaf.corner" + i + ".rIn", leaf.outline().corners().get(i).r().inches());
            put("leaf.corner" + i + ".zIn", leaf.outline().corners().get(i).z().inches());
        }
        for (Member member : leaf.members()) {
            String at = "leaf." + member.id() + ".";
            put(at + "cutLengthIn", member.cutLength().inches());
            put(at + "weightLb", member.weight().pounds());
        }
        put("leaf.weightLb", leaf.weight().wet().pounds());
        put("leaf.weightDryLb", leaf.weight().dry().pounds());
        put("leaf.centreOfGravity.rIn", leaf.weight().centreOfGravity().r().inches());
        put("leaf.centreOfGravity.nIn", leaf.weight().centreOfGravity().n().inches());
        put("leaf.centreOfGravity.zIn", leaf.weight().centreOfGravity().z().inches());
    }

    private void hung(HungLeaf hung) {
        GateSag sag = hung.sag();
        put("sag.totalIn", sag.total().inches());
        put("sag.leafIn", sag.byCause().leaf().inches());
        put("sag.hingeFlexIn", sag.byCause().hingeFlex().inches());
        put("sag.hingeSlackIn", sag.byCause().hingeSlack().inches());
        put("sag.postIn", sag.byCause().post().inches());
        put("sag.footingIn", sag.byCause().footing().inches());
        put("sag.softIn", sag.soil().soft().inches());
        put("sag.likelyIn", sag.soil().likely().inches());
        put("sag.stiffIn", sag.soil().stiff().inches());
        for (CaseForces forces : hung.cases()) {
            if (forces.state() != LeafState.CLOSED) continue;
            String at = forces.combination().key() + "." + forces.wind().key() + ".";
            List<HingeForce> hinges = forces.hinges();
            for (int i = 0; i < hinges.size(); i++) {
                put(
                        "hinge" + (i + 1) + "." + at + "horizontalLb",
                        hinges.get(i).horizontal().pounds());
                put(
                        "hinge" + (i + 1) + "." + at + "acrossLb",
                        hinges.get(i).across().pounds());
                put(
                        "hinge" + (i + 1) + "." + at + "verticalLb",
                        hinges.get(i).down().pounds());
            }
            put("hingePost." + at + "acrossLb", forces.hingePost().across().pounds());
            put("latchPost." + at + "acrossLb", forces.latchPost().across().pounds());
            put(
                    "hingePost." + at + "momentAlongLbIn",
                    forces.hingePost().momentAlong().poundInches());
            put(
                    "hingePost." + at + "momentAcrossLbIn",
                    forces.hingePost().momentAcross().poundInches());
            put(
                    "latchPost." + at + "momentAcrossLbIn",
                    forces.latchPost().momentAcross().poundInches());
        }
    }
}
