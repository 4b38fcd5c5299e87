package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.packet.ProfileSheets;
import plumbleaf.documents.view.GateSubject;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.line.Bay;

/** Every bay is on a profile, those too that end on another run's post or on the first post of a ring. */
class ProfileBaysTest {
    private static Design design(String example) throws IOException {
        return PaperTrial.design(PaperTrial.example(example));
    }

    private static List<Drawing> profiles(Design design) {
        return ProfileSheets.drawings(
                PacketSubjects.of(design.job(), design, PaperTrial.options(PaperSize.LETTER, PaperSize.TABLOID)));
    }

    private static List<Text> texts(Drawing drawing) {
        List<Text> texts = new ArrayList<>();
        for (Mark mark : drawing.marks()) if (mark instanceof Text text) texts.add(text);
        return texts;
    }

    @ParameterizedTest
    @ValueSource(strings = {"skua-common.json", "pool-court.json", "kiln-yard.json", "heron-walk.json"})
    void everyBayIsOnAProfile(String example) throws IOException {
        Design design = design(example);
        List<String> told = new ArrayList<>();
        for (Drawing drawing : profiles(design)) for (Text text : texts(drawing)) told.add(text.text());
        for (Bay bay : design.layout().bays())
            assertThat(told).as(bay.id() + " of " + bay.run()).anyMatch(text -> text.startsWith(bay.id() + "  "));
    }

    /** The pickets of the gate of heron-walk rise in an arch over its posts. */
    @Test
    void theWordsOverAGateStandAboveItsCrest() throws IOException {
        Design design = design("heron-walk.json");
        GateSubject gate = PacketSubjects.subjects(
                        design.job(), design, design.gate("G1").orElseThrow())
                .get(0);
        double ground = design.posts().stream()
                .filter(post -> post.post().gate().equals("G1"))
                .mapToDouble(post -> post.post().grade().inches())
                .max()
                .orElseThrow();
        double highest = 0;
        for (Picket picket : gate.leaf().pickets())
            highest =
                    Math.max(highest, picket.bottom().inches() + picket.length().inches());
        int found = 0;
        for (Drawing drawing : profiles(design))
            for (Text text : texts(drawing)) {
                if (!text.text().equals("clear")) continue;
                found++;
                assertThat(text.extents(drawing.scale()).minY()).isGreaterThan(ground + highest);
            }
        assertThat(found).isPositive();
    }
}
