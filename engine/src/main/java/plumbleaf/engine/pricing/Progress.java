package plumbleaf.engine.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.money.Money;

/**
 * What the work is worth as it stands: {@code earned = installed + stored}, {@code next = earned - billed}. A line earns {@code each x (installed + stored)}, rounded
 * once; its installed part is rounded by itself and the stored part is the rest, so that what moves from the pile into the ground is never billed twice, not by a cent.
 *
 * @param values of all lines when everything is built in
 * @param apart contract less values: what no line covers; zero where the schedule of values makes the contract
 * @param retained of what is earned, by the share the customer keeps; none once all of it is installed
 * @param next what a bill may ask for today before what is kept back; below zero where more was billed than is earned
 */
public record Progress(
        List<Line> lines,
        Money values,
        Money apart,
        Money installed,
        Money stored,
        Money earned,
        Money retained,
        Money billed,
        Money next) {
    public Progress {
        lines = List.copyOf(lines);
    }

    /** One line in money. */
    public record Line(Billing.Measured of, Money value, Money installed, Money stored) {}

    public static Progress of(Statement statement, Billing billing) {
        List<Line> lines = new ArrayList<>();
        Money values = Money.ZERO;
        Money installed = Money.ZERO;
        Money stored = Money.ZERO;
        boolean isBuilt = true;
        for (Billing.Measured each : billing.measured()) {
            BigDecimal in = Terms.exact(each.installed());
            Money built = each.each().times(in);
            Money ready = each.each().times(in.add(Terms.exact(each.stored()))).minus(built);
            Line line = new Line(each, each.each().times(Terms.exact(each.quantity())), built, ready);
            lines.add(line);
            values = values.plus(line.value());
            installed = installed.plus(built);
            stored = stored.plus(ready);
            isBuilt &= each.installed() >= each.quantity();
        }
        Money earned = installed.plus(stored);
        return new Progress(
                lines,
                values,
                statement.contract().minus(values),
                installed,
                stored,
                earned,
                isBuilt ? Money.ZERO : earned.times(Terms.exact(billing.retainage())),
                statement.billed(),
                earned.minus(statement.billed()));
    }
}
