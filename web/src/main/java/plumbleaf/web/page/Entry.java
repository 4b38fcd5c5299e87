package plumbleaf.web.page;

import java.util.List;

/**
 * A small form that writes one more thing down.
 *
 * @param list    where it goes in the job file: {@code actuals}
 * @param heading what is written down
 * @param words   on the button
 * @param asked   how many of the blanks are asked at once; the rest are other ways to say it, and fold away
 * @param hands   whether shop and crew write it down as well
 * @param problem why the last one was not kept, with the cure; empty when it was
 */
public record Entry(
        String list, String heading, String words, List<Blank> blanks, int asked, boolean hands, String problem) {
    public Entry {
        blanks = List.copyOf(blanks);
    }

    /** The form with a blank filled in that nobody has typed into yet. */
    public Entry with(String key, String value) {
        List<Blank> filled = blanks.stream()
                .map(blank -> blank.key().equals(key) && blank.value().isEmpty() ? blank.holding(value) : blank)
                .toList();
        return new Entry(list, heading, words, filled, asked, hands, problem);
    }

    public List<Blank> first() {
        return blanks.subList(0, asked);
    }

    public List<Blank> rest() {
        return blanks.subList(asked, blanks.size());
    }

    /** Whether something stands in a blank that is folded away. */
    public boolean restIsUsed() {
        return rest().stream().anyMatch(blank -> !blank.value().isEmpty());
    }

    /**
     * One blank of the form.
     *
     * @param kind  as a browser's input knows it: {@code text}, {@code date}
     * @param value what was typed and not kept; else empty
     * @param hint   what may stand there
     * @param length the unit of a length, as {@link Unit} names it; empty for anything else
     */
    public record Blank(
            String key, String label, String kind, String value, String hint, String length, List<Choice> choices) {
        public Blank {
            choices = List.copyOf(choices);
        }

        Blank holding(String other) {
            return new Blank(key, label, kind, other, hint, length, choices);
        }
    }

    /** Unique on a page, and usable as an HTML id. */
    public String key() {
        return HtmlId.of("e", list);
    }
}
