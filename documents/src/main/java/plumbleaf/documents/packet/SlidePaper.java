package plumbleaf.documents.packet;

import java.util.List;
import java.util.Optional;
import plumbleaf.documents.view.SlideSubject;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.SlideDesign;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.Gate;

/**
 * A slide gate as its papers need it.
 *
 * @param sentence the way it opens, seen from outside
 * @param carried how it is carried; empty where that is not worked out
 * @param loadPath weakest link first
 */
public record SlidePaper(
        Gate asked, String sentence, SlideSubject subject, Optional<SlideDesign> carried, List<LinkUse> loadPath) {
    public SlidePaper {
        loadPath = List.copyOf(loadPath);
    }

    public String id() {
        return asked.id();
    }

    public Leaf leaf() {
        return subject.plan().leaf();
    }
}
