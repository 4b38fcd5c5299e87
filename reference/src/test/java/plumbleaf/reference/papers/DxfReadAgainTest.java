package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.Papers;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.engine.design.Design;

/**
 * Every drawing as another program reads it: its audit finds nothing, and what is drawn reaches as far as in the SVG, in real inches. Runs where Python with
 * ezdxf is there; reported as skipped elsewhere.
 */
@Tag("dxf-tools")
@Tag("slow")
class DxfReadAgainTest {
    private static final int SEEDS = 20;
    private static final int AT_ONCE = 5;
    private static final String PYTHON = List.of("/usr/bin/python3", "python3").stream()
            .filter(python -> OtherProgram.runs(python, "-c", "import ezdxf"))
            .findFirst()
            .orElse("");
    /** Of each file: faults, mended ones, and left, bottom, right, top of all but the lettering. */
    private static final String SCRIPT = """
            import ezdxf, sys
            from ezdxf import bbox
            for name in sys.argv[1:]:
                d = ezdxf.readfile(name)
                a = d.audit()
                b = bbox.extents([e for e in d.modelspace() if e.dxftype() != 'TEXT'])
                print(len(a.errors), len(a.fixes), b.extmin.x, b.extmin.y, b.extmax.x, b.extmax.y, name)
            """;

    /** Both files round what they write; a line too few, or one in paper inches, is far off. */
    private static final double SAME_IN = 0.02;

    private static final PaperOptions OPTIONS = PaperTrial.options(PaperSize.LETTER, PaperSize.TABLOID);

    static List<String> examples() throws IOException {
        return PaperTrial.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void anExamplesDrawingsOpenElsewhereWithTheSameExtents(String name, @TempDir Path folder) throws Exception {
        readAgain(PaperTrial.design(PaperTrial.example(name)), folder);
    }

    static List<Integer> fives() {
        return IntStream.range(0, SEEDS / AT_ONCE).boxed().toList();
    }

    /** Seeded: other lengths, corners, curves, styles, gates and units each time. */
    @ParameterizedTest
    @MethodSource("fives")
    void madeUpJobsOpenElsewhereToo(int five, @TempDir Path folder) throws Exception {
        for (int seed = five * AT_ONCE; seed < (five + 1) * AT_ONCE; seed++)
            readAgain(PaperTrial.design(RandomJob.of(seed)), Files.createDirectory(folder.resolve("seed-" + seed)));
    }

    private static void readAgain(Design design, Path folder) throws Exception {
        Assumptions.assumeFalse(PYTHON.isEmpty(), "no python3 with ezdxf here");
        List<String> command = new ArrayList<>(List.of(PYTHON, "-c", SCRIPT));
        List<String> pictures = new ArrayList<>();
        String svg = "";
        for (PaperFile file : Papers.of(design.job(), design, OPTIONS)) {
            if (file.name().endsWith(".svg")) svg = new String(file.bytes(), StandardCharsets.UTF_8);
            if (!file.name().endsWith(".dxf")) continue;
            Path at = folder.resolve(file.name());
            Files.write(at, file.bytes());
            command.add(at.toString());
            pictures.add(svg);
        }
        List<String> answers =
                OtherProgram.answer(command.toArray(String[]::new)).lines().toList();
        assertThat(answers).isNotEmpty().hasSameSizeAs(pictures);
        for (int i = 0; i < answers.size(); i++) same(answers.get(i), pictures.get(i));
    }

    private static void same(String answer, String svg) {
        List<String> words = List.of(answer.split(" ", -1));
        assertThat(words.subList(0, 2)).as("errors and fixes: " + answer).containsExactly("0", "0");
        double[] drawn = extents(svg);
        for (int i = 0; i < 4; i++)
            assertThat(Double.parseDouble(words.get(2 + i)))
                    .as("side " + i + ": " + answer)
                    .isCloseTo(drawn[i], within(SAME_IN));
    }

    private static final Pattern FRAME =
            Pattern.compile("data-scale=\"([\\d.]+)\" data-frame=\"(\\S+) (\\S+) (\\S+) (\\S+)\"");
    private static final Pattern PLACE = Pattern.compile("[ML ](-?[\\d.]+) (-?[\\d.]+)(?=[MLZhA\"])");
    private static final Pattern CIRCLE = Pattern.compile("cx=\"(\\S+)\" cy=\"(\\S+)\" r=\"(\\S+)\"");

    /** Left, bottom, right, top, read from the paths of an SVG, its lettering and what is cleared behind it left out. */
    private static double[] extents(String svg) {
        Matcher frame = FRAME.matcher(svg);
        assertThat(frame.find()).isTrue();
        double perUnit = Double.parseDouble(frame.group(1)) / 96;
        double left = Double.parseDouble(frame.group(2));
        double top = Double.parseDouble(frame.group(5));
        double[] box = {1e9, 1e9, -1e9, -1e9};
        for (String line : svg.split("\n", -1)) {
            if (line.contains("<text")) continue;
            Matcher place = PLACE.matcher(line);
            while (line.startsWith("<path") && place.find())
                widen(box, left, top, perUnit, place.group(1), place.group(2), 0);
            Matcher circle = CIRCLE.matcher(line);
            while (circle.find())
                widen(
                        box,
                        left,
                        top,
                        perUnit,
                        circle.group(1),
                        circle.group(2),
                        Double.parseDouble(circle.group(3)) * perUnit);
        }
        return box;
    }

    private static void widen(
            double[] box, double left, double top, double perUnit, String x, String y, double radius) {
        double realX = left + Double.parseDouble(x) * perUnit;
        double realY = top - Double.parseDouble(y) * perUnit;
        box[0] = Math.min(box[0], realX - radius);
        box[1] = Math.min(box[1], realY - radius);
        box[2] = Math.max(box[2], realX + radius);
        box[3] = Math.max(box[3], realY + radius);
    }
}
