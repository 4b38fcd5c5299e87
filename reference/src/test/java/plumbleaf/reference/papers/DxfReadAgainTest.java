package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
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
        String python = List.of("/usr/bin/python3", "python3").stream()
                .filter(DxfReadAgainTest::hasReader)
                .findFirst()
                .orElse("");
        Assumptions.assumeFalse(python.isEmpty(), "no python3 with ezdxf here");
        String svg = "";
        for (PaperFile file : Papers.of(design.job(), design, OPTIONS)) {
            if (file.name().endsWith(".svg")) svg = new String(file.bytes(), StandardCharsets.UTF_8);
            if (!file.name().endsWith(".dxf")) continue;
            Path at = folder.resolve(file.name());
            Files.write(at, file.bytes());
            double[] read = extents(python, at);
            double[] drawn = extents(svg);
            for (int i = 0; i < 4; i++)
                assertThat(read[i]).as(file.name() + " side " + i).isCloseTo(drawn[i], within(0.5));
        }
    }

    private static boolean hasReader(String python) {
        try {
            Process process = new ProcessBuilder(python, "-c", "import ezdxf")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException absent) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Left, bottom, right, top of all but the lettering, by the other program; its audit must find nothing. */
    private static double[] extents(String python, Path file) throws Exception {
        String script = """
                import ezdxf, sys
                from ezdxf import bbox
                d = ezdxf.readfile(sys.argv[1])
                a = d.audit()
                b = bbox.extents([e for e in d.modelspace() if e.dxftype() != 'TEXT'])
                print(len(a.errors), len(a.fixes), b.extmin.x, b.extmin.y, b.extmax.x, b.extmax.y)
                """;
        Process process = new ProcessBuilder(python, "-c", script, file.toString())
                .redirectErrorStream(true)
                .start();
        try (InputStream out = process.getInputStream()) {
            String answer = new String(out.readAllBytes(), StandardCharsets.UTF_8).strip();
            assertThat(process.waitFor()).as(answer).isZero();
            List<String> words = List.of(answer.split(" ", -1));
            assertThat(words.subList(0, 2)).as(file.toString()).containsExactly("0", "0");
            return words.subList(2, 6).stream().mapToDouble(Double::parseDouble).toArray();
        }
    }

    private static final Pattern FRAME =
            Pattern.compile("data-scale=\"([\\d.]+)\" data-frame=\"(\\S+) (\\S+) (\\S+) (\\S+)\"");
    private static final Pattern PLACE = Pattern.compile("[ML ](-?[\\d.]+) (-?[\\d.]+)(?=[MLZhA\"])");
    private static final Pattern CIRCLE = Pattern.compile("cx=\"(\\S+)\" cy=\"(\\S+)\" r=\"(\\S+)\"");

    /** The same, read from the paths of an SVG, its lettering and what is cleared behind it left out. */
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
