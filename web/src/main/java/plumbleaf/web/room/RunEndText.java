package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Unit;

/** How an end of a run is held, as one choice on a screen: {@code free}, {@code wall masonry}, {@code joins R2}. */
final class RunEndText {
    private static final Pattern PLACE = Pattern.compile("(runs\\[[A-Za-z0-9._-]{1,20}]\\.ends)\\[[01]]");
    private static final String FREE = "{ \"kind\": \"free\" }";

    private RunEndText() {}

    static boolean isAt(String path) {
        return PLACE.matcher(path).matches();
    }

    static Field field(Opened opened, String run, String id, int end) {
        String path = run + ".ends[" + end + "]";
        boolean typed = opened.typed().path().equals(path);
        String said = typed ? opened.typed().value() : said(opened.text(), path);
        return new Field(
                path,
                end == 0 ? "Starts at" : "Ends at",
                said.isEmpty() ? "free" : said,
                said.isEmpty(),
                Unit.WORDS,
                choices(opened.text(), id, end),
                id,
                said.isEmpty() ? "assumed: a post with nothing beyond" : "",
                typed ? opened.typed().problem() : "");
    }

    private static String said(DocumentText text, String path) {
        if (text.value(path).isPresent()) return text.value(path).get();
        String kind = text.value(path + ".kind").orElse("");
        String of = text.value(path + ".of").or(() -> text.value(path + ".run")).orElse("");
        return (kind + " " + of).strip();
    }

    private static List<Choice> choices(DocumentText text, String own, int end) {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("free", "a post of its own")));
        for (Choice wall : Choices.WALLS) choices.add(new Choice("wall " + wall.value(), "a wall of " + wall.words()));
        for (Choice run : Choices.ids(text, "runs"))
            if (!run.value().equals(own)) choices.add(new Choice("joins " + run.value(), "run " + run.value()));
        choices.add(new Choice("neighbour", "a neighbor's fence, at a post of ours"));
        if (end == 1) choices.add(new Choice("joins " + own, "its own start, round a yard"));
        return choices;
    }

    /** Both ends are said as soon as one is. */
    static DocumentText on(DocumentText text, String path, String value) {
        Matcher place = PLACE.matcher(path);
        if (!place.matches()) throw new IllegalArgumentException("Not an end of a run: " + path);
        String list = place.group(1);
        DocumentText both = text.count(list) == 2 ? text : text.with(list, "[" + FREE + ", " + FREE + "]");
        return both.with(path, json(value));
    }

    private static String json(String value) {
        int space = value.indexOf(' ');
        if (space < 0) return DocumentText.quoted(value.isEmpty() ? "free" : value);
        String kind = value.substring(0, space);
        return "{ \"kind\": " + DocumentText.quoted(kind) + ", \"" + (kind.equals("joins") ? "run" : "of") + "\": "
                + DocumentText.quoted(value.substring(space + 1)) + " }";
    }
}
