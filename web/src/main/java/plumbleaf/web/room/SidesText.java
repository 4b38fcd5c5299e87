package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.job.RunSides;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;

/** The sides of a run as a remedy says them in one line, written into the file as the list that they are there. */
final class SidesText {
    private static final Pattern PLACE = Pattern.compile("runs\\[[A-Za-z0-9._-]{1,20}]\\.sides");

    private SidesText() {}

    static boolean isAt(String path) {
        return PLACE.matcher(path).matches();
    }

    static DocumentText on(DocumentText text, String path, String said) {
        List<RunSide> sides =
                RunSides.of(said).orElseThrow(() -> new IllegalArgumentException("Not the sides of a run: " + said));
        return text.with(
                path,
                "[ " + String.join(", ", sides.stream().map(SidesText::json).toList()) + " ]");
    }

    private static String json(RunSide side) {
        List<String> members = new ArrayList<>();
        members.add(member("from", exact(side.from())));
        members.add(member("to", exact(side.to())));
        side.basis().value().ifPresent(basis -> members.add(member("basis", basis.key())));
        side.post().value().ifPresent(post -> members.add(member("post", post)));
        side.hole().value().ifPresent(hole -> members.add(member("hole", exact(hole))));
        side.depth().value().ifPresent(depth -> members.add(member("depth", exact(depth))));
        side.maxBay().value().ifPresent(bay -> members.add(member("maxBay", exact(bay))));
        return "{ " + String.join(", ", members) + " }";
    }

    private static String member(String key, String value) {
        return DocumentText.quoted(key) + ": " + DocumentText.quoted(value);
    }

    private static String exact(Length length) {
        return LengthText.exact(length.inches());
    }
}
