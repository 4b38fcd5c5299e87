package plumbleaf.engine.labour;

import plumbleaf.engine.quantity.Length;

/**
 * How long a task takes: a row of the price book.
 *
 * @param task what is done: {@code dig}, {@code set-post}, {@code rail}, {@code picket}, {@code weld}
 * @param soil the soil it holds for, as the job writes it; empty for any
 * @param upTo largest hole diameter it holds for; zero where size does not matter
 * @param per what it is counted in: {@code ft of hole}, {@code post}, {@code weld in}
 * @param hours of one person for one
 */
public record LabourRate(
        String task, String name, Phase phase, String soil, Length upTo, String per, double hours, String source) {
    public LabourRate {
        if (!(hours >= 0 && hours < 1000))
            throw new IllegalArgumentException("Hours of " + task + " must be 0 to 1000 for one");
    }

    /** The same with other hours for one. */
    public LabourRate with(double other) {
        return new LabourRate(task, name, phase, soil, upTo, per, other, source);
    }

    boolean holdsFor(Work work) {
        boolean rightSoil = soil.isEmpty() || soil.equals(work.soil());
        boolean rightSize = upTo.isZero() || work.size().compareTo(upTo) <= 0;
        return task.equals(work.task()) && rightSoil && rightSize;
    }
}
