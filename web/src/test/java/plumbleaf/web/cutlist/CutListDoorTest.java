package plumbleaf.web.cutlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import plumbleaf.web.Trial;
import plumbleaf.web.Workspace;

/** A list typed on the page: its plan, the yard's and the price book's bars, and what is wrong with it. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Tag("slow")
class CutListDoorTest {
    private static final String TUBE = "TUBE-2x2x0.083";

    @Autowired
    private MockMvc web;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "local");
    }

    @Test
    void thePageBeginsWithAListThatCanBePlanned() throws Exception {
        String page = send(get("/yard/cut-list")).getContentAsString();
        assertThat(page).contains("<option value=\"" + TUBE + "\">", "piece,5' 11\",4,,post");
        assertThat(send(get("/yard")).getContentAsString()).contains("href=\"/yard/cut-list\"");
    }

    /** Four posts and six rails: the offcut holds a post, and 492 in. are more than two bars of 20 ft hold. */
    @Test
    void aListIsPlannedFromItsOwnBars() throws Exception {
        MockHttpServletResponse answer = send(plan("", """
                what,length,count,price,mark
                bar,20 ft,,58.40,
                offcut,6' 1",1,,
                piece,5' 11",4,,post
                piece,3' 10-1/2",6,,rail
                """));
        assertThat(answer.getStatus()).isEqualTo(200);
        assertThat(answer.getContentAsString())
                .contains(
                        "<h2>4 bars, $175.20: proven least</h2>",
                        ">6' 1\" offcut</td>",
                        "<td data-head=\"Each\">$58.40</td>",
                        ">rail</text>",
                        "Zinc fume makes you ill");
    }

    @Test
    void barsComeFromThePriceBookAndOffcutsOfTheYardFirst() throws Exception {
        send(post("/yard/add")
                .with(csrf())
                .param("mark", "A9")
                .param("item", TUBE)
                .param("kind", "offcut")
                .param("length", "6' 2\"")
                .param("count", "1")
                .param("contents", "1")
                .param("of", "pieces"));
        String page = send(plan(TUBE, "what\tlength\tcount\npiece\t6'\t2\n")).getContentAsString();
        assertThat(page).contains("<h2>2 bars, $", "proven least", "A9</td>", "2 x 2 x 14 ga tube, 20 ft");
    }

    @Test
    void everythingThatIsWrongIsSaidAndNothingTypedIsLost() throws Exception {
        MockHttpServletResponse answer = send(
                plan("", "what,length,count,price\nbar,20 ft,,\npiece,71,2,\n").param("kerf", "thin"));
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString())
                .contains(
                        "Kerf \"thin\": this is not a length",
                        "Line 2: price: a bar has its price",
                        "Line 3: length \"71\": a length needs its unit",
                        "piece,71,2,\n</textarea>",
                        "name=\"kerf\" size=\"7\" value=\"thin\"");
    }

    @Test
    void whatNoBarHoldsIsNamed() throws Exception {
        MockHttpServletResponse answer =
                send(plan("", "what,length,count,price,mark\nbar,20 ft,,1,\npiece,21 ft,1,,beam\n"));
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString()).contains("no bar is long enough for beam; add a longer bar");
    }

    @Test
    void moreThanAPageWaitsForIsForTheCommandLine() throws Exception {
        MockHttpServletResponse answer = send(plan("", "what,length,count,price\nbar,20 ft,,1\npiece,2 ft,5001,\n"));
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString())
                .contains("these are 5001 pieces; a page plans up to 5000, plumbleaf cutlist more");
    }

    private static MockHttpServletRequestBuilder plan(String item, String list) {
        return post("/yard/cut-list").with(csrf()).param("item", item).param("list", list);
    }

    private MockHttpServletResponse send(MockHttpServletRequestBuilder request) throws Exception {
        return web.perform(request).andReturn().getResponse();
    }
}
