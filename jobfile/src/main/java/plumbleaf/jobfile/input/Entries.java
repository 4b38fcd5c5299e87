package plumbleaf.jobfile.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.ObjectNode;

/**
 * The fields of one object being written, by the same kinds that {@link Fields} reads. What was assumed stays out, so that a file says
 * only what somebody said; so do empty texts, lists and objects.
 */
public final class Entries {
    private final Json.Members members = Json.object();
    private final Set<String> assumed;
    private final String path;

    /** @param assumed the fields that nobody gave */
    public Entries(Set<String> assumed) {
        this(assumed, "");
    }

    private Entries(Set<String> assumed, String path) {
        this.assumed = assumed;
        this.path = path;
    }

    public <T> Entries put(String key, TextKind<T> kind, T value) {
        return node(key, Json.text(kind.write().apply(value)));
    }

    public <T> Entries putIfAny(String key, TextKind<T> kind, Optional<T> value) {
        return value.isPresent() ? put(key, kind, value.get()) : this;
    }

    public Entries words(String key, String text) {
        return text.isEmpty() ? this : node(key, Json.text(text));
    }

    public Entries number(String key, double value) {
        return node(key, Json.number(value));
    }

    public Entries count(String key, int value) {
        return node(key, Json.count(value));
    }

    public Entries flag(String key, boolean value) {
        return value ? node(key, Json.flag(true)) : this;
    }

    public Entries object(String key, Consumer<Entries> fill) {
        Entries inner = new Entries(assumed, Intake.join(path, key));
        fill.accept(inner);
        return inner.members.isEmpty() ? this : node(key, inner.build());
    }

    public <T> Entries objects(String key, List<T> items, BiConsumer<T, Entries> fill) {
        if (items.isEmpty()) return this;
        return list(key, items, (item, at) -> {
            Entries inner = new Entries(assumed, at);
            fill.accept(item, inner);
            return inner.build();
        });
    }

    public <T> Entries values(String key, TextKind<T> kind, List<T> items) {
        if (items.isEmpty()) return this;
        return list(key, items, (item, at) -> Json.text(kind.write().apply(item)));
    }

    /** A word, bare where nothing belongs to it, else as the {@code kind} of an object. */
    public Entries choice(String key, String kind, Consumer<Entries> fill) {
        return node(key, choiceNode(kind, Intake.join(path, key), fill));
    }

    /** A list of such choices. */
    public <T> Entries choices(String key, List<T> items, Function<T, String> kind, BiConsumer<T, Entries> fill) {
        if (items.isEmpty()) return this;
        return list(key, items, (item, at) -> choiceNode(kind.apply(item), at, entries -> fill.accept(item, entries)));
    }

    private Node choiceNode(String kind, String at, Consumer<Entries> fill) {
        Entries inner = new Entries(assumed, at);
        inner.members.put("kind", kind);
        fill.accept(inner);
        return inner.build().members().size() == 1 ? Json.text(kind) : inner.build();
    }

    private interface Item<T> {
        Node node(T item, String path);
    }

    private <T> Entries list(String key, List<T> items, Item<T> make) {
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < items.size(); i++)
            nodes.add(make.node(items.get(i), Intake.join(path, key) + "[" + i + "]"));
        return node(key, Json.list(nodes, is -> is));
    }

    private Entries node(String key, Node value) {
        if (!assumed.contains(Intake.join(path, key))) members.put(key, value);
        return this;
    }

    public ObjectNode build() {
        return members.build();
    }
}
