package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbleaf.engine.job.PostStretch;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.support.Support;

/** What holds the posts of a run, or of a part of it, as a remedy's edit says it: {@code posts.support=new-footing}, {@code otherPosts[0].support.depth=4"}. */
final class HeldEdit {
    private static final Pattern PART = Pattern.compile("otherPosts\\[(\\d{1,6})]\\.(support.*)");

    private HeldEdit() {}

    static Optional<Run> on(Run run, String place, String value) {
        Matcher part = PART.matcher(place);
        if (!part.matches())
            return changed(run.posts(), place.substring("posts.".length()), value)
                    .map(held -> run.held(held, run.otherPosts()));
        int at = Integer.parseInt(part.group(1));
        if (at >= run.otherPosts().size()) return Optional.empty();
        PostStretch now = run.otherPosts().get(at);
        return changed(now.posts(), part.group(2), value).map(held -> {
            List<PostStretch> parts = new ArrayList<>(run.otherPosts());
            parts.set(at, new PostStretch(now.from(), now.to(), held));
            return run.held(run.posts(), parts);
        });
    }

    private static Optional<Support> changed(Support now, String key, String value) {
        if (key.equals("support") && value.equals("new-footing")) return Optional.of(new Support.NewFooting());
        if (!key.equals("support.depth")) return Optional.empty();
        return LengthText.length(value)
                .value()
                .flatMap(depth -> now.match(
                        footing -> Optional.empty(),
                        driven -> Optional.of(new Support.Driven(depth)),
                        plate -> Optional.empty(),
                        socket -> Optional.of(new Support.CoreSocket(depth, socket.slab())),
                        wall -> Optional.empty(),
                        existing -> Optional.empty()));
    }
}
