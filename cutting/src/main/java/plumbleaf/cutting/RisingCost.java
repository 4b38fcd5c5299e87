package plumbleaf.cutting;

/**
 * Looks for a plan from the bound up. A plan that costs next to nothing above what fractions say is made of patterns that lose next to nothing, and with bars of several
 * lengths these are few: they are listed and searched ({@link PoolSearch}), and where they hold no plan, those of a plan that costs a little more, and so on until the
 * first that does. Each search that ends shows that nothing costs so little.
 * Source: R. Baldacci, N. Christofides and A. Mingozzi, Mathematical Programming 115 (2008) 351-385, for listing by what a column loses; from memory. Check:
 * RisingCostTest.
 */
final class RisingCost {
    /** How long to look at one cost, and whether to go on to the next where it stays open. */
    enum Look {
        /** Before sets of bars are looked at. */
        BRIEF(10_000, 15_000_000),
        /** Before they are looked at for longer. */
        LONGER(60_000, 40_000_000),
        /** After. */
        LONG(60_000, Long.MAX_VALUE);

        /** With more the look ends. */
        private final int mostPatterns;

        /** For each cost, and no more than a part of what is left. */
        private final long mostSteps;

        Look(int mostPatterns, long mostSteps) {
            this.mostPatterns = mostPatterns;
            this.mostSteps = mostSteps;
        }
    }

    /** So few patterns are searched by choices alone; of more, choices get one over so much of the effort, then whole patterns are tried first. */
    private static final int FEW = 2_000;

    private static final int PART_FOR_CHOICES = 4;

    /** Of the effort left, for one cost. */
    private static final int PART_FOR_A_COST = 6;

    private final Cutting cutting;
    private final Standing standing;
    private final Look look;
    private final Effort effort;

    private RisingCost(Cutting cutting, Standing standing, Look look, Effort effort) {
        this.cutting = cutting;
        this.standing = standing;
        this.look = look;
        this.effort = effort;
    }

    /** @param worths of the fractions of all bars, by which patterns lose; {@code pricing} of the same bars */
    static void look(Cutting cutting, Standing standing, Bound worths, Pricing pricing, Look look, Effort effort) {
        if (!worths.isNone()) new RisingCost(cutting, standing, look, effort).look(worths, pricing);
    }

    private void look(Bound worths, Pricing pricing) {
        long from = standing.bound();
        long above = 0;
        while (!standing.settled() && !effort.spent()) {
            long most = standing.bestCost() - cutting.step();
            long target = Math.max(standing.bound(), Math.min(from + above * cutting.step(), most));
            long before = effort.allowOnly(Math.min(look.mostSteps, effort.left() / PART_FOR_A_COST));
            PatternPool patterns = PatternPool.of(cutting, worths, pricing, target, look.mostPatterns, effort);
            boolean decided = !patterns.cutShort() && decided(patterns, target);
            effort.allowAgain(before);
            if (patterns.cutShort() || (!decided && (look != Look.LONG || target >= most))) return;
            above += above / 2 + 1;
        }
    }

    /** Whether it comes out if these patterns hold a plan of at most so much, and which is the cheapest. */
    private boolean decided(PatternPool patterns, long target) {
        boolean few = patterns.columns().size() < FEW;
        long before = effort.allowOnly(few ? effort.left() : effort.left() / PART_FOR_CHOICES);
        boolean decided = searched(patterns, target, false);
        effort.allowAgain(before);
        return decided || (!few && searched(patterns, target, true));
    }

    private boolean searched(PatternPool patterns, long target, boolean wholePatternsFirst) {
        PoolSearch search = new PoolSearch(cutting, patterns.columns(), effort).wholePatternsFirst(wholePatternsFirst);
        PoolSearch.Verdict verdict = search.search(target, standing.bound());
        boolean found = verdict == PoolSearch.Verdict.FOUND;
        if (found) standing.keep(search.best());
        if (search.isBest()) standing.atLeast(found ? standing.bestCost() : target + cutting.step());
        return search.isBest();
    }
}
