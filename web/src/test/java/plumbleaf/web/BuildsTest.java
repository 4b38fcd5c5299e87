package plumbleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Maker;
import plumbleaf.web.store.StoredJob;

/** The builds of the house: kept at one gate, they are listed in words, renamed, made again in another job, removed. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
class BuildsTest {
    @Autowired
    private MockMvc web;

    @Autowired
    private JobStore store;

    private StoredJob first;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "local");
    }

    @BeforeEach
    void keepOne() throws Exception {
        first = store.create("Kiln yard", Trial.yard(), "you");
        send(
                "/jobs/" + first.id() + "/gates/write-down",
                "list",
                "builds+keep+G1",
                "version",
                "1",
                "name",
                "Lane gate");
    }

    @Test
    void aBuildIsListedWithWhatItSays() throws Exception {
        assertThat(page()).contains("Lane gate", "leaf: ", "gate G1 of Kiln yard");
    }

    @Test
    void aBuildIsMadeAgainInAnotherJobAndTakenBackThere() throws Exception {
        StoredJob other = store.create(
                "Mill lane", Trial.yard().replace("\"bottomGap\": \"3\\\"\"", "\"bottomGap\": \"5\\\"\""), "you");
        MockHttpServletResponse made =
                send("/builds/use", "kind", "gate", "name", "Lane gate", "place", other.id() + " G1");
        assertThat(made.getRedirectedUrl()).isEqualTo("/jobs/" + other.id() + "/gates");
        StoredJob after = store.open(other.id()).orElseThrow();
        assertThat(after.version()).isEqualTo(2);
        assertThat(after.document()).contains("\"bottomGap\": \"3\\\"\"");
        store.undo(other.id(), 2, Maker.of("you"));
        assertThat(store.open(other.id()).orElseThrow().document()).isEqualTo(other.document());
    }

    @Test
    void aNameIsChangedButNeverToOneThatIsThere() throws Exception {
        send("/builds/rename", "kind", "gate", "name", "Lane gate", "to", "Yard gate");
        assertThat(page()).contains("Yard gate").doesNotContain("Lane gate");
        keepOne();
        MockHttpServletResponse refused =
                send("/builds/rename", "kind", "gate", "name", "Lane gate", "to", "Yard gate");
        assertThat(refused.getStatus()).isEqualTo(422);
        assertThat(refused.getContentAsString()).contains("there is a build named Yard gate already");
        send("/builds/remove", "kind", "gate", "name", "Yard gate", "sure", "yes");
        assertThat(page()).contains("Lane gate").doesNotContain("Yard gate");
    }

    @Test
    void noPlaceAndNoSuchBuildAreSaidAndChangeNothing() throws Exception {
        assertThat(send("/builds/use", "kind", "gate", "name", "Lane gate").getContentAsString())
                .contains("say which gate is to be made so");
        assertThat(send("/builds/use", "kind", "gate", "name", "No such", "place", first.id() + " G1")
                        .getContentAsString())
                .contains("There is no build of that name any more");
        assertThat(send("/builds/remove", "kind", "gate", "name", "Lane gate").getStatus())
                .isEqualTo(422);
        assertThat(store.open(first.id()).orElseThrow().document()).isEqualTo(first.document());
    }

    private String page() throws Exception {
        return web.perform(get("/builds")).andReturn().getResponse().getContentAsString();
    }

    private MockHttpServletResponse send(String path, String... fields) throws Exception {
        var form = post(path).with(csrf());
        for (int i = 0; i < fields.length; i += 2) form = form.param(fields[i], fields[i + 1]);
        return web.perform(form).andReturn().getResponse();
    }
}
