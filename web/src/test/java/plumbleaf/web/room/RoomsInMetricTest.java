package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.web.Trial;
import plumbleaf.web.Workspace;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Note;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Picture;
import plumbleaf.web.page.Room;
import plumbleaf.web.page.RoomView;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** In a metric job no room says feet or pounds, in words, fields, tables or drawings; names by which things are sold stay. */
@SpringBootTest(classes = Workspace.class)
@Tag("slow")
class RoomsInMetricTest {
    private static final Pattern US = Pattern.compile(
            "\\d ?(?:\"|'(?!\\w)|in\\.|inch|ft\\b|feet|foot\\b|lbs?\\b|lb-|lb/|psf|psi\\b|ksi|pcf|mph|\u00b0F|yd|gal|quart|ton\\b|tons\\b)"
                    + "|\\d in$|(?i)\\b(?:inch(?:es)?|feet)\\b|, (?:lb|ft|in\\.|lb-ft|ft\u00b3)$|\\(\\d+ lb\\)");
    private static final List<Pattern> TRADE = List.of(
            Pattern.compile("[\\d./-]+ in\\. OD"),
            Pattern.compile("NPS [\\d/-]+"),
            Pattern.compile("(?:[\\d./-]+\"? x )+[\\d./-]+(?:\"| in\\.)?(?= (?:hex|wedge|lag|deck|bracket)| x|\\b)"),
            Pattern.compile("[\\d./-]+(?:\"| in\\.)(?= (?:bolt|rod|cap nut|flat washer|washer|pin|post|hex|round))"));
    private static final Pattern LETTERED = Pattern.compile("<text[^>]*>([^<]*)");

    @Autowired
    private JobStore store;

    @Autowired
    private Rooms rooms;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "local");
    }

    @ParameterizedTest
    @ValueSource(strings = {"reed-lane", "nursery-lane-settled", "gannet-spit", "fallow-gate", "elder-row"})
    void noRoomOfAMetricJobSpeaksOfFeetOrPounds(String example) throws IOException {
        String text = Files.readString(Path.of("..", "examples", example + ".json"))
                .replaceAll("\"display\": ?\"us\"", "\"display\": \"metric\"");
        StoredJob job = store.create(example, text, "you");
        List<String> sold = sold(rooms.design(job).orElseThrow());
        List<String> strays = new ArrayList<>();
        for (Room room : Room.values())
            for (String said : said(rooms.view(room, job, Typed.NOTHING, Sight.EVERYTHING, Breadth.WIDE)))
                if (isUs(said, sold)) strays.add(room.key() + ": " + said);
        assertThat(strays).isEmpty();
    }

    private static boolean isUs(String said, List<String> sold) {
        String bare = said;
        for (String name : sold) bare = bare.replace(name, "");
        for (Pattern size : TRADE) bare = size.matcher(bare).replaceAll("");
        return US.matcher(bare).find();
    }

    private static List<String> sold(Design design) {
        List<String> names = new ArrayList<>(design.job().notes());
        for (TakeoffLine line : design.quote().takeoff().lines())
            names.add(line.sold().name());
        names.sort(Comparator.comparingInt(String::length).reversed());
        return names;
    }

    private static List<String> said(RoomView view) {
        List<String> said = new ArrayList<>();
        for (Picture picture : view.pictures()) {
            said.add(picture.name());
            Matcher text = LETTERED.matcher(picture.svg());
            while (text.find()) said.add(text.group(1).replace("&quot;", "\"").replace("&#39;", "'"));
        }
        for (Panel panel : view.panels()) {
            said.add(panel.heading());
            for (Note note : panel.notes()) {
                said.add(note.message());
                said.add(note.basis());
                for (Note.Press press : note.presses()) said.add(press.words() + " " + press.gain());
            }
            fields(panel.fields(), said);
            for (Panel.Strip strip : panel.strips()) fields(strip.fields(), said);
            for (Row row : panel.rows()) said.addAll(List.of(row.label(), row.value(), row.note()));
            tables(panel.tables(), said);
            for (Panel.Fold fold : panel.folds()) {
                said.addAll(List.of(fold.words(), fold.value(), fold.about()));
                tables(fold.lines(), said);
            }
        }
        return said;
    }

    private static void fields(List<Field> fields, List<String> said) {
        for (Field field : fields) {
            said.addAll(List.of(field.label(), field.note()));
            if (field.choices().isEmpty())
                said.add(field.value() + " " + field.unit().shown());
        }
    }

    private static void tables(List<Table> tables, List<String> said) {
        for (Table table : tables) {
            said.add(table.caption());
            said.addAll(table.heads());
            for (Table.Line line : table.lines()) said.addAll(line.cells());
        }
    }
}
