package plumbleaf.jobfile.json;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One JSON value and the place where it stood. Numbers stay the text they were written as. */
public sealed interface Node {
    Place place();

    <T> T match(
            Function<ObjectNode, T> object,
            Function<ArrayNode, T> array,
            Function<TextNode, T> text,
            Function<NumberNode, T> number,
            Function<FlagNode, T> flag,
            Function<NullNode, T> nothing);

    /** This node as an object, where it is one. */
    default Optional<ObjectNode> asObject() {
        return match(
                Optional::of,
                a -> Optional.empty(),
                t -> Optional.empty(),
                n -> Optional.empty(),
                f -> Optional.empty(),
                x -> Optional.empty());
    }

    /** This node as a list, where it is one. */
    default Optional<ArrayNode> asArray() {
        return match(
                o -> Optional.empty(),
                Optional::of,
                t -> Optional.empty(),
                n -> Optional.empty(),
                f -> Optional.empty(),
                x -> Optional.empty());
    }

    /** This node's text, where it is one. */
    default Optional<String> asText() {
        return match(
                o -> Optional.empty(),
                a -> Optional.empty(),
                t -> Optional.of(t.text()),
                n -> Optional.empty(),
                f -> Optional.empty(),
                x -> Optional.empty());
    }

    /** The digits of this number as they were written, where it is one. */
    default Optional<String> asNumber() {
        return match(
                o -> Optional.empty(),
                a -> Optional.empty(),
                t -> Optional.empty(),
                n -> Optional.of(n.digits()),
                f -> Optional.empty(),
                x -> Optional.empty());
    }

    /** True or false, where this node is one of them. */
    default Optional<Boolean> asFlag() {
        return match(
                o -> Optional.empty(),
                a -> Optional.empty(),
                t -> Optional.empty(),
                n -> Optional.empty(),
                f -> Optional.of(f.is()),
                x -> Optional.empty());
    }

    /** What it is, in a word or two: {@code a list}. */
    default String what() {
        return match(
                o -> "an object", a -> "a list", t -> "a text", n -> "a number", f -> "true or false", x -> "null");
    }

    /** A key of an object with its value; {@code place} is that of the key. */
    record Member(String key, Place place, Node value) {}

    /**
     * An object; keys keep the order of the file.
     *
     * @param members the first of each key
     * @param doubled later ones of a key that was there already, which is an error in every file of ours
     */
    record ObjectNode(Place place, List<Member> members, List<Member> doubled) implements Node {
        public ObjectNode {
            members = List.copyOf(members);
            doubled = List.copyOf(doubled);
        }

        /** The value of a key, where the object has it. */
        public Optional<Node> get(String key) {
            return members.stream()
                    .filter(member -> member.key().equals(key))
                    .map(Member::value)
                    .findFirst();
        }

        @Override
        public <T> T match(
                Function<ObjectNode, T> object,
                Function<ArrayNode, T> array,
                Function<TextNode, T> text,
                Function<NumberNode, T> number,
                Function<FlagNode, T> flag,
                Function<NullNode, T> nothing) {
            return object.apply(this);
        }
    }

    record ArrayNode(Place place, List<Node> items) implements Node {
        public ArrayNode {
            items = List.copyOf(items);
        }

        @Override
        public <T> T match(
                Function<ObjectNode, T> object,
                Function<ArrayNode, T> array,
                Function<TextNode, T> text,
                Function<NumberNode, T> number,
                Function<FlagNode, T> flag,
                Function<NullNode, T> nothing) {
            return array.apply(this);
        }
    }

    record TextNode(Place place, String text) implements Node {
        @Override
        public <T> T match(
                Function<ObjectNode, T> object,
                Function<ArrayNode, T> array,
                Function<TextNode, T> text,
                Function<NumberNode, T> number,
                Function<FlagNode, T> flag,
                Function<NullNode, T> nothing) {
            return text.apply(this);
        }
    }

    record NumberNode(Place place, String digits) implements Node {
        @Override
        public <T> T match(
                Function<ObjectNode, T> object,
                Function<ArrayNode, T> array,
                Function<TextNode, T> text,
                Function<NumberNode, T> number,
                Function<FlagNode, T> flag,
                Function<NullNode, T> nothing) {
            return number.apply(this);
        }
    }

    record FlagNode(Place place, boolean is) implements Node {
        @Override
        public <T> T match(
                Function<ObjectNode, T> object,
                Function<ArrayNode, T> array,
                Function<TextNode, T> text,
                Function<NumberNode, T> number,
                Function<FlagNode, T> flag,
                Function<NullNode, T> nothing) {
            return flag.apply(this);
        }
    }

    record NullNode(Place place) implements Node {
        @Override
        public <T> T match(
                Function<ObjectNode, T> object,
                Function<ArrayNode, T> array,
                Function<TextNode, T> text,
                Function<NumberNode, T> number,
                Function<FlagNode, T> flag,
                Function<NullNode, T> nothing) {
            return nothing.apply(this);
        }
    }
}
