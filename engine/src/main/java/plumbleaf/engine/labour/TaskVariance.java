package plumbleaf.engine.labour;

/**
 * A task as it was estimated and as it went. Quantities in what the price book counts the task in, hours of one person.
 *
 * @param task as the price book calls it
 * @param name as people say it
 */
public record TaskVariance(
        String task,
        String name,
        double estimatedQuantity,
        double estimatedHours,
        double doneQuantity,
        double takenHours) {
    /** Hours taken beyond what was estimated for what is done so far; below zero when it went faster. Without quantities, beyond the whole estimate. */
    public double overHours() {
        return takenHours - earnedHours();
    }

    /** What the estimate allows for the quantity done; the whole of it where no quantity was written down. */
    public double earnedHours() {
        return doneQuantity > 0 && estimatedQuantity > 0
                ? estimatedHours * doneQuantity / estimatedQuantity
                : estimatedHours;
    }
}
