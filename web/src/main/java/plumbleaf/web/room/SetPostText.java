package plumbleaf.web.room;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A post that somebody put where it stands: {@code runs[0].set[P3].station}. Said for the first time it joins the list; emptied it is let go. */
final class SetPostText {
    private static final Pattern PLACE =
            Pattern.compile("(runs\\[[A-Za-z0-9._-]{1,20}]\\.set)\\[(P[A-Za-z0-9]{1,12})]\\.station");

    private SetPostText() {}

    static boolean isAt(String path) {
        return PLACE.matcher(path).matches();
    }

    static String path(String run, String post) {
        return run + ".set[" + post + "].station";
    }

    static DocumentText on(DocumentText text, String path, String station) {
        Matcher place = PLACE.matcher(path);
        if (!place.matches()) throw new IllegalArgumentException("Not the place of a post: " + path);
        String item = place.group(1) + "[" + place.group(2) + "]";
        if (station.isEmpty()) return text.without(item);
        if (text.value(path).isPresent()) return text.with(path, DocumentText.quoted(station));
        return text.appended(
                place.group(1),
                "{ \"id\": " + DocumentText.quoted(place.group(2)) + ", \"station\": " + DocumentText.quoted(station)
                        + " }");
    }
}
