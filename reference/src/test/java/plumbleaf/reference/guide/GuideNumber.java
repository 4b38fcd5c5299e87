package plumbleaf.reference.guide;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One figure of the guide with the mark behind it: {@code <!-- number: NAME = VALUE UNIT -->}. A name with a colon is an example job and a place in its result; any other is a sum of
 * {@link GuideSums}.
 *
 * @param value as the mark writes it, to as many places as it is held to
 * @param shown the line it stands on, without its marks
 */
record GuideNumber(String file, int line, String name, String value, String unit, String shown) {
    static final Path GUIDE = Path.of("..", "docs", "guide");

    private static final Pattern MARK = Pattern.compile("<!-- number: (\\S+) = (-?[0-9.]+) (\\S+) -->");
    private static final Pattern ANY_MARK = Pattern.compile("<!-- number:.*?-->");

    static List<GuideNumber> all() throws IOException {
        List<GuideNumber> found = new ArrayList<>();
        for (Path page : pages()) {
            List<String> lines = Files.readAllLines(page, StandardCharsets.UTF_8);
            for (int i = 0; i < lines.size(); i++) {
                String text = lines.get(i);
                String shown = ANY_MARK.matcher(text).replaceAll("").replace(",", "");
                Matcher mark = MARK.matcher(text);
                int read = 0;
                while (mark.find()) {
                    read++;
                    found.add(new GuideNumber(
                            page.getFileName().toString(), i + 1, mark.group(1), mark.group(2), mark.group(3), shown));
                }
                if (read != ANY_MARK.matcher(text).results().count())
                    throw new IllegalArgumentException(page + " line " + (i + 1) + ": a mark that does not read");
            }
        }
        return found;
    }

    static List<Path> pages() throws IOException {
        try (Stream<Path> pages = Files.list(GUIDE)) {
            return pages.filter(page -> page.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    double is() {
        return Double.parseDouble(value);
    }

    /** Half of the last place written. */
    double tolerance() {
        int point = value.indexOf('.');
        int places = point < 0 ? 0 : value.length() - point - 1;
        return 0.5 * Math.pow(10, -places) * (1 + 1e-9);
    }
}
