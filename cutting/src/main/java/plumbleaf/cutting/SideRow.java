package plumbleaf.cutting;

/**
 * A row beside those of the pieces and bars: a cut that every whole plan obeys, or a choice made in the search. What a pattern counts in it follows from the
 * pattern alone.
 */
final class SideRow {
    /** What is counted. */
    enum Counts {
        /**
         * Half the pieces of these sizes, rounded up. As many pieces as there are in all, an odd number, need half of it rounded up: M. Jepsen and others,
         * Subset-row inequalities, Operations Research 56 (2008) 497-511, here in the form for at least.
         */
        HALF_UP,
        /** One where all these sizes are together; where it is one size only, two of it. */
        TOGETHER,
        /** One for this pattern alone. */
        PATTERN
    }

    final Counts counts;
    final int[] sizes;
    final int pattern;
    final int row;

    SideRow(Counts counts, int[] sizes, int pattern, int row) {
        this.counts = counts;
        this.sizes = sizes;
        this.pattern = pattern;
        this.row = row;
    }

    int of(Column column, int number) {
        return switch (counts) {
            case HALF_UP -> {
                int sum = 0;
                for (int size : sizes) sum += column.count(size);
                yield (sum + 1) / 2;
            }
            case TOGETHER -> {
                if (sizes.length == 1) yield column.count(sizes[0]) >= 2 ? 1 : 0;
                for (int size : sizes) {
                    if (column.count(size) == 0) yield 0;
                }
                yield 1;
            }
            case PATTERN -> number == pattern ? 1 : 0;
        };
    }
}
