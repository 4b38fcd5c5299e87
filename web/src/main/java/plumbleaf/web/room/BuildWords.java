package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.web.page.Choice;

/** What a build says, in the words of the rooms: {@code leaf: infill 5' 11", mid rails 1}. */
final class BuildWords {
    private final Map<String, String> names = new LinkedHashMap<>();

    BuildWords(Catalogue catalogue) {
        List<List<Choice>> known = List.of(
                Choices.styles(catalogue),
                Choices.hinges(catalogue),
                Choices.latches(catalogue),
                Choices.rods(catalogue),
                Choices.linePosts(catalogue),
                Choices.posts(catalogue),
                Choices.tubes(catalogue),
                Choices.GATES);
        for (List<Choice> choices : known) for (Choice choice : choices) names.put(choice.value(), choice.words());
    }

    List<String> of(String content) {
        DocumentText text = DocumentText.of(content);
        List<String> lines = new ArrayList<>();
        for (String key : text.keys("thing")) lines.add(line(text, "thing", key));
        for (String key : text.keys("build")) lines.add(line(text, "build", key));
        return lines;
    }

    private String line(DocumentText text, String at, String key) {
        String path = at + "." + key;
        List<String> inside = text.keys(path);
        if (inside.isEmpty()) return spaced(key) + ": " + said(text, path);
        List<String> parts = new ArrayList<>();
        for (String part : inside)
            parts.add(
                    part.equals("model")
                            ? said(text, path + ".model")
                            : spaced(part) + " " + said(text, path + "." + part));
        return spaced(key) + ": " + String.join(", ", parts);
    }

    /** A value as it was typed; of what holds more than one, each. */
    private String said(DocumentText text, String path) {
        List<String> inside = text.keys(path);
        if (!inside.isEmpty()) {
            List<String> parts = new ArrayList<>();
            for (String part : inside) parts.add(spaced(part) + " " + said(text, path + "." + part));
            return "(" + String.join(", ", parts) + ")";
        }
        int items = text.count(path);
        if (items > 0) {
            List<String> parts = new ArrayList<>();
            for (int i = 0; i < items; i++) parts.add(said(text, path + "[" + i + "]"));
            return String.join(" and ", parts);
        }
        String value = text.value(path).orElse("none");
        return names.getOrDefault(value, value).replaceAll("(?<=[a-z])-(?=[a-z])", " ");
    }

    /** {@code bottomGap} as one says it. */
    private static String spaced(String key) {
        return key.replaceAll("([a-z])([A-Z])", "$1 $2").replace('-', ' ').toLowerCase(Locale.ROOT);
    }
}
