package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.choose.Candidate;
import plumbleaf.engine.choose.Cheapest;
import plumbleaf.engine.choose.Choice;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.DecimalText;

/**
 * The cheapest build of a gate that passes.
 *
 * @param gate its id
 * @param choice the build, the next three, and why every cheaper one fails
 */
public record GateChoice(String gate, Choice<PickedGate> choice) {
    private static final int ALTERNATIVES = 3;

    /**
     * Searches the whole lattice of a gate in order of price.
     *
     * @param dug kinds of holes that the job digs anyway: another kind has its price
     */
    static GateChoice of(GateSite site, PriceBook book, PostWork posts, List<HoleSize> dug) {
        GateSearch search = new GateSearch(site, book, posts, dug);
        List<Candidate<PickedGate>> candidates = new ArrayList<>();
        for (PickedGate build : new GateLattice(site).builds())
            candidates.add(new Candidate<>(build.id(), build, search.price(build)));
        return new GateChoice(site.gate().id(), Cheapest.of(candidates, search::judge, ALTERNATIVES));
    }

    /** What was chosen, in one sentence with its proof; or that nothing passes. */
    Finding finding() {
        int failed = choice.rejected().size();
        if (choice.cheapest().isEmpty())
            return Checked.note(
                    "gate.build",
                    Severity.MUST_FIX,
                    gate,
                    gate + ": none of " + DecimalText.whole(choice.all())
                            + " builds passes; the usual one is shown. Shorten the leaf, lighten it, or give the posts better ground.",
                    Basis.judgement("search over what is stocked, judged in soft soil"));
        return Checked.note(
                "gate.build",
                Severity.PASS,
                gate,
                gate + ": the cheapest of " + DecimalText.whole(choice.all()) + " builds that passes; each of the "
                        + DecimalText.whole(failed) + " cheaper ones fails a check.",
                Basis.judgement("search over what is stocked, judged in soft soil"));
    }
}
