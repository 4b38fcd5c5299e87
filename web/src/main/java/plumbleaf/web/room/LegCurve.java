package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Unit;

/** A straight leg made a curve in one line: {@code 20', 90 deg left}; a third may say how far a chord may leave the curve. */
final class LegCurve {
    private static final Pattern PLACE = Pattern.compile("runs\\[[A-Za-z0-9._-]{1,20}]\\.legs\\[\\d{1,4}]\\.arc");
    private static final List<String> KEYS = List.of("radius", "turn", "sagitta");
    private static final List<Unit> UNITS = List.of(Unit.FEET, Unit.WORDS, Unit.INCHES);

    private LegCurve() {}

    static boolean isAt(String path) {
        return PLACE.matcher(path).matches();
    }

    static Field field(Opened opened, String leg, String of) {
        return opened.fields()
                .choice(leg + ".arc", "Make it a curve", Unit.WORDS, of, List.of(), "radius, turn: 20', 90 deg left");
    }

    /** The curve takes the place of the leg's length. */
    static DocumentText on(DocumentText text, String path, String said) {
        String leg = path.substring(0, path.length() - ".arc".length());
        String[] parts = said.split(",", KEYS.size());
        List<String> members = new ArrayList<>();
        for (int i = 0; i < parts.length; i++)
            members.add(DocumentText.quoted(KEYS.get(i)) + ": "
                    + DocumentText.quoted(UNITS.get(i).in(text.units()).complete(parts[i])));
        return text.without(leg + ".length")
                .without(leg + ".taped")
                .with(path, "{ " + String.join(", ", members) + " }");
    }
}
