package plumbleaf.documents.packet;

import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.typeset.Pages;
import plumbleaf.documents.view.CutBars;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.quantity.DecimalText;

/** Every cut plan as bars, with what is left over and whether the plan is proven. */
public final class CutPlans {
    private static final int BARS_A_PICTURE = 4;

    private CutPlans() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Cut plans", subject.running()).flag(subject.flag());
        paper.say(
                "Bars to scale, pieces in sawing order from the left, long to short. Bars cut alike are drawn once. Shaded: trim and scrap; an offcut worth keeping says keep: mark it.");
        for (var takeoff : subject.takeoff()) for (CutPlan plan : takeoff.cutPlans()) plan(paper, subject, plan);
        if (subject.takeoff().stream().allMatch(takeoff -> takeoff.cutPlans().isEmpty()))
            paper.say("Nothing is cut from bars.");
        ShapedTops.on(paper, subject);
        return paper.paper();
    }

    private static void plan(Paper.Builder paper, PacketSubject subject, CutPlan plan) {
        paper.heading(name(subject, plan));
        String proof = plan.bars().size()
                + (plan.bars().size() == 1 ? " bar, " : " bars, ")
                + DecimalText.whole(plan.setUps())
                + (plan.setUps() == 1 ? " saw set-up" : " saw set-ups")
                + (plan.hasFewestSetUps() && plan.setUps() > 1 ? ", the fewest for these bars. " : ". ")
                + waste(plan)
                + (plan.proven()
                        ? "Proven: no plan costs less."
                        : "Not proven: at most " + share(plan) + "% of the stock's cost could be saved.");
        int rows = CutBars.rows(plan);
        for (int from = 0; from < rows; from += BARS_A_PICTURE) {
            int before = Math.min(rows, from + BARS_A_PICTURE);
            paper.add(new Block.Picture(
                    CutBars.part(
                            plan,
                            name(subject, plan),
                            from,
                            before,
                            Pages.columnWidth(subject.options().size()) - 0.2,
                            subject.units()),
                    before == rows ? proof : ""));
        }
    }

    /** Of the bars' length what is lost, and what goes back into the yard. */
    private static String waste(CutPlan plan) {
        if (plan.barNm() == 0) return "";
        String lost = "Kerf, trim and scrap " + DecimalText.upTo(plan.wastePct(), 1) + "%";
        return lost + (plan.keptNm() > 0 ? ", kept " + DecimalText.upTo(plan.keptPct(), 1) + "%. " : ". ");
    }

    /** This paper goes to the saw, where no price goes; so a share, rounded up to a tenth of a per cent. */
    private static String share(CutPlan plan) {
        double share = plan.cost().isZero()
                ? 0
                : (double) plan.gap().cents() / plan.cost().cents();
        return DecimalText.fixed(Math.ceil(share * 1000) / 10, 1);
    }

    /** In the supplier's words where the order has it. */
    private static String name(PacketSubject subject, CutPlan plan) {
        return subject.takeoff().stream()
                .map(takeoff -> takeoff.nameOf(plan))
                .findFirst()
                .orElse(plan.stock());
    }
}
