package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.pricebook.PriceBooks;

class HouseKitTest {
    private static String kit(Map<String, String> changed) {
        Json.Members book = Json.object().put("id", "house");
        for (PriceBooks.Source table : PriceBooks.tables("example-2027"))
            book.put(table.file().replace(".csv", ""), changed.getOrDefault(table.file(), table.text()));
        return JsonWriter.write(Json.object().put("book", book.build()).build());
    }

    @Test
    void theHousesOwnBookIsRead() {
        HouseKit kit = HouseKit.of(kit(Map.of()));
        assertThat(kit.problem()).isEmpty();
        assertThat(kit.book().orElseThrow().id()).isEqualTo("house");
        assertThat(kit.book().orElseThrow().materials())
                .isEqualTo(PriceBooks.standard("example-2027").orElseThrow().materials());
    }

    @Test
    void aBookWithAnErrorIsNamed() {
        Map<String, String> changed = new LinkedHashMap<>();
        changed.put("house.csv", "nothing\n");
        assertThat(HouseKit.of(kit(changed)).problem()).startsWith("house.csv");
    }

    @Test
    void withoutOneThoseOfTheProgramAreUsed() {
        assertThat(HouseKit.of("{}")).isEqualTo(HouseKit.ofTheProgram());
        assertThat(HouseKit.of("no JSON").problem()).isEqualTo("The kit is not JSON");
    }
}
