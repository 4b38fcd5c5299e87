package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Unit;

/** What a job is for, several words of the file as one choice on a screen: {@code walk}, {@code drive powered}. */
final class UsesText {
    static final String PATH = "site.uses";

    private static final List<Choice> USES = List.of(
            new Choice("walk", "people on foot"),
            new Choice("drive", "vehicles"),
            new Choice("walk drive", "people and vehicles"),
            new Choice("walk animal", "people; keeps animals in"),
            new Choice("walk pool", "people; closes off a pool"),
            new Choice("drive powered", "vehicles, opened by a machine now or later"),
            new Choice("walk public-way", "people, beside a public way"));

    private UsesText() {}

    static boolean isAt(String path) {
        return path.equals(PATH);
    }

    static Field field(Opened opened) {
        List<String> said = new ArrayList<>();
        for (int i = 0; i < opened.text().count(PATH); i++)
            said.add(opened.text().value(PATH + "[" + i + "]").orElse(""));
        boolean typed = opened.typed().path().equals(PATH);
        String value = typed ? opened.typed().value() : said.isEmpty() ? "walk" : String.join(" ", said);
        return new Field(
                PATH,
                "What for",
                value,
                said.isEmpty(),
                Unit.WORDS,
                USES,
                "site",
                said.isEmpty() ? "assumed: people on foot" : "",
                typed ? opened.typed().problem() : "");
    }

    static DocumentText on(DocumentText text, String value) {
        List<String> words = new ArrayList<>();
        for (String word : value.split(" ", -1)) if (!word.isBlank()) words.add(DocumentText.quoted(word));
        return text.with(PATH, "[" + String.join(", ", words) + "]");
    }
}
