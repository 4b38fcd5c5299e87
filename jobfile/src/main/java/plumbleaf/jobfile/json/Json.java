package plumbleaf.jobfile.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.jobfile.json.Node.ArrayNode;
import plumbleaf.jobfile.json.Node.FlagNode;
import plumbleaf.jobfile.json.Node.Member;
import plumbleaf.jobfile.json.Node.NullNode;
import plumbleaf.jobfile.json.Node.NumberNode;
import plumbleaf.jobfile.json.Node.ObjectNode;
import plumbleaf.jobfile.json.Node.TextNode;

/** Makes trees to be written. Keys come out in the order they were put in. */
public final class Json {
    private Json() {}

    public static Node text(String text) {
        return new TextNode(Place.NONE, text);
    }

    /** The shortest plain decimal that reads back the same; a number that is none is a fault of ours, never written. */
    public static Node number(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value))
            throw new IllegalArgumentException(
                    "Only a finite number can be written, not " + DecimalText.shortest(value));
        return new NumberNode(Place.NONE, DecimalText.shortest(value));
    }

    public static Node count(long value) {
        return new NumberNode(Place.NONE, Long.toString(value));
    }

    public static Node flag(boolean value) {
        return new FlagNode(Place.NONE, value);
    }

    public static Node nothing() {
        return new NullNode(Place.NONE);
    }

    public static <T> Node list(List<T> items, Function<? super T, ? extends Node> each) {
        List<Node> nodes = new ArrayList<>();
        for (T item : items) nodes.add(each.apply(item));
        return new ArrayNode(Place.NONE, nodes);
    }

    public static Node texts(List<String> items) {
        return list(items, Json::text);
    }

    public static Node numbers(List<Double> items) {
        return list(items, Json::number);
    }

    public static Members object() {
        return new Members();
    }

    /** An object being put together. */
    public static final class Members {
        private final List<Member> members = new ArrayList<>();

        private Members() {}

        public Members put(String key, Node value) {
            for (Member member : members) {
                if (member.key().equals(key)) throw new IllegalArgumentException("Key " + key + " was put twice");
            }
            members.add(new Member(key, Place.NONE, value));
            return this;
        }

        public Members put(String key, String text) {
            return put(key, text(text));
        }

        public Members put(String key, double value) {
            return put(key, number(value));
        }

        public Members put(String key, int value) {
            return put(key, count(value));
        }

        public Members put(String key, boolean value) {
            return put(key, flag(value));
        }

        public Members put(String key, Members object) {
            return put(key, object.build());
        }

        public <T> Members put(String key, List<T> items, Function<? super T, ? extends Node> each) {
            return put(key, list(items, each));
        }

        /** Puts the key only when there is a value. */
        public Members putIfAny(String key, Optional<? extends Node> value) {
            return value.isPresent() ? put(key, value.get()) : this;
        }

        /** The number, or null where there is none. */
        public Members putOrNull(String key, OptionalDouble value) {
            return put(key, value.isPresent() ? number(value.getAsDouble()) : nothing());
        }

        public boolean isEmpty() {
            return members.isEmpty();
        }

        public ObjectNode build() {
            return new ObjectNode(Place.NONE, members, List.of());
        }
    }
}
