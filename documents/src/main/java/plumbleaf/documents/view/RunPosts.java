package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Offset;

/** The posts that a run's fence hangs on: its own, and the post of another run (or of its own start, for a ring) where its first or last bay ends. */
public final class RunPosts {
    private static final double SAME_PLACE_IN = 0.5;

    private RunPosts() {}

    /** Along the walk, each at its station on this run; a post lent by another run keeps that run's name. */
    public static List<PostDetail> on(RunLayout run, List<PostDetail> all) {
        List<PostDetail> own =
                all.stream().filter(post -> post.post().run().equals(run.run())).toList();
        if (run.bays().isEmpty()) return own;
        Bay first = run.bays().get(0);
        Bay last = run.bays().get(run.bays().size() - 1);
        List<PostDetail> posts = new ArrayList<>();
        lent(first.from(), first.start(), own, all).ifPresent(posts::add);
        posts.addAll(own);
        Offset end = last.end();
        lent(last.to(), end, own, all).ifPresent(posts::add);
        return List.copyOf(posts);
    }

    private static Optional<PostDetail> lent(String id, Offset station, List<PostDetail> own, List<PostDetail> all) {
        boolean stands = own.stream()
                .anyMatch(post -> Math.abs(post.post().station().inches() - station.inches()) < SAME_PLACE_IN);
        if (stands) return Optional.empty();
        return all.stream()
                .filter(post -> post.post().id().equals(id))
                .findFirst()
                .map(post -> at(post, station));
    }

    private static PostDetail at(PostDetail detail, Offset station) {
        Post post = detail.post();
        Post here = new Post(
                post.id(),
                post.run(),
                post.gate(),
                station,
                post.at(),
                post.facing(),
                post.role(),
                post.support(),
                post.width(),
                post.hole(),
                post.grade(),
                post.top());
        return new PostDetail(
                here,
                detail.hole(),
                detail.depth(),
                detail.length(),
                detail.section(),
                detail.concrete(),
                detail.governedBy());
    }
}
