package plumbleaf.web.page;

import java.util.List;

/**
 * A finding as a page shows it.
 *
 * @param severity {@code pass}, {@code caution}, {@code must-fix} or {@code cannot-say}
 * @param words    the same, as people read it
 * @param part     the thing it is about
 * @param basis    the clause or what else it rests on
 * @param ratio    demand over capacity with two decimals; may be empty
 * @param presses  remedies that one press applies, and those that are only words
 */
public record Note(
        String severity, String words, String part, String message, String basis, String ratio, List<Press> presses) {
    public Note {
        presses = List.copyOf(presses);
    }

    /**
     * A remedy.
     *
     * @param gain what it does to the ratio and the price; may be empty
     * @param edit the change to the job file; empty where no press can make it
     */
    public record Press(String words, String gain, String edit) {}
}
