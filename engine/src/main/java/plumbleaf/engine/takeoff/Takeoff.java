package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * The order: lines by group, the cut plans behind its bars, and what has no price.
 *
 * @param taken out of the yard
 */
public record Takeoff(List<TakeoffLine> lines, List<CutPlan> cutPlans, List<StockTake> taken, List<Finding> findings) {
    public Takeoff {
        taken = List.copyOf(taken);
        lines = List.copyOf(lines);
        cutPlans = List.copyOf(cutPlans);
        findings = List.copyOf(findings);
    }

    public Money cost() {
        Money sum = Money.ZERO;
        for (TakeoffLine line : lines) sum = sum.plus(line.cost());
        return sum;
    }

    public Force weight() {
        Force sum = Force.ZERO;
        for (TakeoffLine line : lines) sum = sum.plus(line.weight());
        return sum;
    }

    /** Every line that a part of the job is a cause of. */
    public List<TakeoffLine> causedBy(String part) {
        return lines.stream()
                .filter(line ->
                        line.causes().stream().anyMatch(cause -> cause.part().equals(part)))
                .toList();
    }

    /** What is cut, in the words it is sold by where the order has it. */
    public String nameOf(CutPlan plan) {
        return nameOf(plan.stock());
    }

    /** An item in the words it is sold by where the order has it. */
    public String nameOf(String item) {
        return lines.stream()
                .filter(line -> line.item().equals(item))
                .map(line -> line.sold().name())
                .findFirst()
                .orElse(item);
    }

    /** What is taken out of the yard: a bar or offcut by its own length, not by that of the stick it is sold in. */
    public String nameOf(StockTake take, DisplayUnits shown) {
        return cutPlans.stream()
                .filter(plan -> plan.stock().equals(take.item()))
                .flatMap(plan -> plan.bars().stream())
                .filter(bar -> bar.bar().equals(take.mark()))
                .findFirst()
                .map(bar -> bareNameOf(take.item()) + ", " + shown.length(Length.nanometres(bar.lengthNm())))
                .orElseGet(() -> nameOf(take.item()));
    }

    /** An item's name without the length of the stick it is sold in, where that ends it. */
    public String bareNameOf(String item) {
        String name = nameOf(item);
        for (TakeoffLine line : lines) {
            String length = ", " + DecimalText.upTo(line.sold().contents(), 3) + " ft";
            if (line.item().equals(item) && name.endsWith(length))
                return name.substring(0, name.length() - length.length());
        }
        return name;
    }

    /** Offcuts long enough to keep, for the yard; without marks, which the yard gives. */
    public List<OnHand.HeldBar> kept() {
        List<OnHand.HeldBar> kept = new ArrayList<>();
        for (CutPlan plan : cutPlans) {
            for (CutBar bar : plan.bars()) {
                if (bar.offcutUsable())
                    kept.add(new OnHand.HeldBar("", plan.stock(), Length.nanometres(bar.offcutNm()), 1, true));
            }
        }
        return kept;
    }
}
