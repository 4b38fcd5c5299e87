package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.PostPush;
import plumbleaf.engine.sag.RollerForce;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.sag.SlidePost;

/**
 * The roller posts of a slide as its guide posts: what their guide wheels hold of the wind, and what that makes at grade, line by line for the calculation book.
 * The shares of the wheels are those of the frame in space. Check: BookFollowsTest.
 */
public final class SlideGuides {
    private SlideGuides() {}

    /** The front post, then the rear one, each in the case that tips it across the fence most. */
    public static List<Working> of(SlideDesign slide) {
        return List.of(
                working(slide, "Front", slide.gate().front(), SlideCase::front, SlideCase::frontPost),
                working(slide, "Rear", slide.gate().rear(), SlideCase::rear, SlideCase::rearPost));
    }

    private static Working working(
            SlideDesign slide,
            String which,
            SlidePost post,
            Function<SlideCase, RollerForce> wheels,
            Function<SlideCase, BaseAction> grade) {
        SlideCase worst = slide.cases().get(0);
        for (SlideCase each : slide.cases())
            if (Ties.isMore(across(grade.apply(each)), across(grade.apply(worst)))) worst = each;
        return new Working(
                which + " roller post as a guide post: what its guide wheels hold across, at grade, " + name(worst),
                "statics",
                "G on the wheels at the bottom and the top tube, + outward, by the stiffness of the whole; V on its wheels, o from the post's line out to the leaf's; h above grade at the post",
                lines(slide, post, worst, wheels.apply(worst), grade.apply(worst)));
    }

    private static double across(BaseAction action) {
        return Math.abs(action.momentAcross().poundInches());
    }

    private static String name(SlideCase each) {
        return each.combination().key() + ", leaf " + each.state().key()
                + (each.combination().hasWind() ? ", " + each.wind().key() : "");
    }

    private static List<WorkedLine> lines(
            SlideDesign slide, SlidePost post, SlideCase worst, RollerForce wheels, BaseAction grade) {
        Leaf leaf = slide.gate().plan().leaf();
        double base = post.grade().inches();
        double low = leaf.of(MemberRole.BOTTOM_RAIL).get(0).from().z().inches() - base;
        double high = leaf.of(MemberRole.TOP_RAIL).get(0).from().z().inches() - base;
        double share = worst.state() != LeafState.OPEN
                ? worst.combination().wind() * worst.wind().outward()
                : 0;
        List<PostPush> fence = share == 0 ? List.of() : post.pushes();
        StringBuilder formula = new StringBuilder("G1 \u00d7 h1 + G2 \u00d7 h2 + V \u00d7 o");
        for (int i = 1; i <= fence.size(); i++)
            formula.append(" + B").append(i).append(" \u00d7 k").append(i);
        WorkedLine.Open moment = WorkedLine.of("Mc", formula.toString())
                .put("G1", wheels.acrossLow())
                .put("h1", low, "in.")
                .put("G2", wheels.acrossHigh())
                .put("h2", high, "in.")
                .put("V", wheels.down())
                .put("o", slide.gate().plan().shape().across().inches(), "in.");
        for (int i = 1; i <= fence.size(); i++)
            moment.put("B" + i, fence.get(i - 1).outward().pounds() * share, "lb")
                    .put("k" + i, fence.get(i - 1).height());
        List<WorkedLine> lines = new ArrayList<>();
        lines.add(WorkedLine.of("G", "G1 + G2")
                .put("G1", wheels.acrossLow())
                .put("G2", wheels.acrossHigh())
                .note("held by its guide wheels")
                .gives(wheels.acrossLow().pounds() + wheels.acrossHigh().pounds(), "lb"));
        lines.add(
                moment.note("tips it outward" + (fence.isEmpty() ? "" : "; B the wind on the fence beside it, k high"))
                        .gives(grade.momentAcross().poundInches(), "lb-in"));
        return lines;
    }
}
