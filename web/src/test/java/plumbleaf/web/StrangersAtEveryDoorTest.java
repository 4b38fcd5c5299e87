package plumbleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import jakarta.servlet.http.Cookie;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
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
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;
import plumbleaf.documents.PaperFile;
import plumbleaf.web.link.CustomerLinks;
import plumbleaf.web.page.Room;
import plumbleaf.web.people.People;
import plumbleaf.web.people.Secret;
import plumbleaf.web.room.JobAnswers;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.room.Sight;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/**
 * Strangers at every door that the server has, its own inside included: with nothing, with every way of asking and of spelling an address,
 * with a customer's link that is good, run out, taken back, or of a job in the trash. Who has no business there learns nothing.
 */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Tag("slow")
class StrangersAtEveryDoorTest {
    private static final List<String> METHODS = List.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS");

    /** What a stranger may ask for: the way in, how the pages look, whether the server is well, and what carries its own secret. */
    private static final Set<String> OPEN = Set.of(
            "/sign-in", "/first-owner", "/look", "/error", "/drawing.css", "/welcome/{secret}", "/actuator/health/**");

    @Autowired
    private MockMvc web;

    @Autowired
    private List<RequestMappingInfoHandlerMapping> mappings;

    @Autowired
    private JobStore store;

    @Autowired
    private Database database;

    @Autowired
    private JobAnswers answers;

    @Autowired
    private People people;

    @Autowired
    private CustomerLinks links;

    private StoredJob job;
    private Secret link = Secret.fresh();
    private List<String> papers = List.of();

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "served");
        properties.add("plumbleaf.bcrypt-rounds", () -> "4");
        properties.add("plumbleaf.rate.burst", () -> "1000000");
    }

    @BeforeEach
    void fillTheHouse() throws IOException {
        if (people.nobodyYet()) people.makeFirstOwner("wen", "Wen Hallow", "four plain garden words");
        String document = example();
        job = store.create(Rooms.titleOf(document), document, "Wen Hallow");
        link = links.make(job, List.of("proposal.pdf"), 14, "Wen Hallow");
        papers = answers.papers(job, Sight.EVERYTHING).stream()
                .map(PaperFile::name)
                .toList();
    }

    @Test
    void everyDoorIsKnown() {
        assertThat(doors(link)).extracting(Routes.Route::pattern).contains("/jobs/{id}/{room}", "/actuator/metrics");
        assertThat(doors(link)).hasSizeGreaterThan(150);
    }

    @Test
    void nobodyGetsInByAnyMethod() throws Exception {
        List<String> in = new ArrayList<>();
        for (Routes.Route door : doors(Secret.fresh()))
            if (!OPEN.contains(door.pattern()) && !door.pattern().startsWith("/c/"))
                for (String method : METHODS) {
                    MockHttpServletResponse answer = send(knock(method, door.path()));
                    if (!isTurnedAway(answer)) in.add(answer.getStatus() + " " + method + " " + door.path());
                }
        assertThat(in).isEmpty();
    }

    @Test
    void nobodyGetsInByAnySpelling() throws Exception {
        Set<String> once = new TreeSet<>();
        List<String> in = new ArrayList<>();
        for (Routes.Route door : doors(Secret.fresh())) {
            if (OPEN.contains(door.pattern()) || door.pattern().startsWith("/c/") || !once.add(door.pattern()))
                continue;
            for (String spelt : spellings(door.path())) {
                MockHttpServletResponse answer = send(knock("GET", spelt));
                boolean nothing = answer.getStatus() == 400 || answer.getStatus() == 404;
                if (!nothing && !isTurnedAway(answer)) in.add(answer.getStatus() + " " + spelt);
                if (answer.getContentAsString().contains(job.title())) in.add("the job's name at " + spelt);
            }
        }
        assertThat(in).isEmpty();
    }

    private static List<String> spellings(String path) {
        if (path.equals("/")) return List.of("/%2e", "/;a=b", "/?signIn=wen", "/index.html");
        String first = "/%" + Integer.toHexString(path.charAt(1)) + path.substring(2);
        return List.of(
                path + "/",
                "//127.0.0.1/" + path,
                path + ";a=b",
                path + ".json",
                path + "%00",
                path + "%2f",
                path + "?_method=GET&signIn=wen",
                first,
                path.toUpperCase(Locale.ROOT),
                "/assets/.." + path,
                "/assets/%2e%2e" + path,
                "/assets/..;" + path,
                "/c/.." + path,
                "/sign-in/.." + path,
                "/error" + path,
                "/." + path);
    }

    /** The link's secret in the address, as a key, as a cookie and as a form's field: it opens its one paper and nothing else. */
    @Test
    void aGoodLinkOpensItsPapersAndNoOtherDoor() throws Exception {
        String mine = "/c/" + link.text();
        Set<String> opened = new TreeSet<>();
        List<String> in = new ArrayList<>();
        for (Routes.Route door : doors(link)) {
            if (OPEN.contains(door.pattern())) continue;
            for (String method : METHODS) {
                if (door.path().endsWith("/accept") && method.equals("POST")) continue;
                MockHttpServletResponse answer = send(withSecret(method, door.path()));
                if (door.pattern().startsWith("/c/")) {
                    // An answer to OPTIONS says how one may ask there, link or no link, and nothing more.
                    if (method.equals("OPTIONS"))
                        assertThat(answer.getContentAsByteArray()).isEmpty();
                    else if (answer.getStatus() == 200) opened.add(door.path());
                    else assertThat(answer.getStatus()).as(method + door.path()).isIn(404, 405);
                } else if (!isTurnedAway(answer)) in.add(answer.getStatus() + " " + method + " " + door.path());
            }
        }
        assertThat(in).isEmpty();
        assertThat(opened).contains(mine, mine + "/papers/proposal.pdf", mine + "/papers/proposal.pdf/pages/1");
        assertThat(opened)
                .allMatch(path -> path.equals(mine)
                        || path.equals(mine + "/accept")
                        || path.startsWith(mine + "/papers/proposal.pdf"));
    }

    @Test
    void aLinkThatRanOutOpensNothing() throws Exception {
        database.sql()
                .sql("update customer_link set expires_at = ? where token = ?")
                .params(System.currentTimeMillis() - 1, link.hash())
                .update();
        opensNothing();
    }

    @Test
    void aLinkThatWasTakenBackOpensNothing() throws Exception {
        links.revoke(job.id(), links.of(job.id()).get(0).id(), "Wen Hallow");
        opensNothing();
    }

    @Test
    void aLinkToAJobInTheTrashOpensNothing() throws Exception {
        store.throwAway(job.id(), "Wen Hallow");
        opensNothing();
    }

    @Test
    void aLinkToAJobRemovedForGoodOpensNothing() throws Exception {
        store.throwAway(job.id(), "Wen Hallow");
        store.removeForGood(job.id());
        opensNothing();
    }

    /** Every door answers it as it answers a link that never was. */
    private void opensNothing() throws Exception {
        Secret never = Secret.fresh();
        List<Routes.Route> doors = doors(link);
        List<Routes.Route> others = doors(never);
        assertThat(doors).hasSameSizeAs(others);
        List<String> told = new ArrayList<>();
        for (Routes.Route door : doors) {
            if (OPEN.contains(door.pattern())) continue;
            String other = door.path().replace(link.text(), never.text());
            for (String method : List.of("GET", "POST")) {
                MockHttpServletResponse answer = send(accepting(withSecret(method, door.path())));
                MockHttpServletResponse wrong = send(accepting(withSecret(method, other)));
                boolean same = answer.getStatus() == wrong.getStatus()
                        && answer.getContentAsString().equals(wrong.getContentAsString());
                if (!same || answer.getStatus() == 200) told.add(answer.getStatus() + " " + method + " " + door.path());
            }
        }
        assertThat(told).isEmpty();
        assertThat(database.sql()
                        .sql("select count(*) from acceptance")
                        .query(Long.class)
                        .single())
                .isZero();
    }

    private static MockHttpServletRequestBuilder accepting(MockHttpServletRequestBuilder request) {
        return request.param("name", "Odalys Venn")
                .param("date", LocalDate.now(ZoneOffset.UTC).toString());
    }

    private MockHttpServletRequestBuilder withSecret(String method, String path) {
        return knock(method, path)
                .header("Authorization", "Bearer " + link.text())
                .cookie(new Cookie("plumbleaf", link.text()))
                .param("secret", link.text());
    }

    private List<Routes.Route> doors(Secret secret) {
        Map<String, List<String>> known = Map.ofEntries(
                Map.entry("id", List.of(job.id().text())),
                Map.entry("room", List.of(Room.values()).stream().map(Room::key).toList()),
                Map.entry("name", papers),
                Map.entry("revision", List.of("1")),
                Map.entry("thing", List.of("G1")),
                Map.entry("book", List.of("example-2027")),
                Map.entry("chapter", List.of("index", "nowhere")),
                Map.entry("table", List.of("materials.csv")),
                Map.entry("number", List.of("1", "2")),
                Map.entry("file", List.of("nothing")),
                Map.entry("secret", List.of(secret.text())),
                Map.entry("link", List.of("1")),
                Map.entry("requiredMetricName", List.of("jvm.memory.used")),
                Map.entry("*path", List.of("db")));
        List<Routes.Route> doors = new ArrayList<>();
        for (RequestMappingInfoHandlerMapping mapping : mappings) doors.addAll(Routes.all(mapping, known));
        return doors;
    }

    private static boolean isTurnedAway(MockHttpServletResponse answer) {
        boolean toSignIn = answer.getStatus() == 302
                && String.valueOf(answer.getRedirectedUrl()).endsWith("/sign-in");
        return answer.getStatus() == 401 || toSignIn;
    }

    private static MockHttpServletRequestBuilder knock(String method, String path) {
        return request(HttpMethod.valueOf(method), URI.create(path)).with(csrf());
    }

    private MockHttpServletResponse send(MockHttpServletRequestBuilder request) throws Exception {
        return web.perform(request).andReturn().getResponse();
    }

    private static String example() throws IOException {
        try (InputStream file = Objects.requireNonNull(
                Workspace.class.getResourceAsStream("/plumbleaf/web/examples/nursery-lane.json"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
