package plumbleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeEach;
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
import org.springframework.web.util.HtmlUtils;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The room Gates looks for the cheapest build of a gate when asked: hinges too, with the proof, and what less drop costs; nothing in the job changes but by a press. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Tag("slow")
class GateSearchTest {
    private static final Pattern TAKE = Pattern.compile("name=\"edit\" value=\"(builds\\.G1=; [^\"]+)\"");

    @Autowired
    private MockMvc web;

    @Autowired
    private JobStore store;

    private StoredJob job;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "local");
    }

    @BeforeEach
    void putJob() {
        job = store.create("Kiln yard", Trial.yard(), "you");
    }

    @Test
    void aSearchIsAskedForShownWithItsProofAndTakenByOnePress() throws Exception {
        String before = text();
        assertThat(page()).contains("Search: every build, whatever is pinned").doesNotContain("What each further");
        assertThat(ask("build").getStatus()).isEqualTo(303);
        String page = whenOver();
        assertThat(text()).isEqualTo(before);
        assertThat(page)
                .contains(
                        "Passes, the cheapest first",
                        "Why the cheaper ones fail, each kind of reason once",
                        "What each further 1/16\" less of drop after hanging in soft soil costs.",
                        "Every cheaper build of G1 and what it fails");
        MockHttpServletResponse proof = send(get(at() + "/cheaper.csv").param("gate", "G1"));
        String cheaper = new String(
                new GZIPInputStream(new ByteArrayInputStream(proof.getContentAsByteArray())).readAllBytes(),
                StandardCharsets.UTF_8);
        assertThat(cheaper.lines().count() - 1).isEqualTo(number(page, "choice.G1.failed"));
        Matcher take = TAKE.matcher(page);
        assertThat(take.find()).as(page).isTrue();
        assertThat(send(post(at() + "/press")
                                .with(csrf())
                                .param("version", version())
                                .param("edit", HtmlUtils.htmlUnescape(take.group(1))))
                        .getStatus())
                .isEqualTo(303);
        assertThat(text()).isNotEqualTo(before).contains("\"hingePost\"", "\"depth\"");
        assertThat(page()).as("the job is another now").doesNotContain("What each further");
        send(post(at() + "/undo").with(csrf()).param("version", version()));
        assertThat(text()).isEqualTo(before);
    }

    @Test
    void whatIsAskedInAnotherWayIsRefusedAndASearchIsGivenUp() throws Exception {
        assertThat(ask("everything").getStatus()).isEqualTo(400);
        assertThat(send(get(at() + "/cheaper.csv").param("gate", "G1")).getStatus())
                .isEqualTo(404);
        ask("sides");
        assertThat(page()).contains("data-making", "Give this search up");
        send(post(at() + "/give-up-search").with(csrf()).param("gate", "G1"));
        assertThat(page()).doesNotContain("data-making").contains("Search: every build");
    }

    private String whenOver() throws Exception {
        String page = page();
        while (page.contains("data-making")) {
            Thread.sleep(200);
            page = page();
        }
        return page;
    }

    private static long number(String page, String key) {
        Matcher number = Pattern.compile("data-number=\"" + Pattern.quote(key) + "\">([0-9,]+)<")
                .matcher(page);
        assertThat(number.find()).as(key).isTrue();
        return Long.parseLong(number.group(1).replace(",", ""));
    }

    private MockHttpServletResponse ask(String how) throws Exception {
        return send(post(at() + "/search").with(csrf()).param("gate", "G1").param("how", how));
    }

    private String page() throws Exception {
        return send(get(at())).getContentAsString();
    }

    private String at() {
        return "/jobs/" + job.id() + "/gates";
    }

    private String version() {
        return Long.toString(store.open(job.id()).orElseThrow().version());
    }

    private String text() {
        return store.open(job.id()).orElseThrow().document();
    }

    private MockHttpServletResponse send(MockHttpServletRequestBuilder request) throws Exception {
        return web.perform(request).andReturn().getResponse();
    }
}
