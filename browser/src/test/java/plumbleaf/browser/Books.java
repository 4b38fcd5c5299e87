package plumbleaf.browser;

import java.util.Map;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** What a job of the examples brings to the engine of a device: the price book that they name. */
final class Books {
    static final String OF_THE_EXAMPLES = "example-2027";

    private Books() {}

    static PageBench bench() {
        return new PageBench(HouseKit.of(kit(OF_THE_EXAMPLES, Map.of())));
    }

    /** @param changed tables that read otherwise, by their file's name */
    static String kit(String id, Map<String, String> changed) {
        Json.Members book = Json.object().put("id", id);
        for (PriceBooks.Source table : PriceBooks.tables(OF_THE_EXAMPLES))
            book.put(table.file().replace(".csv", ""), changed.getOrDefault(table.file(), table.text()));
        return JsonWriter.write(Json.object().put("book", book.build()).build());
    }
}
