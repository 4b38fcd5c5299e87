package plumbleaf.web.room;

import java.util.List;
import plumbleaf.web.page.Choice;

/**
 * A build of the house as its page lists it.
 *
 * @param key   for the names of fields, unlike any other on the page
 * @param kind  {@code gate} or {@code run}
 * @param makes what it says of how the thing is made, part by part
 * @param who   who kept it last
 * @param when  and when
 */
public record BuildLine(String key, String kind, String name, List<String> makes, String who, String when) {
    public BuildLine {
        makes = List.copyOf(makes);
    }

    /**
     * The gates or runs of a job, to be made as a build says.
     *
     * @param things {@code JOB ID}, and the thing in words
     */
    public record Places(String title, List<Choice> things) {
        public Places {
            things = List.copyOf(things);
        }
    }
}
