package plumbleaf.web.page;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words whose feet and inches stay on one line: a browser breaks {@code 8' 2-3/8"} after its hyphen, and then it reads as two. The words themselves are as they
 * were, so that they are found, copied and read aloud alike.
 */
public record Whole(String words) implements Content {
    private static final Pattern MEASURE =
            Pattern.compile("(?:\\d[\\d,]*' )?\\d+-\\d+/\\d+(?:\"| in\\.)?|\\d[\\d,]*' \\d+\"?");

    @Override
    public void writeTo(TemplateOutput page) {
        Matcher measure = MEASURE.matcher(words);
        int from = 0;
        while (measure.find()) {
            page.writeUserContent(words.substring(from, measure.start()));
            page.writeContent("<span class=\"measure\">");
            page.writeUserContent(measure.group());
            page.writeContent("</span>");
            from = measure.end();
        }
        page.writeUserContent(words.substring(from));
    }
}
