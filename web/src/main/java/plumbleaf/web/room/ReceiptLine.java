package plumbleaf.web.room;

/**
 * A line of the receiving page.
 *
 * @param ordered units of sale
 * @param came counted so far; empty where nobody has counted
 */
public record ReceiptLine(String supplier, String item, String name, long ordered, String unit, String came) {
    /** Whether fewer came than were ordered. */
    public boolean isShort() {
        return !came.isEmpty() && Long.parseLong(came) < ordered;
    }

    /** What is still to come, in words; empty while nobody has counted. */
    public String left() {
        if (came.isEmpty()) return "";
        long missing = ordered - Long.parseLong(came);
        return missing <= 0 ? "all here" : missing + " short";
    }
}
