package plumbleaf.web.room;

/**
 * A line of the receiving page.
 *
 * @param key of the line
 * @param ordered units of sale
 * @param came counted so far
 * @param counted whether anybody has counted
 * @param need when it has to be there and for what, in words; empty before the days are laid out
 * @param typed what stands in the field: what is missing, or what somebody wrote
 */
public record ReceiptLine(
        String key,
        String supplier,
        String name,
        long ordered,
        String unit,
        long came,
        boolean counted,
        String need,
        String typed,
        boolean ticked) {
    /** Whether some of it is still to come. */
    public boolean isOpen() {
        return came < ordered;
    }

    /** Whether fewer came than were ordered. */
    public boolean isShort() {
        return counted && isOpen();
    }

    public long missing() {
        return ordered - came;
    }

    /** How it stands, in words. */
    public String stands() {
        if (!counted) return "";
        if (isOpen()) return came + " came, " + missing() + " short";
        return came > ordered ? "all here, " + (came - ordered) + " over" : "all here";
    }
}
