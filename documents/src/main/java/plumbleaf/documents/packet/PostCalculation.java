package plumbleaf.documents.packet;

import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.design.WindWork;
import plumbleaf.engine.footing.LateralWork;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.quantity.DecimalText;

/** Steps of the calculation book for one post: the wind that reaches it, and how deep its hole must be, each with its numbers put in. */
final class PostCalculation {
    private PostCalculation() {}

    static void velocity(Paper.Builder paper, WindWork work, SiteWind site) {
        boolean inForce = work.directionality() == 1;
        paper.add(new Block.Formula(
                "Velocity pressure at the fence",
                "ASCE " + site.edition().key() + " Equation 26.10-1, Tables 26.6-1 and 26.10-1",
                "q = 0.00256 Kz Kzt " + (inForce ? "" : "Kd ") + "Ke V\u00b2, V in mph",
                "0.00256 \u00d7 " + DecimalText.fixed(work.exposureFactor(), 3) + " \u00d7 "
                        + DecimalText.upTo(site.topographic(), 2) + " \u00d7 "
                        + (inForce ? "" : DecimalText.upTo(work.directionality(), 2) + " \u00d7 ")
                        + DecimalText.upTo(site.elevation(), 2) + " \u00d7 "
                        + DecimalText.upTo(site.speed().mph(), 1) + "\u00b2",
                DecimalText.fixed(work.velocity().psf(), 2) + " psf, strength level"));
    }

    static void wind(Paper.Builder paper, PostDesign post, WindWork work, SiteWind site) {
        double share = 0.6 * work.on().force().pounds();
        double height = work.on().height().inches();
        paper.add(new Block.Formula(
                "Wind of the fence beside " + post.id() + ", half of each bay, 0.6 W; case "
                        + work.on().windCase(),
                "ASCE " + site.edition().key()
                        + (work.ofWall() ? " 29.3.1, Figure 29.3-1, 29.7, 2.4.1" : " 29.4, Table 29.4-2, 2.4.1"),
                "P = 0.6 q G Cf A, at z above the ground; Cf its mean over the share"
                        + (work.ofWall() ? ", raised where the whole face would get under 16 psf" : ""),
                "0.6 \u00d7 " + DecimalText.fixed(work.velocity().psf(), 2) + " psf \u00d7 "
                        + DecimalText.upTo(work.gust(), 4) + " \u00d7 "
                        + DecimalText.fixed(work.coefficient(), 3) + " \u00d7 "
                        + DecimalText.fixed(work.face().inSquareFeet(), 2) + " ft\u00b2 at "
                        + DecimalText.fixed(height, 1) + " in.",
                DecimalText.whole(share) + " lb; M = P z = " + DecimalText.whole(share * height) + " lb-in"));
    }

    /** Every depth that lateral load asks for, the binding one and the one that is not. */
    static void depths(Paper.Builder paper, PostDesign post, int ibcClass) {
        post.footing()
                .ifPresent(footing -> footing.needs()
                        .forEach(need -> need.lateral()
                                .ifPresent(work -> paper.add(depth(
                                        "Depth for lateral load",
                                        work,
                                        need.binds() ? "" : "; not binding on the customary basis",
                                        ibcClass)))));
    }

    /** The code's formula with the numbers of one case put in. */
    static Block depth(String what, LateralWork work, String more, int ibcClass) {
        BaseAction action = work.worst().action();
        double soilPsf = work.soil().perFoot().psf();
        double looseIn = work.soil().looseTop().inches();
        double wideFt = work.width().inFeet();
        double belowFt = work.below().inFeet();
        double pushLb = action.push().pounds();
        double momentLbFt = work.moment().inPoundFeet();
        double capped = Math.min(belowFt, 12);
        String bearing = DecimalText.upTo(soilPsf, 1) + " psf a ft";
        String given = "P " + DecimalText.whole(pushLb) + " lb, M "
                + DecimalText.whole(action.size().inPoundFeet()) + " lb-ft"
                + (looseIn > 0 ? ", about the foot of the loose top " + DecimalText.whole(momentLbFt) + " lb-ft" : "")
                + "; S " + bearing + ", b " + DecimalText.fixed(wideFt, 3) + " ft; ";
        String result = DecimalText.fixed(belowFt, 3) + " ft = "
                + DecimalText.fixed(belowFt * 12, 1) + " in."
                + (looseIn > 0
                        ? ", with " + DecimalText.upTo(looseIn, 2) + " in. of loose top "
                                + DecimalText.fixed(work.depth().inches(), 1) + " in."
                        : "")
                + more;
        return new Block.Formula(
                what + ", " + work.worst().name(),
                clause(work, ibcClass, pushLb),
                formula(work, pushLb),
                given + numbers(work, pushLb, momentLbFt, soilPsf * capped, wideFt),
                result);
    }

    private static String clause(LateralWork work, int ibcClass, double pushLb) {
        return "IBC 2021 " + (work.slab() ? "1807.3.2.2, Equation 18-3" : "1807.3.2.1, Equation 18-1")
                + (work.slab() || pushLb >= 1 ? "" : " with P going to nothing")
                + "; Table 1806.2 class " + ibcClass
                + (work.doubled() ? ", doubled by 1806.3.4" : "");
    }

    private static String formula(LateralWork work, double pushLb) {
        if (work.slab()) return "d\u00b2 = 4.25 M / (S3 b), S3 = S d, d in it 12 ft at most";
        if (pushLb < 1) return "d\u00b2 = 0.25 \u00d7 4.36 \u00d7 2.34 M / (S1 b), S1 = S d / 3, d in it 12 ft at most";
        return "d = 0.5 A [1 + sqrt(1 + 4.36 h / A)], A = 2.34 P / (S1 b), S1 = S d / 3, h = M / P; d in S1 12 ft at most";
    }

    private static String numbers(LateralWork work, double pushLb, double momentLbFt, double soilPsf, double wideFt) {
        if (work.slab()) return "S3 " + DecimalText.fixed(soilPsf, 1) + " psf";
        double s1Psf = soilPsf / 3;
        String s1 = "S1 " + DecimalText.fixed(s1Psf, 1) + " psf";
        if (pushLb < 1) return s1;
        return "h " + DecimalText.fixed(momentLbFt / pushLb, 3) + " ft, " + s1 + ", A "
                + DecimalText.fixed(2.34 * pushLb / (s1Psf * wideFt), 3) + " ft";
    }
}
