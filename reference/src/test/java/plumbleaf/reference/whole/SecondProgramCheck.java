package plumbleaf.reference.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole jobs: shots, posts, bays, leaf, swing, drop by cause, hinges, wind on posts, footing depths.
 *
 * Source: an independent program by the same team, written from the conventions, not from this program; recipe in
 * reference/recipes/second_program.py (numpy), run once, recorded in second-program.csv.
 * Tolerance: 0.5 %, or 0.01 in., 0.1 lb, 1 lb-in where that is more; places 0.01 in., angles 0.05 degrees.
 */
@Tag("slow")
class SecondProgramCheck {
    private static final Path HERE = Path.of("src", "test", "resources", "plumbleaf", "reference", "whole");

    static Stream<String> jobs() throws IOException {
        return Files.readAllLines(HERE.resolve("second-program.csv"), StandardCharsets.UTF_8).stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("job,"))
                .map(line -> line.split(",", -1)[0])
                .distinct();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void comesToWhatTheSecondProgramSays(String job) throws IOException {
        Map<String, Double> engine = DesignedJob.numbers(job, Files.readString(HERE.resolve(job)));
        List<String> differ = new ArrayList<>();
        int compared = 0;
        for (String line : Files.readAllLines(HERE.resolve("second-program.csv"), StandardCharsets.UTF_8)) {
            String[] cell = line.split(",", -1);
            if (!cell[0].equals(job)) continue;
            compared++;
            double recorded = Double.parseDouble(cell[2]);
            @Nullable Double found = engine.get(cell[1]);
            if (found == null) differ.add(cell[1] + ": recorded " + recorded + ", not in the design");
            else if (Math.abs(found - recorded) > Math.max(share(cell[1]) * Math.abs(recorded), least(cell[1])))
                differ.add(cell[1] + ": recorded " + recorded + ", the design says " + found);
        }
        assertThat(compared).isGreaterThan(60);
        assertThat(differ).as(job).isEmpty();
    }

    /** Places and angles are held to their own unit: a share of them depends on where they are measured from. */
    private static double share(String name) {
        boolean place = List.of("stationIn", "ElevationIn", ".rIn", ".nIn", ".zIn", "atRadiusIn", "Deg").stream()
                .anyMatch(name::endsWith);
        return place ? 0 : 0.005;
    }

    /** A difference this small counts as none, in the unit that ends the name. */
    private static double least(String name) {
        if (name.endsWith("LbIn")) return 1;
        if (name.endsWith("Lb")) return 0.1;
        if (name.endsWith("Deg")) return 0.05;
        if (name.endsWith("In")) return 0.01;
        return 0.001;
    }
}
