package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BuildTextTest {
    private static final String JOB = """
            { "gates": [
                { "id": "G1", "kind": "swing", "run": "R1", "station": "26'", "opening": "4'", "hinge": "left",
                  "leaf": { "infill": "5' 11\\"", "midRails": 1 }, "latch": { "model": "LATCH-THUMB" },
                  "hingePost": { "support": "existing" }, "release": "hold" },
                { "id": "G2", "kind": "swing", "run": "R2", "station": "3'", "opening": "9'", "swing": "out", "leaf": { "shape": "square" } } ],
              "builds": { "G1": { "frame": "TUBE-2x2x0.083" }, "G2": { "hole": "10\\"" } } }""";

    @Test
    void howAGateIsMadeIsTakenWithoutWhereItStands() {
        assertThat(BuildText.taken(DocumentText.of(JOB), "gates", "G1"))
                .isEqualTo(
                        "{ \"thing\": { \"kind\": \"swing\", \"leaf\": { \"infill\": \"5' 11\\\"\", \"midRails\": 1 },"
                                + " \"latch\": { \"model\": \"LATCH-THUMB\" } }, \"build\": { \"frame\": \"TUBE-2x2x0.083\" } }");
    }

    @Test
    void anotherGateMadeSoKeepsItsPlaceAndLosesItsOldMake() {
        DocumentText text = DocumentText.of(JOB);
        DocumentText made = BuildText.on(text, "gates", "G2", BuildText.taken(text, "gates", "G1"));
        assertThat(made.value("gates[G2].opening")).contains("9'");
        assertThat(made.value("gates[G2].swing")).contains("out");
        assertThat(made.value("gates[G2].leaf.infill")).contains("5' 11\"");
        assertThat(made.has("gates[G2].leaf.shape")).isFalse();
        assertThat(made.json("builds.G2")).contains("{ \"frame\": \"TUBE-2x2x0.083\" }");
        assertThat(made.json("gates[G1]")).isEqualTo(text.json("gates[G1]"));
    }
}
