package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import plumbleaf.jobfile.pricebook.PriceBooks;

class HouseKitTest {
    @Test
    void theHousesOwnBookIsRead() {
        HouseKit kit = HouseKit.of(Books.kit("house", Map.of()));
        assertThat(kit.problem()).isEmpty();
        assertThat(kit.book().orElseThrow().id()).isEqualTo("house");
        assertThat(kit.book().orElseThrow().materials())
                .isEqualTo(PriceBooks.standard("example-2027").orElseThrow().materials());
    }

    @Test
    void aBookWithAnErrorIsNamed() {
        Map<String, String> changed = new LinkedHashMap<>();
        changed.put("house.csv", "nothing\n");
        assertThat(HouseKit.of(Books.kit("house", changed)).problem()).startsWith("house.csv");
    }

    @Test
    void withoutOneNothingHasAPrice() {
        assertThat(HouseKit.of("{}")).isEqualTo(HouseKit.empty());
        assertThat(HouseKit.of("{}").book()).isEmpty();
        assertThat(HouseKit.of("no JSON").problem()).isEqualTo("The kit is not JSON");
    }
}
