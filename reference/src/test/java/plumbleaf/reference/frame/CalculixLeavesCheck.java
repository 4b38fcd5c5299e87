package plumbleaf.reference.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.frame.Node;

/**
 * Movement of every node of twenty random leaves, hung with two or three hinges on a post in a footing, against CalculiX run here and now; where it is not installed
 * against what version 2.20 said of the same leaves, and the report says so. Run with {@code -Dcalculix.record=true} to record its answers anew.
 *
 * Source: CalculiX CrunchiX, a published finite element program; leaves by reference/recipes/random_leaves.py, their bars twisting as pipes do; the text it reads is
 * written by CalculixDeck.
 * Tolerance: 3e-6 of the leaf's largest shift or turn: it prints seven digits, and a rigid pin is a stiff spring in the engine.
 */
class CalculixLeavesCheck {
    private static final double TOLERANCE = 3e-6;
    private static final String ANEW = "calculix.record";
    private static final int MOST_SECONDS = 600;
    private static final Path RECORD = Path.of("src/test/resources/plumbleaf/reference/frame/calculix-leaves.csv");
    private static final Map<Integer, Map<String, List<Double>>> SAID = new LinkedHashMap<>();

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void movesAsCalculixSays(int number, TestReporter reporter) throws IOException, InterruptedException {
        RandomLeaf leaf = RandomLeaf.number(number).twistingAsPipe();
        boolean live = isThere();
        Map<String, List<Double>> moved = live ? run(leaf) : recorded(number);
        String by = live ? "CalculiX run now" : "no ccx here: its recorded answer";
        reporter.publishEntry("leaf " + number, by);
        if (!live && number == 1) System.getLogger(getClass().getName()).log(System.Logger.Level.WARNING, by);
        assertThat(moved).hasSameSizeAs(leaf.nodes());
        RandomLeavesCheck.same(leaf.solved(), moved, TOLERANCE);
        if (!live) return;
        SAID.put(number, moved);
        if (!Boolean.getBoolean(ANEW)) RandomLeavesCheck.same(leaf.solved(), recorded(number), TOLERANCE);
    }

    @AfterAll
    static void record() throws IOException {
        if (!Boolean.getBoolean(ANEW) || SAID.size() < RandomLeaf.COUNT) return;
        StringBuilder text = new StringBuilder();
        text.append(
                "# What CalculiX 2.20 says of the twenty leaves of random-leaves.csv, their bars twisting as pipes do; in., rad.\n");
        text.append("# Recipe: CalculixLeavesCheck with ccx installed and -Dcalculix.record=true.\n");
        SAID.forEach((leaf, moved) -> moved.forEach((node, six) -> {
            text.append(leaf + "," + node);
            six.forEach(each -> text.append("," + each));
            text.append("\n");
        }));
        Files.writeString(RECORD, text.toString());
    }

    private static boolean isThere() {
        for (String place : System.getenv().getOrDefault("PATH", "").split(":", -1))
            if (Files.isExecutable(Path.of(place, "ccx"))) return true;
        return false;
    }

    private Map<String, List<Double>> run(RandomLeaf leaf) throws IOException, InterruptedException {
        Files.writeString(folder.resolve("leaf.inp"), CalculixDeck.of(leaf), StandardCharsets.US_ASCII);
        Process process = new ProcessBuilder("ccx", "leaf")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        assertThat(process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)).isTrue();
        assertThat(folder.resolve("leaf.dat"))
                .as(() -> said(folder.resolve("said.txt")))
                .isNotEmptyFile();
        List<List<String>> rows = new ArrayList<>();
        for (String line : Files.readString(folder.resolve("leaf.dat")).split("\n", -1)) {
            List<String> cells = List.of(line.strip().split("\\s+", -1));
            if (cells.size() == 7) rows.add(cells);
        }
        Map<String, List<Double>> moved = new LinkedHashMap<>();
        for (int i = 0; i < leaf.nodes().size(); i++) {
            Node node = leaf.nodes().get(i);
            moved.put(node.id(), numbers(rows.get(i)));
        }
        return moved;
    }

    private static String said(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, List<Double>> recorded(int number) throws IOException {
        Map<String, List<Double>> moved = new LinkedHashMap<>();
        try (InputStream in = CalculixLeavesCheck.class.getResourceAsStream("calculix-leaves.csv")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            for (String line : text.strip().split("\n", -1)) {
                List<String> cells = List.of(line.split(",", -1));
                if (cells.get(0).equals(Integer.toString(number)))
                    moved.put(cells.get(1), numbers(cells.subList(1, cells.size())));
            }
        }
        return moved;
    }

    /** The six after the name. */
    private static List<Double> numbers(List<String> cells) {
        return cells.subList(1, 7).stream().map(Double::valueOf).toList();
    }
}
