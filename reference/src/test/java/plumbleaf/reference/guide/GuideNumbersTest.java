package plumbleaf.reference.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.engine.quantity.LengthText;

/** Every worked number of the guide is what the engine works out today, and stands in print beside its mark. */
@Tag("slow")
class GuideNumbersTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)(?:#[^)]*)?\\)");

    static List<GuideNumber> numbers() throws IOException {
        return GuideNumber.all();
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void theEngineSaysTheSame(GuideNumber number) throws IOException {
        assertThat(GuideSums.valueOf(number.name()))
                .as(number.file() + " line " + number.line() + ": " + number.name())
                .isCloseTo(number.is(), within(number.tolerance()));
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void theFigureStandsInPrint(GuideNumber number) {
        String digits = number.value().replace("-", "");
        List<String> ways = number.unit().equals("in")
                ? List.of(
                        digits,
                        LengthText.feetAndInches(Math.abs(number.is())),
                        LengthText.inchesOnly(Math.abs(number.is())))
                : List.of(digits);
        assertThat(ways)
                .as(number.file() + " line " + number.line() + " prints " + number.value())
                .anyMatch(way -> number.shown().contains(way));
    }

    /** No sum without a figure: a chapter that loses its number loses its test too, and says so. */
    @Test
    void everySumIsPrinted() throws IOException {
        TreeSet<String> printed =
                new TreeSet<>(numbers().stream().map(GuideNumber::name).toList());
        assertThat(printed).containsAll(GuideSums.names());
    }

    /** An example that nobody tells about is no example. */
    @Test
    void everyExampleIsToldOf() throws IOException {
        String told = Files.readString(GuideNumber.GUIDE.resolve("examples.md"), StandardCharsets.UTF_8);
        try (Stream<Path> jobs = Files.list(Path.of("..", "examples"))) {
            for (Path job :
                    jobs.filter(file -> file.toString().endsWith(".json")).toList())
                assertThat(told).contains("`" + job.getFileName() + "`");
        }
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        try (Stream<Path> more =
                Stream.of(Path.of("..", "CONTRIBUTING.md"), Path.of("..", "docs", "architecture.md"))) {
            List<Path> pages = Stream.concat(GuideNumber.pages().stream(), more).toList();
            for (Path page : pages) {
                Matcher link = LINK.matcher(Files.readString(page, StandardCharsets.UTF_8));
                while (link.find()) {
                    String to = link.group(1);
                    if (!to.startsWith("http"))
                        assertThat(page.resolveSibling(to)).as(page + ": " + to).exists();
                }
            }
        }
    }
}
