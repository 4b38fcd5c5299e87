package plumbleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;

import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.http.HttpMethod;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.web.people.ApiTokens;
import plumbleaf.web.people.People;
import plumbleaf.web.people.Person;
import plumbleaf.web.people.PersonLine;
import plumbleaf.web.people.Role;

/** The doors for programs: what the served description says is there, is there, and nothing else. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
class ApiTest {
    @Autowired
    private MockMvc web;

    @Autowired
    private RequestMappingHandlerMapping requestMappingHandlerMapping;

    @Autowired
    private People people;

    @Autowired
    private ApiTokens keys;

    private String key = "";

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", TrialPostgres::emptyStore);
        properties.add("plumbleaf.mode", () -> "served");
        properties.add("plumbleaf.bcrypt-rounds", () -> "4");
    }

    @BeforeEach
    void makeKey() {
        if (people.nobodyYet()) people.makeFirstOwner("wen", "Wen Hallow", "four plain garden words");
        key = keys.make(person("wen"), "the test").text();
    }

    private Person person(String signIn) {
        return people.all().stream()
                .map(PersonLine::person)
                .filter(person -> person.signIn().equals(signIn))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theDescriptionNamesEveryDoorAndNoOther() throws Exception {
        Set<String> doors = new TreeSet<>();
        for (RequestMappingInfo info :
                requestMappingHandlerMapping.getHandlerMethods().keySet())
            for (String pattern : info.getPatternValues())
                for (RequestMethod method : info.getMethodsCondition().getMethods())
                    if (pattern.startsWith("/api/v1")) doors.add(method + " " + pattern.substring("/api/v1".length()));
        Node.ObjectNode description = object(send("GET", "/openapi.json", ""));
        Set<String> described = new TreeSet<>();
        for (Node.Member path :
                description.get("paths").flatMap(Node::asObject).orElseThrow().members())
            for (Node.Member method : path.value().asObject().orElseThrow().members())
                described.add(method.key().toUpperCase(Locale.ROOT) + " " + path.key());
        assertThat(described).isEqualTo(doors).hasSizeGreaterThan(10);
    }

    @Test
    void aJobIsTakenInChangedAndThrownAway() throws Exception {
        MockHttpServletResponse made = send("POST", "/jobs", Trial.yard());
        assertThat(made.getStatus()).isEqualTo(201);
        assertThat(made.getHeader("ETag")).isEqualTo("\"1\"");
        String at = Objects.requireNonNull(made.getHeader("Location")).substring("/api/v1".length());
        assertThat(send("GET", at, "").getContentAsString()).isEqualTo(Trial.yard());
        assertThat(send("GET", "/jobs", "").getContentAsString()).contains("\"title\": \"Kiln yard\"");

        assertThat(send("PUT", at, Trial.yard()).getStatus()).isEqualTo(428);
        String changed = Trial.yard().replace("Kiln yard", "Tarn yard");
        MockHttpServletResponse kept = send("PUT", at, changed, Map.of("If-Match", "\"1\""));
        assertThat(kept.getStatus()).isEqualTo(200);
        assertThat(kept.getHeader("ETag")).isEqualTo("\"2\"");
        MockHttpServletResponse late = send("PUT", at, Trial.yard(), Map.of("If-Match", "\"1\""));
        assertThat(late.getStatus()).isEqualTo(409);
        Node.ObjectNode both = object(late);
        assertThat(both.get("now").flatMap(Node::asText)).contains(changed);
        assertThat(both.get("yours").flatMap(Node::asText)).contains(Trial.yard());
        assertThat(both.get("who").flatMap(Node::asText)).contains("Wen Hallow");
        assertThat(send("PUT", at, "{\"format\": 1}", Map.of("If-Match", "\"2\""))
                        .getStatus())
                .isEqualTo(422);

        assertThat(send("GET", at + "/design", "").getContentAsString()).contains("\"format\": \"plumbleaf-design\"");
        assertThat(send("GET", at + "/papers", "").getContentAsString()).contains("packet.pdf");
        assertThat(send("GET", at + "/papers/site-plan.svg", "").getContentAsString())
                .contains("<svg");
        assertThat(send("DELETE", at, "").getStatus()).isEqualTo(204);
        assertThat(send("GET", at, "").getStatus()).isEqualTo(404);
        assertThat(send("DELETE", at, "").getStatus()).isEqualTo(404);
    }

    @Test
    void aShotIntoADraftLeavesWhatIsOnlyBegun() throws Exception {
        String begun = Trial.yard()
                .replaceFirst("\\{", "{ \"draft\": true,")
                .replaceFirst("\"gates\": \\[", "\"gates\": [ { \"id\": \"G8\", \"opening\": \"5'\" },");
        String at = Objects.requireNonNull(send("POST", "/jobs", begun).getHeader("Location"))
                .substring("/api/v1".length());
        String shot = "{\"id\": \"S91\", \"run\": \"R1\", \"station\": \"3'\", \"elevation\": \"-1\\\"\"}";
        assertThat(send("POST", at + "/shots", shot, Map.of("If-Match", "\"1\""))
                        .getStatus())
                .isEqualTo(200);
        assertThat(send("GET", at, "").getContentAsString())
                .contains("\"draft\": true", "{ \"id\": \"G8\", \"opening\": \"5'\" }", "S91");
    }

    @Test
    void aShotIsAdded() throws Exception {
        String at = Objects.requireNonNull(send("POST", "/jobs", Trial.yard()).getHeader("Location"))
                .substring("/api/v1".length());
        int before = shots(at).size();
        String shot = "{\"id\": \"S91\", \"run\": \"R1\", \"station\": \"3'\", \"elevation\": \"-1\\\"\"}";
        assertThat(send("POST", at + "/shots", shot, Map.of("If-Match", "\"1\""))
                        .getStatus())
                .isEqualTo(200);
        assertThat(shots(at)).hasSize(before + 1);
        assertThat(send("POST", at + "/shots", shot, Map.of("If-Match", "\"1\""))
                        .getStatus())
                .isEqualTo(422);
        assertThat(send("POST", at + "/shots", "[]", Map.of("If-Match", "\"2\""))
                        .getStatus())
                .isEqualTo(400);
    }

    @Test
    void priceBooksAreForThoseWhoSeeMoney() throws Exception {
        assertThat(send("GET", "/price-books/example-2027", "").getContentAsString())
                .contains("materials.csv", "\"ofTheHouse\": false");
        web.perform(MockMvcRequestBuilders.post("/books")
                        .param("book", "spring-2027")
                        .with(user("wen").roles("OWNER"))
                        .with(csrf()))
                .andReturn();
        assertThat(send("GET", "/price-books", "").getContentAsString()).contains("spring-2027", "example-2027");
        assertThat(send("GET", "/price-books/spring-2027", "").getContentAsString())
                .contains("labor.csv", "\"ofTheHouse\": true");
        assertThat(send("GET", "/price-books/autumn-2027", "").getStatus()).isEqualTo(404);
        people.add("cora", "Cora Pike", Role.CREW, "Wen Hallow");
        key = keys.make(person("cora"), "hers").text();
        assertThat(send("GET", "/price-books", "").getStatus()).isEqualTo(403);
        assertThat(send("GET", "/jobs", "").getStatus()).isEqualTo(200);
        assertThat(send("POST", "/jobs", Trial.yard()).getStatus()).isEqualTo(403);
    }

    @Test
    void aWrongOrRevokedKeyOpensNothing() throws Exception {
        ApiTokens.Line mine = keys.of(person("wen")).get(0);
        String good = key;
        for (String wrong : List.of("", "x", "plf_" + "A".repeat(32), "A".repeat(100_000))) {
            key = wrong;
            MockHttpServletResponse answer = send("GET", "/jobs", "");
            assertThat(answer.getStatus()).isEqualTo(401);
            assertThat(answer.getHeader("WWW-Authenticate")).isEqualTo("Bearer");
        }
        key = good;
        for (ApiTokens.Line line : keys.of(person("wen"))) keys.revoke(person("wen"), line.id());
        assertThat(mine.label()).isEqualTo("the test");
        assertThat(send("GET", "/jobs", "").getStatus()).isEqualTo(401);
    }

    private List<Node> shots(String at) throws Exception {
        return object(send("GET", at + "/shots", ""))
                .get("shots")
                .flatMap(Node::asArray)
                .orElseThrow()
                .items();
    }

    private static Node.ObjectNode object(MockHttpServletResponse answer) throws Exception {
        return JsonReader.read(answer.getContentAsString())
                .match(tree -> tree.root().asObject().orElseThrow(), broken -> {
                    throw new AssertionError("Not JSON: " + broken);
                });
    }

    private MockHttpServletResponse send(String method, String at, String body) throws Exception {
        return send(method, at, body, Map.of());
    }

    private MockHttpServletResponse send(String method, String at, String body, Map<String, String> headers)
            throws Exception {
        MockHttpServletRequestBuilder request = MockMvcRequestBuilders.request(
                        HttpMethod.valueOf(method), URI.create("/api/v1" + at))
                .header("Authorization", "Bearer " + key);
        if (!body.isEmpty()) request.contentType("application/json").content(body);
        headers.forEach(request::header);
        return web.perform(request).andReturn().getResponse();
    }
}
