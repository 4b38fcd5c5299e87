package plumbleaf.cutting;

import java.util.List;

/**
 * Bars of one kind, where a plan at the bound by lengths would have hardly any waste: such a plan is looked for before any fractions, or shown not to be there.
 * What must lie together is joined and the rest planned as a smaller task ({@link Joining}); where nothing may be wasted, bars are shuffled ({@link Shuffle}) or
 * few patterns tried one by one ({@link FullBars}, {@link Ahead}); at last all patterns that waste so little are listed and searched ({@link PoolSearch}).
 */
final class NearlyFull {
    /** With so many sizes it pays to look here first. */
    private static final int SIZES = 12;

    /** A plan is of nearly full bars when all its waste is less than this part of one bar. */
    private static final int WASTE_SHARE = 50;

    /** A list of which a part like this must lie together was grown: what is left of it is small. */
    private static final int JOINS_TELL = 4;

    private static final int POOL = 300_000;

    /** Steps for a first look by shuffling: half a second. */
    private static final long SHUFFLE_FIRST = 20_000_000;

    /** Steps for a first look at patterns one by one: a second or two. What fractions would settle at once is not held up longer. */
    private static final long ONE_BY_ONE_FIRST = 40_000_000;

    private static final long LONG = Long.MAX_VALUE / 4;

    private final Cutting cutting;
    private final Standing standing;
    private final Effort effort;

    private NearlyFull(Cutting cutting, Standing standing, Effort effort) {
        this.cutting = cutting;
        this.standing = standing;
        this.effort = effort;
    }

    /** Brings the standing as far as it goes this way; where a plan may waste more it does nothing. */
    static void look(Cutting cutting, Standing standing, Effort effort) {
        if (!suits(cutting) || cutting.sizes() < SIZES) return;
        if (waste(cutting, standing) * WASTE_SHARE > cutting.room[0]) return;
        new NearlyFull(cutting, standing, effort).look();
    }

    /** Of a plan at the bound, of bars of one kind. */
    static long waste(Cutting cutting, Standing standing) {
        return standing.bound() / cutting.price[0] * cutting.room[0] - cutting.volume();
    }

    private void look() {
        if (Joining.suits(cutting)) joined();
        else withoutWaste();
        if (!standing.settled()) fullBars();
    }

    /** Where by fractions too a plan could waste nothing: a longer look at patterns one by one, and one by shuffling, in a third of the effort that is left. */
    static void lookLonger(Cutting cutting, Standing standing, Effort effort) {
        if (!suits(cutting) || waste(cutting, standing) != 0) return;
        NearlyFull nearly = new NearlyFull(cutting, standing, effort);
        if (cutting.sizes() >= SIZES && !nearly.alike()) nearly.withoutFractions(LONG);
        if (!standing.settled() && waste(cutting, standing) == 0) nearly.shuffled(2, effort.left() / 3);
    }

    private static boolean suits(Cutting cutting) {
        return cutting.isOneKind() && cutting.price[0] > 0;
    }

    /** First what must lie together; a list that was not grown to be hard is looked at for itself before. */
    private void joined() {
        long sought = standing.bound();
        Joining joining = Joining.of(cutting, waste(cutting, standing), effort);
        if (joining.isImpossible()) standing.notAtBound();
        boolean grown = joining.joins() * JOINS_TELL >= cutting.pieces();
        if (!grown) withoutWaste();
        if (standing.settled() || joining.joins() == 0) return;
        // A plan that may waste a bar more need not hold together what one at the first bound must, but mostly some
        // does
        boolean must = standing.bound() == sought;
        if (must || grown) rest(joining, must);
    }

    /**
     * Plans what is left when that lies together that must, which is a smaller task by as much.
     *
     * @param must whether a plan at the bound holds together what is joined, so that none for the rest is none at all
     */
    private void rest(Joining joining, boolean must) {
        Cutting left = joining.rest();
        if (left.sizes() == 0) {
            standing.keep(joining.whole(List.of()));
            return;
        }
        Standing rest = new PlanSearch(left, effort).solve();
        if (rest.hasPlan()) standing.keep(joining.whole(rest.best()));
        if (must && rest.bound() > standing.bound() - joining.fullBars() * cutting.price[0]) standing.notAtBound();
    }

    /** Nothing wasted: a short look by shuffling, which mostly does; then what few patterns there are, one by one. A longer look comes last. */
    private void withoutWaste() {
        if (waste(cutting, standing) > 0) return;
        shuffled(1, SHUFFLE_FIRST);
        if (!standing.settled()) withoutFractions(alike() ? LONG : ONE_BY_ONE_FIRST);
    }

    /** Whether all bars of a plan at the bound may hold equally many pieces: patterns one by one then mostly find it, and fractions do not. */
    private boolean alike() {
        return cutting.pieces() % (standing.bound() / cutting.price[0]) == 0;
    }

    private void shuffled(long seed, long steps) {
        if (!Shuffle.suits(cutting)) return;
        standing.keep(Shuffle.of(cutting, standing.bound() / cutting.price[0], seed, effort, steps));
    }

    /** Few patterns that fill a bar: tried piece by piece, which is sooner than by fractions. */
    private void withoutFractions(long steps) {
        if (!FillTable.suits(cutting)) return;
        long before = effort.allowOnly(Math.min(steps, effort.left() / 2));
        PatternPool patterns = patterns();
        if (!patterns.cutShort()) {
            List<Column> usual = FullBars.usual(cutting, patterns.columns(), standing.bound() / cutting.price[0]);
            boolean ahead = Ahead.suits(cutting, usual);
            if (ahead) {
                // nothing that comes after finds these
                effort.allowAgain(before);
                effort.allowOnly(Math.min(steps, effort.left() / 4 * 3));
            }
            FullBars.Found found = ahead ? Ahead.of(cutting, usual, effort) : FullBars.of(cutting, usual, effort);
            standing.keep(found.bars());
            boolean none = found.shown() && found.bars().isEmpty();
            if (none && usual.size() == patterns.columns().size()) standing.notAtBound();
        }
        effort.allowAgain(before);
    }

    private PatternPool patterns() {
        return PatternPool.of(
                cutting, Bound.ofVolume(cutting), new Pricing(cutting, effort), standing.bound(), POOL, effort);
    }

    /**
     * Patterns that waste no more than a whole plan at the bound may are few where that is hardly anything: they are listed and searched at once, without the
     * worths that fractions would give.
     */
    private void fullBars() {
        if (!FillTable.suits(cutting)) return;
        long before = effort.allowOnly(effort.left() / 2);
        PatternPool patterns = patterns();
        if (!patterns.cutShort()) {
            PoolSearch search = new PoolSearch(cutting, patterns.columns(), effort);
            PoolSearch.Verdict verdict = search.search(standing.bound(), standing.bound());
            if (verdict == PoolSearch.Verdict.FOUND) standing.keep(search.best());
            if (verdict == PoolSearch.Verdict.NONE) standing.notAtBound();
        }
        effort.allowAgain(before);
    }
}
