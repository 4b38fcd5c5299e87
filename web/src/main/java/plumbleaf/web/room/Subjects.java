package plumbleaf.web.room;

import java.util.List;
import java.util.Optional;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.documents.view.RunPosts;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;

/** What the drawings are of, put together from a design. */
record Subjects(Design design) {
    /** The leaves of a gate that was worked out: one, or two of a pair. */
    List<GateSubject> of(GateDesign gate) {
        if (gate.plan().hangs().isEmpty()) return List.of();
        if (post(gate.hingePost()).isEmpty() || post(gate.latchPost()).isEmpty()) return List.of();
        return PacketSubjects.subjects(design.job(), design, gate);
    }

    List<PostDetail> posts(RunLayout run) {
        return RunPosts.on(run, PacketSubjects.posts(design));
    }

    private Optional<Post> post(String id) {
        for (RunLayout run : design.layout().runs())
            for (Post post : run.posts()) if (post.id().equals(id)) return Optional.of(post);
        return Optional.empty();
    }
}
