package plumbleaf.engine.labour;

/**
 * What done work says about a rate of the price book. Nothing changes the book but its owner.
 *
 * @param book the rate as it stands there
 * @param records of days or jobs it was measured on
 * @param quantity done in all of them
 * @param hours taken in all of them, of one person
 * @param median of hours for one, over the records
 * @param low lower end of the interval that holds the true median
 * @param high upper end
 * @param coverage how sure the interval is: 0.95 for 95 %
 */
public record LearnedRate(
        LabourRate book,
        int records,
        double quantity,
        double hours,
        double median,
        double low,
        double high,
        double coverage) {
    /** Below this the records say too little to change a rate by: judgement. */
    public static final double SURE = 0.90;

    /** Hours for one over everything done: total hours by total quantity. */
    public double average() {
        return hours / quantity;
    }

    /** Whether there are records enough, and they agree that the book's rate is not right. */
    public boolean suggestsAnother() {
        return coverage >= SURE && (book.hours() < low || book.hours() > high);
    }
}
