package plumbleaf.web.fieldbook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import plumbleaf.documents.PaperFile;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;
import plumbleaf.web.books.HouseBooks;
import plumbleaf.web.people.Person;
import plumbleaf.web.room.JobAnswers;
import plumbleaf.web.room.OwnStyles;
import plumbleaf.web.room.Sight;
import plumbleaf.web.store.StoredJob;
import plumbleaf.web.yard.HouseYard;

/**
 * A job as a device holds it. Who changes jobs takes its text with the house's prices, yard and styles, and designs there by the same rules. Who may
 * see no price takes none along: the design as the office has it, its drawings, and what the crew needs.
 */
@Component
class HeldJobs {
    private final JobAnswers answers;
    private final HouseBooks books;
    private final HouseYard yard;
    private final OwnStyles styles;

    HeldJobs(JobAnswers answers, HouseBooks books, HouseYard yard, OwnStyles styles) {
        this.answers = answers;
        this.books = books;
        this.yard = yard;
        this.styles = styles;
    }

    /** @param come those of the changes that the device is unsure of which have come */
    String json(StoredJob job, Person person, String token, List<String> come) {
        Json.Members held = Json.object()
                .put("id", job.id().text())
                .put("title", job.title())
                .put("version", Long.toString(job.version()))
                .put("person", person.name())
                .put("csrf", token)
                .put("edits", person.role().edits())
                .put("come", Json.list(come, Json::text));
        if (person.role().edits() && person.role().seesMoney())
            held.put("document", job.document()).put("kit", JsonWriter.write(kit(job)));
        else held.put("seen", seen(job));
        return JsonWriter.write(held.build());
    }

    private Node kit(StoredJob job) {
        Json.Members kit = Json.object()
                .put("yard", yard.file())
                .put("styles", styles.text())
                .put("title", job.title())
                .put("mark", job.id().text());
        String name = bookOf(job.document());
        Map<String, String> tables = books.tables(name);
        if (!tables.isEmpty()) {
            Json.Members book = Json.object().put("id", name);
            for (String table : List.of("materials", "labor", "charges", "house"))
                book.put(table, tables.getOrDefault(table + ".csv", ""));
            kit.put("book", book);
        }
        return kit.build();
    }

    private static String bookOf(String document) {
        return JsonReader.read(document)
                .match(
                        tree -> NodePath.of("money.priceBook")
                                .find(tree.root())
                                .map(node -> node.match(
                                        object -> "",
                                        list -> "",
                                        said -> said.text(),
                                        number -> "",
                                        flag -> "",
                                        nothing -> ""))
                                .orElse(""),
                        broken -> "");
    }

    /** What it comes to without a price in it. */
    private Json.Members seen(StoredJob job) {
        List<Node> drawings = new ArrayList<>();
        for (PaperFile paper : answers.papers(job, Sight.WITHOUT_MONEY))
            if (paper.name().endsWith(".svg"))
                drawings.add(Json.object()
                        .put("name", paper.name().replace(".svg", "").replace('-', ' '))
                        .put("svg", new String(paper.bytes(), StandardCharsets.UTF_8))
                        .build());
        return Json.object()
                .put("design", answers.design(job, Sight.WITHOUT_MONEY).orElse("{}"))
                .put("drawings", Json.list(drawings, drawing -> drawing))
                .put("crewSheet", answers.crewSheet(job));
    }
}
