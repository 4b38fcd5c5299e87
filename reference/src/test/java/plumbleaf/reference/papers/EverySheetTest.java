package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.Papers;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Overlaps;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.design.Design;

/** On every sheet of every example and of a hundred made-up jobs: no label over another, no lettering too small, no mark beyond the paper. */
@Tag("slow")
class EverySheetTest {
    private static final int TENS = 10;
    private static final List<PaperSize> SHEETS = List.of(
            PaperSize.TABLOID, PaperSize.A3, PaperSize.TABLOID, PaperSize.LETTER, PaperSize.TABLOID, PaperSize.A4);

    static List<String> examples() throws IOException {
        return PaperTrial.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everySheetOfAnExample(String name) throws IOException {
        Design design = PaperTrial.design(PaperTrial.example(name));
        assertThat(faults(design, PaperTrial.options(PaperSize.LETTER, PaperSize.TABLOID)))
                .isEmpty();
        assertThat(faults(design, PaperTrial.options(PaperSize.A4, PaperSize.A4)))
                .isEmpty();
    }

    static List<Integer> tens() {
        return IntStream.range(0, TENS).boxed().toList();
    }

    @ParameterizedTest
    @MethodSource("tens")
    void everySheetOfTenMadeUpJobs(int ten) {
        List<String> faults = new ArrayList<>();
        for (int seed = ten * 10; seed < ten * 10 + 10; seed++) {
            Design design = PaperTrial.design(RandomJob.of(seed));
            PaperOptions options = PaperTrial.options(
                    seed % 3 == 2 ? PaperSize.A4 : PaperSize.LETTER, SHEETS.get(seed % SHEETS.size()));
            for (String fault : faults(design, options)) faults.add("seed " + seed + ", " + fault);
        }
        assertThat(faults).isEmpty();
    }

    static List<String> faults(Design design, PaperOptions options) {
        List<String> faults = new ArrayList<>();
        for (Drawing page : Papers.pages(PacketSubjects.of(design.job(), design, options))) {
            for (String fault : Overlaps.of(page)) faults.add(page.name() + ": " + fault);
            for (Primitive part : page.primitives()) {
                if (part instanceof Text words && words.heightIn() < Text.SMALL - 1e-9)
                    faults.add(page.name() + ": too small: " + words.text());
                if (!page.frame().grown(1e-6).contains(part.extents(page.scale())))
                    faults.add(page.name() + ": beyond the sheet: "
                            + part.getClass().getSimpleName() + " " + part.extents(page.scale()));
            }
        }
        return faults;
    }
}
