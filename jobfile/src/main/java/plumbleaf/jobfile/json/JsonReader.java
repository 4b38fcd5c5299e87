package plumbleaf.jobfile.json;

import com.eclipsesource.json.JsonHandler;
import com.eclipsesource.json.JsonParser;
import com.eclipsesource.json.Location;
import com.eclipsesource.json.ParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import plumbleaf.jobfile.json.Node.ArrayNode;
import plumbleaf.jobfile.json.Node.FlagNode;
import plumbleaf.jobfile.json.Node.Member;
import plumbleaf.jobfile.json.Node.NullNode;
import plumbleaf.jobfile.json.Node.NumberNode;
import plumbleaf.jobfile.json.Node.ObjectNode;
import plumbleaf.jobfile.json.Node.TextNode;

/** Text to tree. Values may lie 64 deep and number a million; whatever is no JSON is refused with its place. */
public final class JsonReader {
    public static final int DEEPEST = 64;
    public static final int MOST_VALUES = 1_000_000;

    private JsonReader() {}

    /** What came of a text: its tree, or what is wrong with it and where. */
    public sealed interface Outcome {
        <T> T match(Function<Tree, T> tree, Function<Broken, T> broken);

        record Tree(Node root) implements Outcome {
            @Override
            public <T> T match(Function<Tree, T> tree, Function<Broken, T> broken) {
                return tree.apply(this);
            }
        }

        record Broken(Place place, String problem, String cure) implements Outcome {
            @Override
            public <T> T match(Function<Tree, T> tree, Function<Broken, T> broken) {
                return broken.apply(this);
            }
        }
    }

    public static Outcome read(String text) {
        if (text.isBlank())
            return new Outcome.Broken(new Place(1, 1), "the file is empty", "start one with plumbleaf new");
        TreeHandler handler = new TreeHandler();
        try {
            new JsonParser(handler).parse(text);
            return new Outcome.Tree(handler.last);
        } catch (ParseException e) {
            Place place = new Place(e.getLocation().line, e.getLocation().column);
            return new Outcome.Broken(
                    place,
                    "this is not JSON: " + words(String.valueOf(e.getMessage())),
                    "check the comma, quote or bracket here or just before");
        } catch (LimitPassed e) {
            return new Outcome.Broken(e.place, e.problem, e.cure);
        }
    }

    /** The parser's sentence without its place, which is told apart. */
    private static String words(String message) {
        int at = message.lastIndexOf(" at ");
        String plain = at < 0 ? message : message.substring(0, at);
        return plain.isEmpty() ? "unreadable" : Character.toLowerCase(plain.charAt(0)) + plain.substring(1);
    }

    private static final class LimitPassed extends RuntimeException {
        private final Place place;
        private final String problem;
        private final String cure;

        LimitPassed(Place place, String problem, String cure) {
            super(problem);
            this.place = place;
            this.problem = problem;
            this.cure = cure;
        }
    }

    private static final class ObjectSoFar {
        private final Place place;
        private final List<Member> members = new ArrayList<>();
        private final List<Member> doubled = new ArrayList<>();
        private final Set<String> keys = new LinkedHashSet<>();
        private Place keyPlace = Place.NONE;

        ObjectSoFar(Place place) {
            this.place = place;
        }
    }

    private static final class ArraySoFar {
        private final Place place;
        private final List<Node> items = new ArrayList<>();

        ArraySoFar(Place place) {
            this.place = place;
        }
    }

    private static final class TreeHandler extends JsonHandler<ArraySoFar, ObjectSoFar> {
        private Node last = new NullNode(Place.NONE);
        private Place start = Place.NONE;
        private int depth;
        private int values;

        private Place here() {
            Location location = getLocation();
            return new Place(location.line, location.column);
        }

        private void begin() {
            start = here();
            values++;
            if (values > MOST_VALUES)
                throw new LimitPassed(start, "there are more than a million values", "a job never needs as many");
        }

        private void deeper() {
            begin();
            depth++;
            if (depth > DEEPEST)
                throw new LimitPassed(start, "values lie more than 64 deep here", "a job never needs as many levels");
        }

        @Override
        public ArraySoFar startArray() {
            deeper();
            return new ArraySoFar(start);
        }

        @Override
        public void endArrayValue(ArraySoFar array) {
            array.items.add(last);
        }

        @Override
        public void endArray(ArraySoFar array) {
            depth--;
            last = new ArrayNode(array.place, array.items);
        }

        @Override
        public ObjectSoFar startObject() {
            deeper();
            return new ObjectSoFar(start);
        }

        @Override
        public void startObjectName(ObjectSoFar object) {
            object.keyPlace = here();
        }

        @Override
        public void endObjectValue(ObjectSoFar object, String name) {
            Member member = new Member(name, object.keyPlace, last);
            if (object.keys.add(name)) object.members.add(member);
            else object.doubled.add(member);
        }

        @Override
        public void endObject(ObjectSoFar object) {
            depth--;
            last = new ObjectNode(object.place, object.members, object.doubled);
        }

        @Override
        public void startString() {
            begin();
        }

        @Override
        public void endString(String string) {
            last = new TextNode(start, string);
        }

        @Override
        public void startNumber() {
            begin();
        }

        @Override
        public void endNumber(String string) {
            last = new NumberNode(start, string);
        }

        @Override
        public void startBoolean() {
            begin();
        }

        @Override
        public void endBoolean(boolean value) {
            last = new FlagNode(start, value);
        }

        @Override
        public void startNull() {
            begin();
        }

        @Override
        public void endNull() {
            last = new NullNode(start);
        }
    }
}
