package plumbleaf.web.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.stereotype.Component;

/** All pages of the guide in the order of its index. Read when somebody first asks, then kept. */
@Component
class Guide {
    private static final String FOLDER = "/plumbleaf/web/guide/";
    private static final String INDEX = "index";
    private static final Pattern LISTED = Pattern.compile("\\]\\((?:\\.\\./)?([a-z-]+)\\.md\\)");

    private static final class Kept {
        static final Map<String, Page> PAGES = read();
    }

    List<Page> pages() {
        return List.copyOf(Kept.PAGES.values());
    }

    Optional<Page> page(String name) {
        return Optional.ofNullable(Kept.PAGES.get(name));
    }

    List<Finding> search(String asked) {
        return Finding.of(pages(), asked);
    }

    private static Map<String, Page> read() {
        String index = text(INDEX);
        List<String> names = new ArrayList<>(List.of(INDEX));
        Matcher listed = LISTED.matcher(index);
        while (listed.find()) if (!names.contains(listed.group(1))) names.add(listed.group(1));
        Map<String, Page> pages = new LinkedHashMap<>();
        for (String name : names) pages.put(name, PageMaker.page(name, text(name), names));
        return pages;
    }

    private static String text(String name) {
        try (InputStream in = Guide.class.getResourceAsStream(FOLDER + name + ".md")) {
            if (in == null)
                throw new IllegalStateException("The guide's index names " + name + ", which is not in the jar");
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
