package plumbleaf.browser;

import java.util.List;
import java.util.Optional;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;

/**
 * A drawing as the engine answers it.
 *
 * @param svg empty where the page has it already
 */
record Drawn(String of, String key, Optional<String> name, Optional<String> svg) {
    /** All of an answer to {@code drawings}, or to {@code laid}. */
    static List<Drawn> in(String json) {
        Node root = JsonReader.read(json).match(tree -> tree.root(), broken -> {
            throw new AssertionError("The engine's answer is no JSON");
        });
        Node list = root.match(
                object -> object.get("drawings").orElseThrow(),
                array -> array,
                text -> root,
                number -> root,
                flag -> root,
                nothing -> root);
        return list.match(
                object -> List.<Drawn>of(),
                array -> array.items().stream().map(Drawn::of).toList(),
                text -> List.of(),
                number -> List.of(),
                flag -> List.of(),
                nothing -> List.of());
    }

    private static Drawn of(Node drawing) {
        return new Drawn(
                said(drawing, "of").orElseThrow(),
                said(drawing, "key").orElseThrow(),
                said(drawing, "name"),
                said(drawing, "svg"));
    }

    private static Optional<String> said(Node drawing, String key) {
        return NodePath.of(key)
                .find(drawing)
                .map(node ->
                        node.match(o -> "", list -> "", text -> text.text(), number -> "", flag -> "", none -> ""));
    }
}
