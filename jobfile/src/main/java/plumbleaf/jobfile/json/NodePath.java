package plumbleaf.jobfile.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.jobfile.json.Node.ArrayNode;
import plumbleaf.jobfile.json.Node.Member;
import plumbleaf.jobfile.json.Node.ObjectNode;

/**
 * The way to a value: {@code gates[0].leaf.hingeGap}. In place of a number the id of an item may stand: {@code gates[G1].hinge}.
 */
public final class NodePath {
    private final String text;
    private final List<Step> steps;

    /** A key of an object, or the place of an item in a list. */
    private record Step(String name, boolean item) {}

    private NodePath(String text, List<Step> steps) {
        this.text = text;
        this.steps = List.copyOf(steps);
    }

    public static NodePath of(String text) {
        List<Step> steps = new ArrayList<>();
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '.' || c == '[' || c == ']') {
                if (name.length() > 0) steps.add(new Step(name.toString(), c == ']'));
                name.setLength(0);
            } else {
                name.append(c);
            }
        }
        if (name.length() > 0) steps.add(new Step(name.toString(), false));
        return new NodePath(text, steps);
    }

    /** The value there, where there is one. */
    public Optional<Node> find(Node root) {
        Optional<Node> node = Optional.of(root);
        for (Step step : steps) node = node.flatMap(is -> child(is, step));
        return node;
    }

    /** The place of the value, or of the innermost thing round it that is there. */
    public Place placeIn(Node root) {
        Node node = root;
        for (Step step : steps) {
            Optional<Node> next = child(node, step);
            if (next.isEmpty()) break;
            node = next.get();
        }
        return node.place();
    }

    /**
     * The tree with this value set; objects on the way are made where they are missing, items of a list are not. A bare word on the
     * way, which is a choice written short, becomes its object.
     */
    public Node set(Node root, Node value) {
        return change(root, 0, Optional.of(value));
    }

    /** The tree without this value. */
    public Node remove(Node root) {
        return change(root, 0, Optional.empty());
    }

    private Node change(Node node, int at, Optional<Node> value) {
        if (at == steps.size()) return value.orElse(node);
        Step step = steps.get(at);
        return step.item() ? changeItem(node, step, at, value) : changeKey(node, step, at, value);
    }

    private Node changeKey(Node node, Step step, int at, Optional<Node> value) {
        ObjectNode object = node.asObject()
                .orElseGet(() -> node.asText()
                        .map(word -> Json.object().put("kind", word).build())
                        .orElseThrow(() -> noSuchPlace(node)));
        boolean last = at == steps.size() - 1;
        List<Member> members = new ArrayList<>();
        boolean found = false;
        for (Member member : object.members()) {
            boolean here = member.key().equals(step.name());
            found |= here;
            if (here && last && value.isEmpty()) continue;
            members.add(
                    here ? new Member(member.key(), member.place(), change(member.value(), at + 1, value)) : member);
        }
        if (!found && value.isPresent())
            members.add(new Member(step.name(), Place.NONE, change(Json.object().build(), at + 1, value)));
        return new ObjectNode(object.place(), members, object.doubled());
    }

    private Node changeItem(Node node, Step step, int at, Optional<Node> value) {
        ArrayNode array = node.asArray().orElseThrow(() -> noSuchPlace(node));
        int index = indexOf(array, step.name()).orElseThrow(() -> noSuchPlace(node));
        boolean last = at == steps.size() - 1;
        List<Node> items = new ArrayList<>(array.items());
        if (last && value.isEmpty()) items.remove(index);
        else items.set(index, change(items.get(index), at + 1, value));
        return new ArrayNode(array.place(), items);
    }

    private IllegalArgumentException noSuchPlace(Node node) {
        return new IllegalArgumentException(
                "No place " + text + " in this file: there is " + node.what() + " on the way");
    }

    private static Optional<Node> child(Node node, Step step) {
        if (!step.item()) return node.asObject().flatMap(object -> object.get(step.name()));
        return node.asArray().flatMap(array -> indexOf(array, step.name()).map(array.items()::get));
    }

    /** By number, or by the item's id. */
    private static Optional<Integer> indexOf(ArrayNode array, String name) {
        for (int i = 0; i < array.items().size(); i++) {
            boolean byId = array.items()
                    .get(i)
                    .asObject()
                    .flatMap(object -> object.get("id"))
                    .flatMap(Node::asText)
                    .filter(name::equals)
                    .isPresent();
            if (byId || Integer.toString(i).equals(name)) return Optional.of(i);
        }
        return Optional.empty();
    }

    @Override
    public String toString() {
        return text;
    }
}
