package plumbleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import plumbleaf.web.store.JobStore;

/** The letterhead: typed once, it is on every paper; what cannot be a mark is refused beside its field, and what was typed stays. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Tag("slow")
class LetterheadTest {
    private static final String MARK =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 20 10\"><rect width=\"20\" height=\"10\" fill=\"#204020\"/></svg>";

    @Autowired
    private MockMvc web;

    @Autowired
    private JobStore store;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "local");
    }

    private MockHttpServletResponse send(String name, String webAddress, String mark) throws Exception {
        return web.perform(multipart("/letterhead")
                        .file(new MockMultipartFile(
                                "mark", "mark.svg", "image/svg+xml", mark.getBytes(StandardCharsets.UTF_8)))
                        .param("name", name)
                        .param("address", "9 Latch Row, Lower Quill")
                        .param("phone", "(555) 010-0142")
                        .param("license", "C13-000000")
                        .param("webAddress", webAddress)
                        .param("paper", "a4")
                        .param("sheets", "a3")
                        .with(csrf()))
                .andReturn()
                .getResponse();
    }

    private MockHttpServletResponse read(String path) throws Exception {
        return web.perform(get(path)).andReturn().getResponse();
    }

    @Test
    void whatIsTypedOnceIsOnEveryPaper() throws Exception {
        String job = store.create("Kiln yard", Trial.yard(), "you").id().text();
        assertThat(text(read("/jobs/" + job + "/papers/files/crew.pdf").getContentAsByteArray()))
                .contains("Your company");
        assertThat(send("Quill and Rail Fence", "https://fence.example/", MARK).getStatus())
                .isEqualTo(303);
        for (String paper : new String[] {"crew.pdf", "site-plan.pdf", "permit.pdf"}) {
            byte[] pdf = read("/jobs/" + job + "/papers/files/" + paper).getContentAsByteArray();
            assertThat(text(pdf)).as(paper).contains("Quill and Rail Fence").doesNotContain("Your company");
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getPage(0).getResources().getXObjectNames())
                        .as(paper + " carries the mark")
                        .isNotEmpty();
            }
        }
        try (PDDocument plan = Loader.loadPDF(
                read("/jobs/" + job + "/papers/files/site-plan.pdf").getContentAsByteArray())) {
            assertThat(plan.getPage(0).getMediaBox().getWidth()).isBetween(1190f, 1191f);
        }
        assertThat(text(read("/jobs/" + job + "/papers/files/site-plan.pdf").getContentAsByteArray()))
                .contains("License C13-000000", "The job as");
        MockHttpServletResponse shown = read("/letterhead/mark.png");
        assertThat(shown.getContentType()).isEqualTo("image/png");
        assertThat(read("/letterhead").getContentAsString())
                .contains("value=\"Quill and Rail Fence\"", "/letterhead/mark.png");
    }

    @Test
    void whatIsWrongIsSaidBesideItsFieldAndWhatWasTypedStays() throws Exception {
        MockHttpServletResponse answer = send("", "javascript:alert(1)", "<svg><text>no</text></svg>");
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString())
                .contains(
                        "Write the company&#39;s name".replace("&#39;", "'"),
                        "id=\"webAddress-said\"",
                        "id=\"mark-said\"",
                        "value=\"9 Latch Row, Lower Quill\"");
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return Objects.requireNonNull(new PDFTextStripper().getText(document));
        }
    }
}
