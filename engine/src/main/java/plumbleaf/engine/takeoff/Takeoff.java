package plumbleaf.engine.takeoff;

import java.util.List;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Force;

/** The order: lines by group, the cut plans behind its bars, and what has no price. */
public record Takeoff(List<TakeoffLine> lines, List<CutPlan> cutPlans, List<Finding> findings) {
    public Takeoff {
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
}
