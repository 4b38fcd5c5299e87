package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which bays stand beside which post: asked of every post of a yard, so it is read from the layout once. */
public final class BaysBeside {
    private final Map<String, List<Bay>> endingAt = new LinkedHashMap<>();
    private final Map<String, List<Bay>> beginningAt = new LinkedHashMap<>();

    private BaysBeside() {}

    public static BaysBeside of(Layout layout) {
        BaysBeside beside = new BaysBeside();
        for (RunLayout run : layout.runs()) {
            for (Bay bay : run.bays()) {
                beside.endingAt
                        .computeIfAbsent(bay.to(), post -> new ArrayList<>())
                        .add(bay);
                beside.beginningAt
                        .computeIfAbsent(bay.from(), post -> new ArrayList<>())
                        .add(bay);
            }
        }
        return beside;
    }

    /** Bays of any run that end at a post. */
    public List<Bay> endingAt(Post post) {
        return List.copyOf(endingAt.getOrDefault(post.id(), List.of()));
    }

    /** Bays of any run that begin at a post. */
    public List<Bay> beginningAt(Post post) {
        return List.copyOf(beginningAt.getOrDefault(post.id(), List.of()));
    }

    /** Bays of the post's own run on both sides of it, along the walk. */
    public List<Bay> ofItsRun(Post post) {
        List<Bay> bays = new ArrayList<>(endingAt(post));
        bays.addAll(beginningAt(post));
        bays.removeIf(bay -> !bay.run().equals(post.run()));
        return bays;
    }
}
