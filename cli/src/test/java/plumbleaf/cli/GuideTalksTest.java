package plumbleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every command that the guide shows prints what the guide says it prints; a line of three dots stands for what is left out. */
@Tag("slow")
class GuideTalksTest {
    private static final Path GUIDE = Path.of("..", "docs", "guide");
    private static final String LEFT_OUT = "...";
    private static final Pattern TALK = Pattern.compile("```\\n\\$ \\./plumbleaf ([^\\n]+)\\n(.*?)```", Pattern.DOTALL);

    @TempDir
    private Path folder = Path.of("");

    private record Talk(Path chapter, List<String> words, List<String> says) {
        @Override
        public String toString() {
            return chapter.getFileName() + ": " + String.join(" ", words);
        }
    }

    static List<Talk> talks() throws IOException {
        List<Talk> talks = new ArrayList<>();
        try (Stream<Path> chapters = Files.list(GUIDE)) {
            for (Path chapter : chapters.sorted().toList()) {
                Matcher found = TALK.matcher(Files.readString(chapter));
                while (found.find()) {
                    talks.add(new Talk(
                            chapter,
                            List.of(found.group(1).split(" ")),
                            found.group(2).lines().toList()));
                }
            }
        }
        return talks;
    }

    @ParameterizedTest
    @MethodSource("talks")
    void theProgramSaysTheSame(Talk talk) throws IOException {
        writeWrongFile();
        Terminal run = Terminal.run(here(talk.words()));
        String said = (run.out() + run.err())
                .replace(folder + "/", "")
                .replace(folder.toString(), "")
                .replace("../examples/", "examples/");
        assertThat(parts(talk.says())).isNotEmpty();
        int from = 0;
        List<String> lines = said.lines().toList();
        for (List<String> part : parts(talk.says())) {
            int at = Collections.indexOfSubList(lines.subList(from, lines.size()), part);
            assertThat(at)
                    .as(talk + " says\n" + said + "\nwhere the guide says\n" + String.join("\n", part))
                    .isNotNegative();
            from += at + part.size();
        }
    }

    @Test
    void theFirstJobIsTold() throws IOException {
        assertThat(talks()).hasSizeGreaterThanOrEqualTo(7);
    }

    /** The demo job with two units left out, as the first chapter tells it. */
    private void writeWrongFile() throws IOException {
        String right = Files.readString(Path.of("..", "examples", "nursery-lane.json"));
        String wrong = right.replace("\"speed\": \"105 mph\"", "\"speed\": \"105\"")
                .replaceFirst("\"opening\": \"[^,]*\"", "\"opening\": \"48\"");
        assertThat(wrong).contains("\"105\"", "\"opening\": \"48\"");
        Files.writeString(folder.resolve("wrong.json"), wrong);
    }

    /** The words as they must be given from here: examples stand above, what is made goes to a folder of its own. */
    private String[] here(List<String> words) {
        List<String> given = new ArrayList<>();
        for (String word : words) {
            boolean made = word.endsWith(".json")
                    || (!given.isEmpty() && given.get(given.size() - 1).equals("--out"));
            if (word.startsWith("examples/")) {
                given.add("../" + word);
            } else {
                given.add(made ? folder.resolve(word).toString() : word);
            }
        }
        return given.toArray(String[]::new);
    }

    private static List<List<String>> parts(List<String> says) {
        List<List<String>> parts = new ArrayList<>();
        List<String> part = new ArrayList<>();
        for (String line : says) {
            if (line.equals(LEFT_OUT)) {
                parts.add(part);
                part = new ArrayList<>();
            } else {
                part.add(line);
            }
        }
        parts.add(part);
        return parts.stream().filter(some -> !some.isEmpty()).toList();
    }
}
