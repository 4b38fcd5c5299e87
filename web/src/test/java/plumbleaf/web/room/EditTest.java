package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** What a remedy asks for, made in the text of a job. */
class EditTest {
    private static final String JOB = "{ \"gates\": [{ \"id\": \"G1\", \"kind\": \"swing\", \"hinge\": \"left\" }] }";

    private static DocumentText after(String remedy) {
        DocumentText text = DocumentText.of(JOB);
        for (Edit edit : Edit.ofRemedy(remedy)) text = edit.on(text);
        return text;
    }

    @Test
    void severalEditsAreMadeOneAfterTheOtherAndNothingTakesAValueOut() {
        DocumentText text = after("gates[G1].hinge=; gates[G1].kind=pair; gates[G1].split=45%");
        assertThat(text.value("gates[G1].hinge")).isEmpty();
        assertThat(text.value("gates[G1].kind")).contains("pair");
        assertThat(text.value("gates[G1].split")).contains("45%");
    }

    @Test
    void countsAndYesStandBareAllElseInQuotes() {
        assertThat(after("gates[G1].meeting.rods=2").text()).contains("\"rods\": 2");
        assertThat(after("gates[G1].meeting.topKeeper=true").text()).contains("\"topKeeper\": true");
        assertThat(after("gates[G1].meeting.sleeveAbove=2\"").text()).contains("\"sleeveAbove\": \"2\\\"\"");
    }

    @Test
    void whatHoldsALeafOpenTakesFieldsOfItsOwn() {
        DocumentText text = after("gates[G1].holdOpen=stop; gates[G1].holdOpen.radius=30\"");
        assertThat(text.value("gates[G1].holdOpen.kind")).contains("stop");
        assertThat(text.value("gates[G1].holdOpen.radius")).contains("30\"");
    }

    @Test
    void aLeafWithALevelBottomSaysItsTopAndItsBottom() {
        DocumentText text =
                after("gates[G1].leaf.shape=sloped; gates[G1].leaf.shape.top=-8.3333%; gates[G1].leaf.shape.bottom=0%");
        assertThat(text.value("gates[G1].leaf.shape.kind")).contains("sloped");
        assertThat(text.value("gates[G1].leaf.shape.top")).contains("-8.3333%");
        assertThat(text.value("gates[G1].leaf.shape.bottom")).contains("0%");
    }

    @Test
    void theSidesOfARunAreWrittenAsTheirList() {
        DocumentText text = DocumentText.of("{ \"runs\": [{ \"id\": \"R1\", \"style\": \"x\" }] }");
        for (Edit edit :
                Edit.ofRemedy("runs[R1].sides=0\" to 5' 6\": post X-3 | 40' to 48': basis engineered depth 36\""))
            text = edit.on(text);
        assertThat(text.json("runs[R1].sides"))
                .contains("[ { \"from\": \"0\\\"\", \"to\": \"5' 6\\\"\", \"post\": \"X-3\" }, "
                        + "{ \"from\": \"40'\", \"to\": \"48'\", \"basis\": \"engineered\", \"depth\": \"3'\" } ]");
    }

    @Test
    void whatIsNoEditIsRefused() {
        assertThatThrownBy(() -> Edit.ofRemedy("=left")).isInstanceOf(IllegalArgumentException.class);
    }
}
