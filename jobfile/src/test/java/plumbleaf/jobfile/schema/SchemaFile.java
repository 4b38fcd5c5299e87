package plumbleaf.jobfile.schema;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.Member;
import plumbleaf.jobfile.json.Node.ObjectNode;

/**
 * As much of JSON Schema 2020-12 as the published schemas use: it says what is wrong with a document, and which keys the schema knows.
 * A word of the schema that it does not understand is a fault, so that nothing in a schema goes unchecked.
 */
public final class SchemaFile {
    private static final Set<String> REMARKS = Set.of("$schema", "$id", "$defs", "title", "description", "examples");

    private final Node root;

    private SchemaFile(Node root) {
        this.root = root;
    }

    public static SchemaFile read(String name) {
        try {
            return new SchemaFile(tree(Files.readString(Path.of("..", "docs", "schema", name))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Node tree(String text) {
        return JsonReader.read(text).match(tree -> tree.root(), broken -> {
            throw new IllegalStateException(broken.problem() + " at " + broken.place());
        });
    }

    /** What is wrong with a document, each with its path; nothing when it is as the schema says. */
    public List<String> errors(String document) {
        List<String> errors = new ArrayList<>();
        check(root, tree(document), "", errors);
        return errors;
    }

    /** The keys of every object that the schema describes: {@code gates[].leaf} to {@code bottomGap, ...}. */
    public Map<String, Set<String>> keys() {
        Map<String, Set<String>> keys = new TreeMap<>();
        collect(root, "", keys);
        return keys;
    }

    private ObjectNode resolved(Node schema) {
        ObjectNode object = schema.asObject().orElseThrow();
        Optional<String> ref = object.get("$ref").flatMap(Node::asText);
        if (ref.isEmpty()) return object;
        Node at = root;
        for (String step : ref.get().substring(2).split("/", -1))
            at = at.asObject().flatMap(is -> is.get(step)).orElseThrow(() -> new IllegalStateException(ref.get()));
        return resolved(at);
    }

    private void collect(Node schema, String path, Map<String, Set<String>> keys) {
        ObjectNode object = resolved(schema);
        for (Member member : properties(object)) {
            keys.computeIfAbsent(path, unused -> new TreeSet<>()).add(member.key());
            collect(member.value(), path.isEmpty() ? member.key() : path + "." + member.key(), keys);
        }
        object.get("items").ifPresent(items -> collect(items, path + "[]", keys));
        object.get("additionalProperties")
                .filter(more -> more.asObject().isPresent())
                .ifPresent(more -> collect(more, path + ".*", keys));
        object.get("anyOf")
                .flatMap(Node::asArray)
                .ifPresent(any -> any.items().forEach(item -> collect(item, path, keys)));
    }

    private static List<Member> properties(ObjectNode schema) {
        return schema.get("properties")
                .flatMap(Node::asObject)
                .map(ObjectNode::members)
                .orElse(List.of());
    }

    private void check(Node schema, Node value, String path, List<String> errors) {
        ObjectNode object = resolved(schema);
        for (Member word : object.members()) {
            switch (word.key()) {
                case "type" -> type(word.value().asText().orElseThrow(), value, path, errors);
                case "const" -> same(List.of(word.value()), value, path, errors);
                case "enum" -> same(word.value().asArray().orElseThrow().items(), value, path, errors);
                case "pattern" ->
                    value.asText()
                            .filter(text -> !Pattern.compile(
                                            word.value().asText().orElseThrow())
                                    .matcher(text)
                                    .find())
                            .ifPresent(text -> errors.add(path + ": \"" + text + "\" is not as the pattern"));
                case "minLength" ->
                    value.asText().filter(String::isEmpty).ifPresent(text -> errors.add(path + ": empty"));
                case "minimum", "maximum" -> range(word, value, path, errors);
                case "minItems", "maxItems" -> size(word, value, path, errors);
                case "required" -> required(word.value(), value, path, errors);
                case "properties", "additionalProperties" -> {}
                case "items" ->
                    value.asArray().ifPresent(array -> {
                        for (int i = 0; i < array.items().size(); i++)
                            check(word.value(), array.items().get(i), path + "[" + i + "]", errors);
                    });
                case "anyOf" -> anyOf(word.value(), value, path, errors);
                case "if" -> {
                    boolean holds = holds(word.value(), value);
                    object.get(holds ? "then" : "else").ifPresent(then -> check(then, value, path, errors));
                }
                case "then", "else" -> {}
                default -> {
                    if (!REMARKS.contains(word.key()))
                        throw new IllegalStateException("The test does not know " + word.key());
                }
            }
        }
        value.asObject().ifPresent(is -> members(object, is, path, errors));
    }

    private boolean holds(Node schema, Node value) {
        List<String> errors = new ArrayList<>();
        check(schema, value, "", errors);
        return errors.isEmpty();
    }

    private void anyOf(Node any, Node value, String path, List<String> errors) {
        for (Node item : any.asArray().orElseThrow().items()) {
            if (holds(item, value)) return;
        }
        errors.add(path + ": none of the kinds");
    }

    private void members(ObjectNode schema, ObjectNode value, String path, List<String> errors) {
        Optional<ObjectNode> properties = schema.get("properties").flatMap(Node::asObject);
        for (Member member : value.members()) {
            String at = path.isEmpty() ? member.key() : path + "." + member.key();
            Optional<Node> known = properties.flatMap(is -> is.get(member.key()));
            if (known.isPresent()) check(known.get(), member.value(), at, errors);
            else
                schema.get("additionalProperties").ifPresent(more -> {
                    if (more.asObject().isPresent()) check(more, member.value(), at, errors);
                    else errors.add(at + ": unknown key");
                });
        }
    }

    private static void type(String type, Node value, String path, List<String> errors) {
        boolean fits = switch (type) {
            case "object" -> value.asObject().isPresent();
            case "array" -> value.asArray().isPresent();
            case "string" -> value.asText().isPresent();
            case "number" -> value.asNumber().isPresent();
            case "integer" ->
                value.asNumber().filter(digits -> !digits.contains(".")).isPresent();
            case "boolean" -> value.asFlag().isPresent();
            default -> throw new IllegalStateException(type);
        };
        if (!fits) errors.add(path + ": " + value.what() + ", not " + type);
    }

    private static void same(List<Node> allowed, Node value, String path, List<String> errors) {
        for (Node one : allowed) {
            boolean equal = one.asText().isPresent()
                    ? one.asText().equals(value.asText())
                    : one.asNumber().isPresent()
                            ? one.asNumber().equals(value.asNumber())
                            : one.asFlag().equals(value.asFlag());
            if (equal && one.what().equals(value.what())) return;
        }
        errors.add(path + ": not one of the values");
    }

    private static void range(Member word, Node value, String path, List<String> errors) {
        if (value.asNumber().isEmpty()) return;
        double number = Double.parseDouble(value.asNumber().get());
        double limit = Double.parseDouble(word.value().asNumber().orElseThrow());
        boolean inside = word.key().equals("minimum") ? number >= limit : number <= limit;
        if (!inside) errors.add(path + ": " + number + " is beyond " + word.key() + " " + limit);
    }

    private static void size(Member word, Node value, String path, List<String> errors) {
        if (value.asArray().isEmpty()) return;
        int size = value.asArray().get().items().size();
        int limit = Integer.parseInt(word.value().asNumber().orElseThrow());
        boolean inside = word.key().equals("minItems") ? size >= limit : size <= limit;
        if (!inside) errors.add(path + ": " + size + " items, " + word.key() + " " + limit);
    }

    private static void required(Node keys, Node value, String path, List<String> errors) {
        value.asObject().ifPresent(object -> {
            for (Node key : keys.asArray().orElseThrow().items()) {
                String name = key.asText().orElseThrow();
                if (object.get(name).isEmpty()) errors.add(path + ": " + name + " is missing");
            }
        });
    }
}
