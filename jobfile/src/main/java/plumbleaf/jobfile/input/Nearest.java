package plumbleaf.jobfile.input;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known word a mistyped one most likely stands for. */
public final class Nearest {
    private static final int LONGEST = 60;

    private Nearest() {}

    /** The nearest of the known words; none when all are further off than a third of the word. */
    public static Optional<String> to(String word, Collection<String> known) {
        if (word.isEmpty() || word.length() > LONGEST) return Optional.empty();
        String wanted = word.toLowerCase(Locale.ROOT);
        int best = 1 + Math.max(1, (wanted.length() + 1) / 3);
        Optional<String> nearest = Optional.empty();
        for (String candidate : known) {
            int steps = steps(wanted, candidate.toLowerCase(Locale.ROOT));
            if (steps < best) {
                best = steps;
                nearest = Optional.of(candidate);
            }
        }
        return nearest;
    }

    /** Letters to add, drop, change or swap with their neighbour to get from one word to the other. */
    static int steps(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) cost[i][0] = i;
        for (int j = 0; j <= to.length(); j++) cost[0][j] = j;
        for (int i = 1; i <= from.length(); i++) {
            for (int j = 1; j <= to.length(); j++) {
                int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
                cost[i][j] = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + change);
                boolean swapped = i > 1
                        && j > 1
                        && from.charAt(i - 1) == to.charAt(j - 2)
                        && from.charAt(i - 2) == to.charAt(j - 1);
                if (swapped) cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
            }
        }
        return cost[from.length()][to.length()];
    }
}
