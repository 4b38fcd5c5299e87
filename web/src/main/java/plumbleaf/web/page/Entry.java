package plumbleaf.web.page;

import java.util.List;

/**
 * A small form that writes one more thing down.
 *
 * @param list    where it goes in the job file: {@code actuals}
 * @param heading what is written down
 * @param words   on the button
 * @param hands   whether shop and crew write it down as well
 * @param problem why the last one was not kept, with the cure; empty when it was
 */
public record Entry(String list, String heading, String words, List<Blank> blanks, boolean hands, String problem) {
    public Entry {
        blanks = List.copyOf(blanks);
    }

    /**
     * One blank of the form.
     *
     * @param kind  as a browser's input knows it: {@code text}, {@code date}
     * @param value what was typed and not kept; else empty
     * @param hint  what may stand there
     */
    public record Blank(String key, String label, String kind, String value, String hint, List<Choice> choices) {
        public Blank {
            choices = List.copyOf(choices);
        }
    }

    /** Unique on a page, and usable as an HTML id. */
    public String key() {
        return "e-" + list.replaceAll("[^A-Za-z0-9]+", "-");
    }
}
