package plumbleaf.web.page;

import java.util.List;

/**
 * One screen of the walk about a site.
 *
 * @param view  the job, with the one panel of questions
 * @param names of all screens, in their order
 * @param at    which one this is, from 1
 * @param why   what hangs on the answers
 * @param stand what the job comes to now, in words
 */
public record WalkView(RoomView view, List<String> names, int at, String why, String stand) {
    public WalkView {
        names = List.copyOf(names);
    }

    public String name() {
        return names.get(at - 1);
    }

    public boolean isLast() {
        return at == names.size();
    }

    public WalkView withConflict(RoomView.Conflict came) {
        return new WalkView(view.withConflict(came), names, at, why, stand);
    }
}
