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

/**
 * Keeps INDEX.md the list of what is compared with the outside: made from the comment above each check class. Run with
 * {@code -Dindex.write=true} to write it anew.
 */
class ReferenceIndexTest {
    private static final Path SOURCES = Path.of("src/test/java/plumbleaf/reference");
    private static final Path INDEX = Path.of("INDEX.md");
    private static final Pattern CLASS_COMMENT = Pattern.compile(
            "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:@\\w+(?:\\([^)]*\\))?\\s*)*(?:public )?(?:final )?class (\\w+Check)\\b",
            Pattern.DOTALL);

    record Entry(String topic, String check, String compared, String source, String tolerance) {}

    @Test
    void everyCheckSaysItsSourceAndTolerance() throws IOException {
        for (Entry entry : entries()) {
            assertThat(entry.source())
                    .as("a line 'Source: ...' above " + entry.check())
                    .isNotBlank();
            assertThat(entry.tolerance())
                    .as("a line 'Tolerance: ...' above " + entry.check())
                    .isNotBlank();
        }
    }

    @Test
    void theIndexIsCurrent() throws IOException {
        String wanted = index(entries());
        if (Boolean.getBoolean("index.write")) Files.writeString(INDEX, wanted);
        String there = Files.exists(INDEX) ? Files.readString(INDEX) : "";
        assertThat(there)
                .as("reference/INDEX.md; write it anew with -Dindex.write=true")
                .isEqualTo(wanted);
    }

    private static List<Entry> entries() throws IOException {
        List<Entry> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(path -> path.toString().endsWith("Check.java"))
                    .sorted()
                    .toList()) {
                found.add(entry(file));
            }
        }
        return found;
    }

    private static Entry entry(Path file) throws IOException {
        Matcher matcher = CLASS_COMMENT.matcher(Files.readString(file));
        if (!matcher.find()) return new Entry(topic(file), file.getFileName().toString(), "", "", "");
        String comment = matcher.group(1).replaceAll("(?m)^\\s*\\* ?", "").strip();
        return new Entry(
                topic(file),
                matcher.group(2),
                part(comment, "^(.*?)(?:\\bSource:|$)"),
                part(comment, "Source:(.*?)(?:Tolerance:|$)"),
                part(comment, "Tolerance:(.*)$"));
    }

    private static String part(String comment, String pattern) {
        Matcher matcher = Pattern.compile(pattern, Pattern.DOTALL).matcher(comment);
        if (!matcher.find()) return "";
        String plain = matcher.group(1).replaceAll("<[^>]+>", " ").replaceAll("\\{@\\w+ ([^}]*)\\}", "$1");
        return plain.replaceAll("\\s+", " ").strip().replace("|", "\\|");
    }

    private static String topic(Path file) {
        Path below = SOURCES.relativize(file).getParent();
        return below == null ? "" : below.toString();
    }

    private static String index(List<Entry> entries) {
        StringBuilder text = new StringBuilder(
                "# What is compared with the outside\n\nMade from the comment above each check in `src/test/java`; do not edit by hand.\n\n| topic | check | compared | source | tolerance |\n| --- | --- | --- | --- | --- |\n");
        for (Entry entry : entries) {
            text.append("| ")
                    .append(entry.topic())
                    .append(" | ")
                    .append(entry.check())
                    .append(" | ")
                    .append(entry.compared())
                    .append(" | ")
                    .append(entry.source())
                    .append(" | ")
                    .append(entry.tolerance())
                    .append(" |\n");
        }
        return text.toString();
    }
}
