package plumbleaf.reference.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A worked example that was copied in is compared with: each row's id stands in quotes in a check. */
class EveryVectorIsCitedTest {
    private static final Path CHECKS = Path.of("src/test/java/plumbleaf/reference");
    private static final Path TABLES = Path.of("src/test/resources/plumbleaf/reference");
    private static final Pattern ROW = Pattern.compile("(?m)^([A-Z]+[0-9]+[a-z]?),");

    @Test
    void noRowLiesIdle() throws IOException {
        String checks = all(CHECKS, "Check.java");
        String tables = all(TABLES.resolve("vectors"), ".csv") + all(TABLES.resolve("frame"), "frame-examples.csv");
        List<String> idle = new ArrayList<>();
        int rows = 0;
        Matcher row = ROW.matcher(tables);
        while (row.find()) {
            rows++;
            if (!Pattern.compile("\"" + row.group(1) + "[\",]").matcher(checks).find()) idle.add(row.group(1));
        }
        assertThat(rows).isGreaterThan(80);
        assertThat(idle).isEmpty();
    }

    private static String all(Path folder, String ending) throws IOException {
        StringBuilder text = new StringBuilder();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(path -> path.toString().endsWith(ending))
                    .sorted()
                    .toList()) text.append(Files.readString(file)).append('\n');
        }
        return text.toString();
    }
}
