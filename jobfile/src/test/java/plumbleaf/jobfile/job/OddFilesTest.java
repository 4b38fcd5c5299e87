package plumbleaf.jobfile.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.ArrayNode;
import plumbleaf.jobfile.json.Node.Member;
import plumbleaf.jobfile.json.Node.ObjectNode;
import plumbleaf.jobfile.json.Place;

/** However a file is broken, reading it ends in a job or in errors that each say what and where, never in a fault. */
@Tag("slow")
class OddFilesTest {
    private static final List<Node> ODD = List.of(
            Json.text(""),
            Json.text("-1'"),
            Json.text("0\""),
            Json.text("9999999'"),
            Json.text("1/64\""),
            Json.text("R1"),
            Json.text("S1"),
            Json.text("benchmark"),
            Json.text("none"),
            Json.text("1000%"),
            Json.text("-90 deg"),
            Json.number(0),
            Json.number(-7),
            Json.number(1e300),
            Json.flag(true),
            Json.nothing(),
            Json.object().build(),
            Json.list(List.of(), (Node node) -> node));

    @Test
    void valuesReplacedByOddOnes() {
        for (String text : List.of(Examples.NURSERY, FullJob.TEXT)) {
            Node root = JsonReader.read(text).match(tree -> tree.root(), broken -> Json.nothing());
            int count = count(root);
            for (int at = 0; at < count; at++) {
                for (int i = at % 4; i < ODD.size(); i += 4)
                    endsWell(JsonWriter.write(replaced(root, new int[] {at}, ODD.get(i))));
            }
        }
    }

    @Test
    void bytesChangedAndLost() {
        Random random = new Random(42);
        byte[] bytes = Examples.NURSERY.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 800; i++) {
            byte[] changed = bytes.clone();
            for (int j = random.nextInt(4); j >= 0; j--)
                changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
            int length = i % 3 == 0 ? random.nextInt(changed.length) : changed.length;
            byte[] cut = Arrays.copyOf(changed, length);
            JobReading reading = JobFile.read("odd.json", cut, Examples.CATALOGUE);
            assertThat(reading.job().isPresent()).isEqualTo(reading.errors().isEmpty());
        }
    }

    private static void endsWell(String text) {
        JobReading reading = JobFile.read("odd.json", text, Examples.CATALOGUE);
        for (InputError error : reading.errors()) {
            assertThat(error.problem()).isNotBlank();
            assertThat(error.cure()).isNotBlank();
            assertThat(error.line()).as(error.text()).isPositive();
        }
        reading.job().ifPresent(job -> assertThat(JobFile.write(job)).isNotBlank());
        assertThat(reading.job().isPresent()).isEqualTo(reading.errors().isEmpty());
    }

    private static int count(Node node) {
        return 1
                + node.match(
                        object -> object.members().stream()
                                .mapToInt(member -> count(member.value()))
                                .sum(),
                        array -> array.items().stream()
                                .mapToInt(OddFilesTest::count)
                                .sum(),
                        text -> 0,
                        number -> 0,
                        flag -> 0,
                        nothing -> 0);
    }

    /** The tree with its n-th value, counted from the root, replaced. */
    private static Node replaced(Node node, int[] left, Node odd) {
        if (left[0]-- == 0) return odd;
        return node.match(
                object -> {
                    List<Member> members = new ArrayList<>();
                    for (Member member : object.members())
                        members.add(new Member(member.key(), Place.NONE, replaced(member.value(), left, odd)));
                    return new ObjectNode(Place.NONE, members, List.of());
                },
                array -> {
                    List<Node> items = new ArrayList<>();
                    for (Node item : array.items()) items.add(replaced(item, left, odd));
                    return (Node) new ArrayNode(Place.NONE, items);
                },
                text -> text,
                number -> number,
                flag -> flag,
                nothing -> nothing);
    }
}
