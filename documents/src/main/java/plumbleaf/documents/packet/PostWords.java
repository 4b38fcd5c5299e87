package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.engine.line.RunLayout;

/** Posts of one run in few words: {@code P1 to P3, P6}. */
final class PostWords {
    private PostWords() {}

    /** Those that stand beside one another along the run are said as from and to. */
    static String of(RunLayout run, List<PostDetail> posts) {
        List<String> walk = run.posts().stream().map(post -> post.id()).toList();
        List<String> ids = posts.stream().map(post -> post.post().id()).toList();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < walk.size(); i++) {
            if (!ids.contains(walk.get(i))) continue;
            int last = i;
            while (last + 1 < walk.size() && ids.contains(walk.get(last + 1))) last++;
            words.add(last == i ? walk.get(i) : walk.get(i) + (last == i + 1 ? " and " : " to ") + walk.get(last));
            i = last;
        }
        return String.join(", ", words);
    }
}
