package plumbleaf.jobfile.stock;

/**
 * A job as the yard knows it: by a mark that no other job has, its number in the house or its file's place; people read its title. Where nobody wrote a mark down,
 * the title has to do.
 *
 * @param mark empty where it is not known
 */
public record Taker(String title, String mark) {
    /** What was counted in by hand belongs to no job. */
    public static final Taker NOBODY = new Taker("", "");

    /** A job of which nothing but the title was written down. */
    static Taker titled(String title) {
        return new Taker(title, "");
    }

    public boolean isNobody() {
        return title.isEmpty() && mark.isEmpty();
    }

    /** Whether both are one job. */
    public boolean is(Taker other) {
        if (isNobody() || other.isNobody()) return false;
        if (mark.isEmpty() || other.mark.isEmpty()) return title.equals(other.title);
        return mark.equals(other.mark);
    }
}
