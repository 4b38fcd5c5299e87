package plumbleaf.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import org.junit.jupiter.api.Test;

class WholeTest {
    @Test
    void aMeasureIsKeptTogetherAndTheWordsStayAsTheyAre() {
        assertThat(html("Raise it 2-3/8\", to 8' 2-3/8\" or 26' 4\", by 1/2\" a bay."))
                .isEqualTo(
                        "Raise it <span class=\"measure\">2-3/8\"</span>, to <span class=\"measure\">8' 2-3/8\"</span>"
                                + " or <span class=\"measure\">26' 4\"</span>, by 1/2\" a bay.");
        assertThat(html("Set P3-2 in 2026-11-29's hole.")).isEqualTo("Set P3-2 in 2026-11-29's hole.");
        assertThat(html("")).isEmpty();
    }

    @Test
    void whatAUserWroteIsEscapedInAndBesideAMeasure() {
        assertThat(html("<b>1-1/2\"</b> & 3-1/4\"<script>"))
                .isEqualTo(
                        "&lt;b&gt;<span class=\"measure\">1-1/2\"</span>&lt;/b&gt; &amp; <span class=\"measure\">3-1/4\"</span>"
                                + "&lt;script&gt;");
    }

    private static String html(String words) {
        StringOutput written = new StringOutput();
        OwaspHtmlTemplateOutput page = new OwaspHtmlTemplateOutput(written);
        page.setContext("p", null);
        page.writeUserContent(new Whole(words));
        return written.toString();
    }
}
