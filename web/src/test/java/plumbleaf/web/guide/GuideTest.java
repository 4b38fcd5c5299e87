package plumbleaf.web.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumbleaf.web.page.Room;

/** The guide in the program: every link leads somewhere, every picture is there, and a search finds the part that holds the words. */
class GuideTest {
    private static final Pattern LINK = Pattern.compile("href=\"([^\"]*)\"");
    private static final Pattern PICTURE = Pattern.compile("<img src=\"([^\"]*)\"");
    private static final Pattern ANCHOR = Pattern.compile(" id=\"([^\"]*)\"");

    private final Guide guide = new Guide();

    @Test
    void everyLinkLeadsToAPartThatIsThere() {
        List<String> lost = new ArrayList<>();
        for (Page page : guide.pages())
            for (String address : all(LINK, page.html()))
                if (!isThere(page, address)) lost.add(page.name() + ": " + address);
        assertThat(lost).isEmpty();
        assertThat(all(LINK, guide.pages().get(0).html())).hasSize(guide.pages().size() - 1);
    }

    @Test
    void everyRoomNamesAPartThatIsThere() {
        for (Room room : Room.values())
            assertThat(isThere(guide.pages().get(0), "/guide/" + room.chapter()))
                    .as(room.word())
                    .isTrue();
    }

    @Test
    void everyPictureIsInTheJar() {
        int count = 0;
        for (Page page : guide.pages()) {
            for (String address : all(PICTURE, page.html())) {
                count++;
                assertThat(Guide.class.getResource("/plumbleaf/web" + address))
                        .as(page.name() + ": " + address)
                        .isNotNull();
            }
        }
        assertThat(count).isPositive();
    }

    @Test
    void everyPartIsFoundByTheWordsOfItsHeading() {
        for (Page page : guide.pages()) {
            for (Page.Part part : page.parts()) {
                assertThat(all(ANCHOR, page.html())).as(page.name()).contains(part.anchor());
                assertThat(Finding.of(List.of(page), part.heading()))
                        .as(part.heading())
                        .extracting(Finding::address)
                        .contains("/guide/" + page.name() + "#" + part.anchor());
            }
        }
    }

    @Test
    void aSearchAsksForAllWordsByTheirBeginningsAndShowsTheFirst() {
        Page page = PageMaker.page(
                "soil",
                "# Soil\n\nSoft clay gives way.\n\n## Frost\n\nClay that freezes **heaves** a post.\n",
                List.of());
        assertThat(Finding.of(List.of(page), "clay"))
                .extracting(Finding::heading)
                .containsExactly("Soil", "Frost");
        assertThat(Finding.of(List.of(page), "HEAV clay")).singleElement().satisfies(found -> {
            assertThat(found.found()).isEqualTo("heav");
            assertThat(found.before()).isEqualTo("Clay that freezes ");
            assertThat(found.after()).isEqualTo("es a post.");
        });
        assertThat(Finding.of(List.of(page), "frost"))
                .extracting(Finding::heading)
                .containsExactly("Frost");
        assertThat(Finding.of(List.of(page), "eaves")).isEmpty();
        assertThat(Finding.of(List.of(page), " ,. ")).isEmpty();
    }

    @Test
    void whatLeadsOutOfTheGuideIsLeftAsWordsAndNothingOfATextIsTakenForMarks() {
        Page page = PageMaker.page(
                "one",
                "# One\n\n[notes](../decisions/0001.md), <script>x</script> and [two](two.md#b) <!-- number: x = 1 -->\n",
                List.of("two"));
        assertThat(page.html())
                .contains("notes, &lt;script&gt;")
                .contains("href=\"/guide/two#b\"")
                .doesNotContain("<script>")
                .doesNotContain("number");
        assertThat(PageMaker.led("three.md", List.of("two"))).isEqualTo(Optional.empty());
    }

    private boolean isThere(Page from, String address) {
        if (address.startsWith("#")) return all(ANCHOR, from.html()).contains(address.substring(1));
        String[] parts = address.replaceFirst("^/guide/", "").split("#", 2);
        return guide.page(parts[0])
                .filter(page -> parts.length == 1 || all(ANCHOR, page.html()).contains(parts[1]))
                .isPresent();
    }

    private static List<String> all(Pattern pattern, String html) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(html);
        while (matcher.find()) found.add(matcher.group(1));
        return found;
    }
}
