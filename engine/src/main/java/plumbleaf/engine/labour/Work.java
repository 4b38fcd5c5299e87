package plumbleaf.engine.labour;

import plumbleaf.engine.quantity.Length;

/**
 * Something to be done.
 *
 * @param task as in the price book
 * @param soil where it is dug; empty otherwise
 * @param size of the hole; zero otherwise
 * @param quantity in what the rate is counted in
 * @param cause id of the post, bay, leaf or member it is for
 */
public record Work(String task, String soil, Length size, double quantity, String cause) {
    public Work {
        if (!(quantity >= 0)) throw new IllegalArgumentException("Work of " + task + " must be zero or more");
    }

    public static Work of(String task, double quantity, String cause) {
        return new Work(task, "", Length.ZERO, quantity, cause);
    }
}
