package plumbleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import jakarta.servlet.http.Cookie;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import plumbleaf.web.people.SetupCode;
import plumbleaf.web.store.JobStore;

/** The workspace with sign-in: nobody in without it, and the first owner made by whoever can read the server's own screen. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
class ServedPagesTest {
    private static final String PASSWORD = "four plain garden words";

    @Autowired
    private MockMvc web;

    @Autowired
    private JobStore store;

    @Autowired
    private SetupCode code;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "served");
    }

    @Test
    void theFirstOwnerSetsTheirPasswordAndSignsIn() throws Exception {
        String address =
                "/jobs/" + store.create("Kiln yard", Trial.yard(), "Wen").id() + "/gates";
        assertThat(send(get(address)).getResponse().getRedirectedUrl()).endsWith("/sign-in");
        assertThat(send(get("/sign-in")).getResponse().getHeader("Location")).isEqualTo("/first-owner");

        MockHttpServletResponse wrong =
                send(owner("AAAAAAAA", "Wen Hallow", "short")).getResponse();
        assertThat(wrong.getStatus()).isEqualTo(422);
        assertThat(wrong.getContentAsString())
                .contains("This is not the code.", "at least 12 characters", "value=\"Wen Hallow\"")
                .doesNotContain("short");

        assertThat(send(owner(code.text(), "Wen Hallow", PASSWORD))
                        .getResponse()
                        .getHeader("Location"))
                .isEqualTo("/sign-in");
        assertThat(send(owner(code.text(), "Second", PASSWORD)).getResponse().getHeader("Location"))
                .isEqualTo("/sign-in");

        assertThat(send(signIn("wen", "not the password")).getResponse().getRedirectedUrl())
                .isEqualTo("/sign-in?again");
        MvcResult signedIn = send(signIn(" WEN ", PASSWORD));
        assertThat(signedIn.getResponse().getRedirectedUrl()).isEqualTo("/");
        Cookie session = Objects.requireNonNull(signedIn.getResponse().getCookie("plumbleaf"));
        assertThat(session.isHttpOnly()).isTrue();
        MockHttpServletResponse room = send(get(address).cookie(session)).getResponse();
        assertThat(room.getStatus()).isEqualTo(200);
        assertThat(room.getContentAsString()).contains("Wen Hallow", "Sign out");
    }

    private static MockHttpServletRequestBuilder owner(String code, String name, String password) {
        return post("/first-owner")
                .with(csrf())
                .param("code", code)
                .param("name", name)
                .param("signIn", "wen")
                .param("password", password);
    }

    private static MockHttpServletRequestBuilder signIn(String name, String password) {
        return post("/sign-in").with(csrf()).param("signIn", name).param("password", password);
    }

    private MvcResult send(MockHttpServletRequestBuilder request) throws Exception {
        return web.perform(request).andReturn();
    }
}
