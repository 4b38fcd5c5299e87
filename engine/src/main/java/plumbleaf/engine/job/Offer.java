package plumbleaf.engine.job;

import java.util.List;

/**
 * What is put before the customer beside the job itself.
 *
 * @param exclusions what is not in the price, beside what never is
 */
public record Offer(List<OfferOption> options, List<Allowance> allowances, List<String> exclusions) {
    public Offer {
        options = List.copyOf(options);
        allowances = List.copyOf(allowances);
        exclusions = List.copyOf(exclusions);
    }

    public static Offer none() {
        return new Offer(List.of(), List.of(), List.of());
    }
}
