package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Names posts along the walk, one series for the job. Posts on an issued stake-out sheet keep their names; a later one between P7 and P8 is P7a, the next P7b.
 */
final class PostNames {
    private final TreeSet<String> taken = new TreeSet<>();
    private final boolean issued;
    private int number = 0;
    private String lastSet = "";
    private int added = 0;

    /** @param set names that stake-out sheets have fixed, of all runs */
    PostNames(List<String> set) {
        taken.addAll(set);
        issued = !set.isEmpty();
    }

    /** Names of a run's own posts, in order; a post that belongs to another run gets an empty one. */
    List<String> of(List<Stop> stops) {
        List<String> names = new ArrayList<>();
        lastSet = "";
        added = 0;
        for (Stop stop : stops) names.add(stop.joins().isEmpty() ? next(stop) : "");
        return names;
    }

    private String next(Stop stop) {
        if (!stop.setId().isEmpty()) {
            lastSet = stop.setId();
            added = 0;
            return stop.setId();
        }
        if (issued && !lastSet.isEmpty()) {
            String name;
            do {
                name = lastSet + letters(added++);
            } while (!taken.add(name));
            return name;
        }
        String name;
        do {
            name = "P" + ++number;
        } while (!taken.add(name));
        return name;
    }

    /** a, b ... z, aa, ab ... */
    private static String letters(int index) {
        String text = "";
        int left = index;
        do {
            text = (char) ('a' + left % 26) + text;
            left = left / 26 - 1;
        } while (left >= 0);
        return text;
    }
}
