package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.job.OfferKind;
import plumbleaf.engine.job.OfferOption;
import plumbleaf.jobfile.offer.Offers;
import plumbleaf.jobfile.offer.Together;
import plumbleaf.web.page.Row;

/**
 * The options of a job to tick, and what those ticked come to together. Totals and differences only: nothing here tells a cost.
 *
 * @param ticks that pass by themselves
 * @param sum from the job itself over each ticked to the total, to the cent; empty where nothing is ticked
 * @param reason why what is ticked cannot be built together; empty where it can
 */
public record Ticked(List<Tick> ticks, List<Row> sum, String total, String reason) {
    public Ticked {
        ticks = List.copyOf(ticks);
        sum = List.copyOf(sum);
    }

    /** One to tick. */
    public record Tick(String id, String name, String adds, boolean build, boolean on) {}

    public boolean isEmpty() {
        return ticks.isEmpty();
    }

    /** For who reads later what was accepted: what is ticked, and the total. */
    public String words() {
        List<String> on = ticks.stream().filter(Tick::on).map(Tick::name).toList();
        return on.isEmpty() ? "" : "with " + String.join(", ", on) + ", " + total;
    }

    static Ticked of(Offers offers, Together together) {
        List<Tick> ticks = new ArrayList<>();
        List<String> on = together.ticked().stream().map(OfferOption::id).toList();
        for (Offered offered : offers.offered()) {
            OfferOption option = offered.option();
            if (offered.design().verdict() == Verdict.FAILS) continue;
            ticks.add(new Tick(
                    option.id(),
                    option.name(),
                    offered.difference().price().signedText(),
                    option.kind() == OfferKind.BUILD,
                    on.contains(option.id())));
        }
        List<Row> sum = new ArrayList<>();
        if (together.canBe() && !on.isEmpty()) {
            sum.add(Row.of("sum.base", "The job as described", together.base().text()));
            for (int i = 0; i < on.size(); i++)
                sum.add(Row.of(
                        "sum." + on.get(i),
                        together.ticked().get(i).name(),
                        together.alone().get(i).signedText()));
            if (!together.together().isZero())
                sum.add(Row.of(
                        "sum.together",
                        "Built together: trips, bars and bags they share",
                        together.together().signedText()));
            sum.add(Row.of("sum.total", "Total with tax", together.total().text()));
        }
        return new Ticked(ticks, sum, together.total().text(), together.reason());
    }
}
