package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.choose.Cheapest;
import plumbleaf.engine.choose.Choice;
import plumbleaf.engine.choose.Finer;
import plumbleaf.engine.choose.InOrderOfPrice;
import plumbleaf.engine.choose.Parts;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The cheapest build of a gate that passes.
 *
 * @param gate its id
 * @param choice the build, the next three, and why every cheaper one fails
 * @param finer the cheapest build for each further 1/16 in. less that comes after hanging in soft soil; empty where nobody asked
 */
public record GateChoice(String gate, Choice<PickedGate> choice, List<Finer<PickedGate>> finer) {
    private static final int ALTERNATIVES = 3;

    /** What one step of a finer drop is. */
    public static final Length STEP = Length.inches(1.0 / 16);

    private static final int STEPS = 4;

    public GateChoice {
        finer = List.copyOf(finer);
    }

    /** Searches the whole lattice of a gate in order of price; several searches, where it may hang in several ways. */
    static GateChoice of(String gate, List<GateSearch> searches) {
        Choice<TriedBuild> choice = choice(searches, GateSearch.parts(searches), TriedBuild::findings);
        return new GateChoice(gate, choice.as(TriedBuild::build), List.of());
    }

    /** The same with what less drop costs, told as it goes. */
    static GateChoice withFiner(String gate, List<GateSearch> searches, SearchTold told) {
        List<Parts<TriedBuild, FootPick>> parts = GateSearch.parts(searches);
        Counting counting = new Counting(told);
        Choice<TriedBuild> choice = choice(searches, parts, counting::judge);
        Optional<Offset> from = choice.cheapest().flatMap(best -> best.build().after());
        List<Finer<TriedBuild>> finer = from.isEmpty()
                ? List.of()
                : Finer.of(
                        parts,
                        TriedBuild::of,
                        TriedBuild::findings,
                        TriedBuild::mayDropWithin,
                        counting::measure,
                        from.get().inches(),
                        STEP.inches(),
                        STEPS);
        return new GateChoice(
                gate,
                choice.as(TriedBuild::build),
                finer.stream().map(each -> each.as(TriedBuild::build)).toList());
    }

    private static Choice<TriedBuild> choice(
            List<GateSearch> searches,
            List<Parts<TriedBuild, FootPick>> parts,
            Function<TriedBuild, List<Finding>> judge) {
        int all = 0;
        for (GateSearch search : searches) all += search.count();
        return Cheapest.of(new InOrderOfPrice<>(parts, TriedBuild::of), all, judge, ALTERNATIVES);
    }

    /** Judges and measures builds, and tells how many. */
    private static final class Counting {
        private final SearchTold told;
        private int judged;
        private int measured;

        private Counting(SearchTold told) {
            this.told = told;
        }

        List<Finding> judge(TriedBuild build) {
            judged++;
            told.looked(judged, measured);
            return build.findings();
        }

        double measure(TriedBuild build) {
            measured++;
            told.looked(judged, measured);
            return build.afterIn();
        }
    }

    private static String proof(int all, int failed) {
        if (all == 1) return "all of its build is given, and it passes; nothing was left to choose.";
        String chosen = "the cheapest of " + DecimalText.whole(all) + " builds that passes; ";
        if (failed == 0) return chosen + "none is cheaper.";
        return chosen
                + (failed == 1
                        ? "the one cheaper fails a check."
                        : "each of the " + DecimalText.whole(failed) + " cheaper ones fails a check.");
    }

    private static String noneOf(int all) {
        if (all == 1) return "all of its build is given, and it fails a check.";
        return "none of " + DecimalText.whole(all) + " builds passes; the usual one is shown.";
    }

    /** What was chosen, in one sentence with its proof; or that nothing passes. */
    Finding finding() {
        int failed = choice.rejected().size();
        if (choice.cheapest().isEmpty())
            return Checked.note(
                    "gate.build",
                    Severity.MUST_FIX,
                    gate,
                    gate + ": " + noneOf(choice.all())
                            + " Shorten the leaf, lighten it, or give the posts better ground.",
                    Basis.judgement("search over what is stocked, judged in soft soil"));
        return Checked.note(
                "gate.build",
                Severity.PASS,
                gate,
                gate + ": " + proof(choice.all(), failed),
                Basis.judgement("search over what is stocked, judged in soft soil"));
    }
}
