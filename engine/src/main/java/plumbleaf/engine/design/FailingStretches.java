package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.quantity.Length;

/** On which parts of a run posts fail: from half way to the last one that stands, to half way to the next. */
final class FailingStretches {
    private FailingStretches() {}

    /** @param posts the first and the last that fail, as one says it */
    record Stretch(Length from, Length to, String posts) {}

    /**
     * @param line of the run
     * @param posts of the run alone, along the walk
     * @param failing ids
     */
    static List<Stretch> of(PlanLine line, List<PostDesign> posts, Set<String> failing) {
        List<Stretch> stretches = new ArrayList<>();
        int first = -1;
        for (int at = 0; at <= posts.size(); at++) {
            boolean fails = at < posts.size() && failing.contains(posts.get(at).id());
            if (fails && first < 0) first = at;
            if (fails || first < 0) continue;
            Length from = first == 0 ? Length.ZERO : between(posts.get(first - 1), posts.get(first));
            Length to = at == posts.size() ? line.length() : between(posts.get(at - 1), posts.get(at));
            stretches.add(new Stretch(from, to, words(posts.subList(first, at))));
            first = -1;
        }
        return stretches;
    }

    /** Whole sides, from corner to corner, of those on which a post fails. */
    static List<Stretch> sides(PlanLine line, List<PostDesign> posts, Set<String> failing) {
        List<Stretch> sides = new ArrayList<>();
        double startIn = 0;
        for (int vertex = 1; vertex <= line.legs(); vertex++) {
            double endIn = line.stationOfVertex(vertex).inches();
            boolean turns = vertex == line.legs() || PostRole.atTurn(line.turnAt(vertex)) != PostRole.LINE;
            if (!turns) continue;
            double fromIn = startIn;
            List<PostDesign> there = posts.stream()
                    .filter(post -> fromIn <= stationIn(post) && stationIn(post) <= endIn)
                    .toList();
            if (there.stream().anyMatch(post -> failing.contains(post.id())))
                sides.add(new Stretch(Length.inches(fromIn), Length.inches(endIn), words(there)));
            startIn = endIn;
        }
        return sides;
    }

    private static String words(List<PostDesign> posts) {
        String first = posts.get(0).id();
        return posts.size() == 1
                ? first
                : first + " to " + posts.get(posts.size() - 1).id();
    }

    private static Length between(PostDesign one, PostDesign other) {
        return Length.inches(Math.rint((stationIn(one) + stationIn(other)) / 2));
    }

    private static double stationIn(PostDesign post) {
        return post.post().station().inches();
    }
}
