package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * How a gate or a run is made, apart from where it stands: taken out of one job as a text, laid into another. Ground, line, hand, ends, what
 * lies in the way and what stands already belong to the place and stay.
 */
final class BuildText {
    private static final Set<String> OF_THE_PLACE = Set.of(
            "id",
            "run",
            "station",
            "opening",
            "hinge",
            "swing",
            "opens",
            "slides",
            "name",
            "hingePost",
            "latchPost",
            "asSet",
            "release",
            "regrade",
            "landing",
            "setBack",
            "obstacles",
            "outside",
            "start",
            "legs",
            "checks",
            "ends",
            "noDig",
            "set",
            "posts",
            "otherPosts",
            "basis",
            "crossSlope",
            "fits");

    private BuildText() {}

    /** @param thing id of a gate or a run */
    static String taken(DocumentText text, String list, String thing) {
        List<String> members = new ArrayList<>();
        String at = list + "[" + thing + "]";
        for (String key : text.keys(at)) if (!OF_THE_PLACE.contains(key)) members.add(member(text, at, key));
        List<String> build = new ArrayList<>();
        for (String key : text.keys("builds." + thing)) build.add(member(text, "builds." + thing, key));
        return "{ \"thing\": { " + String.join(", ", members) + " }, \"build\": { " + String.join(", ", build) + " } }";
    }

    private static String member(DocumentText text, String at, String key) {
        return DocumentText.quoted(key) + ": " + text.json(at + "." + key).orElse("null");
    }

    /** What was said of how the thing is made goes; what the build says takes its place. */
    static DocumentText on(DocumentText text, String list, String thing, String content) {
        DocumentText build = DocumentText.of(content);
        String at = list + "[" + thing + "]";
        DocumentText out = text;
        for (String key : text.keys(at)) if (!OF_THE_PLACE.contains(key)) out = out.without(at + "." + key);
        for (String key : build.keys("thing"))
            out = out.with(at + "." + key, build.json("thing." + key).orElse("null"));
        out = out.without("builds." + thing);
        if (build.keys("build").isEmpty()) return out;
        return out.with("builds." + thing, build.json("build").orElse("{}"));
    }
}
