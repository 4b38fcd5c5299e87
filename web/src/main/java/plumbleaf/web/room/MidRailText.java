package plumbleaf.web.room;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The height of a mid rail: {@code gates[0].leaf.midRailsAt[0]}. The first height said takes the place of a count of one rail. */
final class MidRailText {
    private static final Pattern PLACE =
            Pattern.compile("(gates\\[[A-Za-z0-9._-]{1,20}]\\.leaf)\\.midRailsAt\\[(\\d)]");

    private MidRailText() {}

    static boolean isAt(String path) {
        return PLACE.matcher(path).matches();
    }

    static DocumentText on(DocumentText text, String path, String height) {
        Matcher place = PLACE.matcher(path);
        if (!place.matches()) throw new IllegalArgumentException("Not the height of a mid rail: " + path);
        String list = place.group(1) + ".midRailsAt";
        if (text.count(list) > Integer.parseInt(place.group(2))) return text.with(path, DocumentText.quoted(height));
        if (text.count(list) > 0) throw new IllegalArgumentException("No such mid rail: " + path);
        return text.without(place.group(1) + ".midRails").with(list, "[" + DocumentText.quoted(height) + "]");
    }
}
