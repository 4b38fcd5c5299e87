package plumbleaf.jobfile.catalogue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.input.Intake;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;

/** Reads a file of fence styles: those that come with the program, and a user's own in the same form. Docs: {@code docs/styles.md}. */
public final class StyleFile {
    public static final String FORMAT = "plumbleaf-styles";
    public static final int VERSION = 1;
    private static final TextKind<String> FORMAT_NAME =
            TextKind.oneOf("a format that is read here", List.of(FORMAT), word -> word);

    private StyleFile() {}

    /** @param file as the user named it, for the errors */
    public static StyleReading read(String file, String text) {
        Intake intake = new Intake(file);
        return finish(intake, intake.open(text));
    }

    /** As {@link #read(String, String)}, from bytes. */
    public static StyleReading read(String file, byte[] bytes) {
        Intake intake = new Intake(file);
        return finish(intake, intake.open(bytes));
    }

    /** The style file that a job names; none where it names none, or is no job file at all. */
    public static Optional<String> namedBy(byte[] job) {
        return JsonReader.read(new String(job, StandardCharsets.UTF_8).replace("\ufeff", ""))
                .match(tree -> tree.root().asObject(), broken -> Optional.<Node.ObjectNode>empty())
                .flatMap(root -> root.get("styleFile"))
                .flatMap(Node::asText)
                .filter(name -> !name.isBlank());
    }

    /** The styles of a user's file, if all they name is in a catalogue. */
    public static StyleReading added(String file, byte[] bytes, Catalogue known) {
        return read(file, bytes).match(good -> StyleNames.checked(file, good, known), bad -> bad);
    }

    /** The keys that are asked for when this text is read: for the test that holds the schema true. */
    static Map<String, Set<String>> keysAskedFor(String text) {
        Intake intake = new Intake("keys");
        finish(intake, intake.open(text));
        return intake.known();
    }

    private static StyleReading finish(Intake intake, Optional<Fields> root) {
        Optional<StyleReading.Good> read = root.map(StyleFile::styles);
        List<InputError> errors = intake.finish();
        if (errors.isEmpty() && read.isPresent()) return read.get();
        return new StyleReading.Bad(errors);
    }

    private static StyleReading.Good styles(Fields root) {
        root.needed("format", FORMAT_NAME, FORMAT);
        int version = root.neededCount("version", 1, 999, VERSION);
        if (version > VERSION)
            root.refuse(
                    "version",
                    "this file is of a later version",
                    "open it with the Plumbleaf that wrote it, or a later one");
        String source = root.needed("source", TextKind.WORDS, "");
        List<FenceStyle> styles = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (Fields style : root.objects("styles")) {
            FenceStyle read = StyleForm.read(style);
            if (!ids.add(read.id()))
                style.refuse("id", read.id() + " is the id of a style above", "give this one another");
            styles.add(read);
        }
        if (styles.isEmpty()) root.refuse("styles", "a style file needs a style", "write \"styles\": [ { ... } ]");
        return new StyleReading.Good(source, styles);
    }
}
