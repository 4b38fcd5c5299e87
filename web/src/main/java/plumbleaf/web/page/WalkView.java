package plumbleaf.web.page;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One screen of the walk about a site.
 *
 * @param view  the job, with the one panel of questions
 * @param names of all screens, in their order
 * @param at    which one this is, from 1
 * @param why   what hangs on the answers
 * @param stand what the job comes to now, in words
 * @param photos that were taken for this question
 */
public record WalkView(RoomView view, List<String> names, int at, String why, String stand, List<Photo> photos) {
    private static final Pattern PART = Pattern.compile("\\b([GR]\\d{1,14})\\b");

    public WalkView {
        names = List.copyOf(names);
        photos = List.copyOf(photos);
    }

    /** What its photos are filed under: the gate or run it asks about, else the job. */
    public String part() {
        Matcher part = PART.matcher(name());
        return part.find() ? part.group(1) : "job";
    }

    public String name() {
        return names.get(at - 1);
    }

    public boolean isLast() {
        return at == names.size();
    }

    public WalkView withConflict(RoomView.Conflict came) {
        return new WalkView(view.withConflict(came), names, at, why, stand, photos);
    }
}
