package plumbleaf.jobfile.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Place;

class InputTest {
    @Test
    void anErrorIsOneLineAsAgreed() {
        InputError error = InputError.at(
                "yard.json",
                new Place(14, 20),
                "gates[0].opening",
                "50",
                "a length needs its unit",
                "write 50\" or 4' 2\"");
        assertThat(error.text())
                .isEqualTo("yard.json:14: gates[0].opening \"50\": a length needs its unit; write 50\" or 4' 2\"");
        assertThat(JsonWriter.compact(error.json()))
                .isEqualTo(
                        "{ \"file\": \"yard.json\", \"line\": 14, \"column\": 20, \"field\": \"gates[0].opening\", \"value\": \"50\","
                                + " \"problem\": \"a length needs its unit\", \"cure\": \"write 50\\\" or 4' 2\\\"\" }");
        assertThat(InputError.ofFile("x.json", "there is no such file", "check the name")
                        .text())
                .isEqualTo("x.json: there is no such file; check the name");
    }

    @Test
    void anErrorNeverBreaksItsLineOrSteersATerminal() {
        InputError error = InputError.at("a", new Place(1, 1), "f", "x\n\u001b[31m" + "y".repeat(200), "bad", "good");
        assertThat(error.text()).isEqualTo("a:1: f \"x??[31m" + "y".repeat(53) + "...\": bad; good");
    }

    @Test
    void theNearestWordIsFound() {
        List<String> known = List.of("opening", "opens", "station", "TUBE-2x2x0.083");
        assertThat(Nearest.to("openning", known)).contains("opening");
        assertThat(Nearest.to("staiton", known)).contains("station");
        assertThat(Nearest.to("tube-2x2x0.083", known)).contains("TUBE-2x2x0.083");
        assertThat(Nearest.to("colour", known)).isEmpty();
        assertThat(Nearest.steps("staiton", "station")).isEqualTo(1);
        assertThat(Nearest.steps("", "abc")).isEqualTo(3);
    }

    @Test
    void aFileOfWrongKeysEndsInACountAndNotInAFlood() {
        StringBuilder text = new StringBuilder("{");
        for (int i = 0; i < 2000; i++)
            text.append(i == 0 ? "" : ",").append("\"k").append(i).append("\": 1");
        Intake intake = new Intake("f.json");
        intake.open(text.append('}').toString());
        List<InputError> errors = intake.finish();
        assertThat(errors).hasSize(501);
        assertThat(errors.get(500).text()).isEqualTo("f.json: there are 1500 more errors; put these right first");
    }

    @Test
    void quantitiesAreWrittenSoThatTheyReadBackTheSame() {
        Random random = new Random(5);
        for (int i = 0; i < 5000; i++) {
            Speed speed = same(TextKind.SPEED, random.nextDouble() * 150 + " m/s");
            assertThat(speed.mph()).isPositive();
            Slope slope = same(TextKind.SLOPE, "1 in " + (1 + random.nextInt(999)));
            assertThat(slope.ratio()).isPositive();
            Angle angle = same(TextKind.ANGLE, random.nextInt(3600) / 10.0 + " deg");
            assertThat(angle.radians()).isNotNegative();
            assertThat(same(TextKind.SHARE, random.nextInt(1000) / 10.0 + "%")).isNotNegative();
        }
    }

    /** The value of a text, once it is sure that it is written as something that reads back as the same value. */
    private static <T> T same(TextKind<T> kind, String text) {
        T value = kind.read().apply(text).value().orElseThrow();
        String written = kind.write().apply(value);
        assertThat(kind.read().apply(written).value())
                .as(text + " written as " + written)
                .contains(value);
        return value;
    }
}
