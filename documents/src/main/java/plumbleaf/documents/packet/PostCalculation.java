package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.design.WindWork;
import plumbleaf.engine.footing.LateralWork;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.quantity.WorkedLine;

/** Steps of the calculation book for one post: the wind that reaches it, and how deep its hole must be, each with its numbers put in. */
final class PostCalculation {
    /** A post that nothing pushes needs no depth for it. */
    private static final double NOTHING_IN = 0.01;

    private PostCalculation() {}

    static void velocity(Paper.Builder paper, WindWork work, SiteWind site) {
        boolean inForce = work.directionality() == 1;
        WorkedLine.Open line = WorkedLine.of(
                        "q",
                        "0.00256 \u00d7 Kz \u00d7 Kzt \u00d7 " + (inForce ? "" : "Kd \u00d7 ") + "Ke \u00d7 V\u00b2")
                .put("Kz", work.exposureFactor())
                .put("Kzt", site.topographic())
                .put("Ke", site.elevation())
                .put("V", site.speed().mph(), "mph");
        if (!inForce) line.put("Kd", work.directionality());
        paper.add(new Block.Worked(
                "Velocity pressure at the fence, strength level",
                "ASCE " + site.edition().key() + " Equation 26.10-1, Tables 26.6-1 and 26.10-1",
                "",
                List.of(line.gives(work.velocity().psf(), "psf"))));
    }

    static void wind(Paper.Builder paper, PostDesign post, WindWork work, SiteWind site) {
        double share = Combination.D_W.wind() * work.on().force().pounds();
        double height = work.on().height().inches();
        WorkedLine push = WorkedLine.of("P", "0.6 \u00d7 q \u00d7 G \u00d7 Cf \u00d7 A")
                .put("q", work.velocity().psf(), "psf")
                .put("G", work.gust())
                .put("Cf", work.coefficient())
                .put("A", work.face().inSquareFeet(), "ft\u00b2")
                .gives(share, "lb");
        paper.add(new Block.Worked(
                "Wind of the fence beside " + post.id() + ", half of each bay, 0.6 W; case "
                        + work.on().windCase(),
                "ASCE " + site.edition().key()
                        + (work.ofWall() ? " 29.3.1, Figure 29.3-1, 29.7, 2.4.1" : " 29.4, Table 29.4-2, 2.4.1"),
                "A its face, Cf its mean over the share"
                        + (work.ofWall() ? ", raised where the whole face would get under 16 psf" : "")
                        + "; z the height of the resultant; M at grade",
                List.of(
                        push,
                        WorkedLine.of("M", "P \u00d7 z")
                                .put(push)
                                .put("z", height, "in.")
                                .gives(share * height, "lb-in"))));
    }

    /** Every depth that lateral load asks for where there is any, the binding one and the one that is not. */
    static void depths(Paper.Builder paper, PostDesign post, int ibcClass) {
        post.footing()
                .ifPresent(footing -> footing.needs()
                        .forEach(need -> need.lateral()
                                .filter(work -> work.below().inches() > NOTHING_IN)
                                .ifPresent(work -> paper.add(depth(
                                        "Depth for lateral load",
                                        work,
                                        need.binds() ? "" : "; not binding on the customary basis",
                                        ibcClass)))));
    }

    /**
     * The code's formula with the numbers of one case put in. S1 and S3 hold the depth that they give.
     *
     * @param more said of its depth
     */
    static Block depth(String what, LateralWork work, String more, int ibcClass) {
        double pushLb = work.worst().action().push().pounds();
        return new Block.Worked(
                what + ", " + work.worst().name() + more,
                clause(work, ibcClass, pushLb),
                "S lateral bearing per foot of depth, b width of the hole; d is found by trial, and gives itself again here",
                lines(work));
    }

    private static String clause(LateralWork work, int ibcClass, double pushLb) {
        return "IBC 2021 " + (work.slab() ? "1807.3.2.2, Equation 18-3" : "1807.3.2.1, Equation 18-1")
                + (work.slab() || pushLb >= 1 ? "" : " with P going to nothing")
                + "; Table 1806.2 class " + ibcClass
                + (work.doubled() ? ", doubled by 1806.3.4" : "");
    }

    private static List<WorkedLine> lines(LateralWork work) {
        BaseAction action = work.worst().action();
        List<WorkedLine> lines = new ArrayList<>();
        double looseFt = work.soil().looseTop().inFeet();
        double pushLb = action.push().pounds();
        double momentLbFt = work.moment().inPoundFeet();
        double belowFt = work.below().inFeet();
        double capped = Math.min(belowFt, 12);
        double soilPsf = work.soil().perFoot().psf();
        if (looseFt > 0)
            lines.add(WorkedLine.of("M", "Mg + P \u00d7 l")
                    .put("Mg", action.size().inPoundFeet(), "lb-ft")
                    .put("P", pushLb, "lb")
                    .put("l", looseFt, "ft")
                    .note("about the foot of the loose top")
                    .gives(momentLbFt, "lb-ft"));
        boolean byMoment = work.slab() || pushLb < 1;
        WorkedLine bearing = WorkedLine.of(work.slab() ? "S3" : "S1", work.slab() ? "S \u00d7 d" : "S \u00d7 d / 3")
                .put("S", soilPsf, "psf")
                .put("d", capped, "ft")
                .note("d in it 12 ft at most")
                .gives(work.slab() ? soilPsf * capped : soilPsf * capped / 3, "psf");
        lines.add(bearing);
        if (byMoment) lines.add(byMoment(work, bearing, momentLbFt, belowFt));
        else lines.addAll(byPush(work, bearing, pushLb, momentLbFt, belowFt));
        WorkedLine.Open depth = WorkedLine.of("depth", looseFt > 0 ? "12 \u00d7 (d + l)" : "12 \u00d7 d")
                .put("d", belowFt, "ft");
        if (looseFt > 0) depth.put("l", looseFt, "ft").note("l the loose top");
        lines.add(depth.gives(work.depth().inches(), "in."));
        return lines;
    }

    private static WorkedLine byMoment(LateralWork work, WorkedLine bearing, double momentLbFt, double belowFt) {
        return WorkedLine.of(
                        "d",
                        work.slab()
                                ? "sqrt(4.25 \u00d7 M / (S3 \u00d7 b))"
                                : "sqrt(0.25 \u00d7 4.36 \u00d7 2.34 \u00d7 M / (S1 \u00d7 b))")
                .put("M", momentLbFt, "lb-ft")
                .put(bearing)
                .put("b", work.width().inFeet(), "ft")
                .gives(belowFt, "ft");
    }

    private static List<WorkedLine> byPush(
            LateralWork work, WorkedLine bearing, double pushLb, double momentLbFt, double belowFt) {
        double a = 2.34 * pushLb / (bearing.value() * work.width().inFeet());
        WorkedLine area = WorkedLine.of("A", "2.34 \u00d7 P / (S1 \u00d7 b)")
                .put("P", pushLb, "lb")
                .put(bearing)
                .put("b", work.width().inFeet(), "ft")
                .gives(a, "ft");
        WorkedLine height = WorkedLine.of("h", "M / P")
                .put("M", momentLbFt, "lb-ft")
                .put("P", pushLb, "lb")
                .gives(momentLbFt / pushLb, "ft");
        return List.of(
                area,
                height,
                WorkedLine.of("d", "0.5 \u00d7 A \u00d7 (1 + sqrt(1 + 4.36 \u00d7 h / A))")
                        .put(area)
                        .put(height)
                        .gives(belowFt, "ft"));
    }
}
