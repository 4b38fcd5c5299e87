package plumbleaf.jobfile.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.jobfile.json.Node.ObjectNode;

class JsonTest {
    private static Node read(String text) {
        return JsonReader.read(text).match(tree -> tree.root(), broken -> {
            throw new AssertionError(broken);
        });
    }

    private static String broken(String text) {
        return JsonReader.read(text)
                .match(
                        tree -> "read",
                        is -> is.place().line() + ":" + is.place().column() + " " + is.problem());
    }

    @Test
    void everyValueKnowsItsPlace() {
        ObjectNode root = read("{\n  \"a\": [1,\n \"x\", true], \"b\": {\"c\": null}\n}")
                .asObject()
                .orElseThrow();
        assertThat(root.place()).isEqualTo(new Place(1, 1));
        assertThat(root.members().get(0).place()).isEqualTo(new Place(2, 3));
        assertThat(NodePath.of("a[0]").find(root).map(Node::place)).contains(new Place(2, 9));
        assertThat(NodePath.of("a[1]").find(root).map(Node::place)).contains(new Place(3, 2));
        assertThat(NodePath.of("a[2]").find(root).map(Node::place)).contains(new Place(3, 7));
        assertThat(NodePath.of("b.c").find(root).map(Node::place)).contains(new Place(3, 25));
    }

    @Test
    void doubledKeysAreKeptApart() {
        ObjectNode root = read("{\"a\": 1, \"a\": 2}").asObject().orElseThrow();
        assertThat(root.members()).hasSize(1);
        assertThat(root.doubled()).hasSize(1);
        assertThat(root.doubled().get(0).place()).isEqualTo(new Place(1, 10));
    }

    @Test
    void refusesWhatIsNoJson() {
        assertThat(broken("{\"a\": 1,}")).isEqualTo("1:9 this is not JSON: expected name");
        assertThat(broken("{\"a\" 1}")).isEqualTo("1:6 this is not JSON: expected ':'");
        assertThat(broken("[1 2]")).isEqualTo("1:4 this is not JSON: expected ',' or ']'");
        assertThat(broken("[01]")).startsWith("1:3 this is not JSON");
        assertThat(broken("[1] x")).startsWith("1:5 this is not JSON");
        assertThat(broken("\"\t\"")).startsWith("1:2 this is not JSON");
        assertThat(broken("[".repeat(65) + "]".repeat(65))).isEqualTo("1:65 values lie more than 64 deep here");
        assertThat(broken("[".repeat(64) + "]".repeat(64))).isEqualTo("read");
        assertThat(broken("[" + "0,".repeat(1_000_000) + "0]")).endsWith("there are more than a million values");
    }

    @Test
    void numbersAreWrittenShortestWithoutExponentOrMinusZero() {
        assertThat(JsonWriter.write(Json.numbers(List.of(0.1, -0.0, 1e-7, 1e21, 50.5))))
                .isEqualTo("[\n  0.1,\n  0,\n  0.0000001,\n  1000000000000000000000,\n  50.5\n]\n");
        assertThatThrownBy(() -> Json.number(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Only a finite number can be written, not not a number");
    }

    @Test
    void putsOnOneLineWhatFits() {
        Node tree = Json.object()
                .put("short", Json.object().put("a", 1).put("b", "x\"\\\n\u0001"))
                .put("empty", Json.object())
                .put("long", Json.list(List.of("a".repeat(70), "b".repeat(70)), Json::text))
                .build();
        assertThat(JsonWriter.write(tree))
                .isEqualTo(
                        "{\n  \"short\": { \"a\": 1, \"b\": \"x\\\"\\\\\\n\\u0001\" },\n  \"empty\": {},\n  \"long\": [\n    \""
                                + "a".repeat(70)
                                + "\",\n    \""
                                + "b".repeat(70)
                                + "\"\n  ]\n}\n");
        assertThat(JsonWriter.compact(tree))
                .startsWith("{ \"short\": { \"a\": 1")
                .doesNotContain("\n");
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        Random random = new Random(99);
        for (int i = 0; i < 300; i++) {
            Node tree = random(random, 0);
            String text = JsonWriter.write(Json.object().put("tree", tree).build());
            assertThat(JsonWriter.write(read(text))).isEqualTo(text);
            assertThat(JsonWriter.compact(read(JsonWriter.compact(tree)))).isEqualTo(JsonWriter.compact(tree));
        }
    }

    private static Node random(Random random, int depth) {
        return switch (random.nextInt(depth > 5 ? 4 : 6)) {
            case 0 -> Json.text(text(random));
            case 1 -> Json.number(random.nextGaussian() * Math.pow(10, random.nextInt(30) - 15));
            case 2 -> Json.flag(random.nextBoolean());
            case 3 -> Json.nothing();
            case 4 -> {
                List<Node> items = new ArrayList<>();
                for (int i = random.nextInt(6); i > 0; i--) items.add(random(random, depth + 1));
                yield Json.list(items, is -> is);
            }
            default -> {
                Json.Members members = Json.object();
                for (int i = random.nextInt(6); i > 0; i--)
                    members.put("key" + i + text(random), random(random, depth + 1));
                yield members.build();
            }
        };
    }

    private static String text(Random random) {
        StringBuilder out = new StringBuilder();
        for (int i = random.nextInt(20); i > 0; i--)
            out.appendCodePoint(random.nextInt(5) == 0 ? 0x1F6AA : random.nextInt(0x2100));
        return out.toString();
    }

    @Test
    void pathsReadSetAndRemove() {
        Node root = read("{\"gates\": [{\"id\": \"G1\", \"holdOpen\": \"free\"}, {\"id\": \"G2\"}]}");
        assertThat(NodePath.of("gates[G2].id").find(root).flatMap(Node::asText)).contains("G2");
        assertThat(NodePath.of("gates[1].id").find(root).flatMap(Node::asText)).contains("G2");
        assertThat(NodePath.of("gates[G3].id").find(root)).isEmpty();
        assertThat(JsonWriter.compact(NodePath.of("gates[G2].leaf.bottomGap").set(root, Json.text("4\""))))
                .isEqualTo(
                        "{ \"gates\": [{ \"id\": \"G1\", \"holdOpen\": \"free\" }, { \"id\": \"G2\", \"leaf\": { \"bottomGap\": \"4\\\"\" } }] }");
        assertThat(JsonWriter.compact(NodePath.of("gates[0].holdOpen.radius").set(root, Json.text("40\""))))
                .contains("\"holdOpen\": { \"kind\": \"free\", \"radius\": \"40\\\"\" }");
        assertThat(JsonWriter.compact(NodePath.of("gates[G1]").remove(root)))
                .isEqualTo("{ \"gates\": [{ \"id\": \"G2\" }] }");
        assertThat(JsonWriter.compact(NodePath.of("gates[G1].holdOpen").remove(root)))
                .isEqualTo("{ \"gates\": [{ \"id\": \"G1\" }, { \"id\": \"G2\" }] }");
        assertThatThrownBy(() -> NodePath.of("gates[G9].id").set(root, Json.text("x")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("No place gates[G9].id in this file: there is a list on the way");
    }
}
