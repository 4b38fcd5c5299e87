package plumbleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import plumbleaf.documents.PaperFile;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;
import plumbleaf.web.files.JobFiles;
import plumbleaf.web.link.CustomerLinks;
import plumbleaf.web.page.Room;
import plumbleaf.web.people.ApiTokens;
import plumbleaf.web.people.People;
import plumbleaf.web.people.Person;
import plumbleaf.web.people.PersonLine;
import plumbleaf.web.people.Role;
import plumbleaf.web.people.Secret;
import plumbleaf.web.room.JobAnswers;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.room.Sight;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/**
 * Knocks at every door there is: as nobody, as a stranger who has a customer's link, as shop and as crew. Nobody gets in where they do not
 * belong, and no cost or price of the job reaches shop or crew, on a page, in a paper, in an answer to a program or in a file.
 */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Tag("slow")
class WhoSeesWhatTest {
    private static final Pattern IN_JSON = Pattern.compile("\"(-?\\d+\\.\\d{2})\"");
    private static final Pattern IN_TEXT = Pattern.compile("\\$\\s?(\\d[\\d,]*\\.\\d{2})");
    private static final Pattern ANY_AMOUNT = Pattern.compile("\\$\\s?\\d");
    /** What anybody may ask for; what these may do is tested elsewhere. */
    private static final Set<String> OPEN = Set.of(
            "/sign-in",
            "/first-owner",
            "/look",
            "/error",
            "/drawing.css",
            "/welcome/{secret}",
            "/c/{secret}",
            "/c/{secret}/papers/{name}",
            "/c/{secret}/papers/{name}/pages/{number}",
            "/c/{secret}/accept");

    @Autowired
    private MockMvc web;

    @Autowired
    private RequestMappingHandlerMapping requestMappingHandlerMapping;

    @Autowired
    private JobStore store;

    @Autowired
    private JobAnswers answers;

    @Autowired
    private People people;

    @Autowired
    private JobFiles files;

    @Autowired
    private CustomerLinks links;

    @Autowired
    private ApiTokens keys;

    private StoredJob job;
    private String officeFile = "";
    private Secret link = Secret.fresh();
    private List<Routes.Route> routes = List.of();

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
        for (Role role : Role.values())
            if (!people.isTaken(role.key())) people.add(role.key(), "A " + role.word(), role, "Wen Hallow");
        String document = example("nursery-lane");
        job = store.create(Rooms.titleOf(document), document, "Wen Hallow");
        String repriced = document.replaceFirst("\"margin\": \"[^\"]*\"", "\"margin\": \"21%\"");
        store.edit(job.id(), 1, job.title(), repriced, "money.margin: 18% \u2192 21%, then $9,876.54", "Wen Hallow");
        job = store.open(job.id()).orElseThrow();
        String photo = files.add(job.id(), "G1", "gate.png", Trial.pixel(), "A Crew");
        officeFile = files.add(
                job.id(),
                JobFiles.OFFICE,
                "bill.txt",
                "Steel $4,321.09".getBytes(StandardCharsets.UTF_8),
                "Wen Hallow");
        link = links.make(job, List.of("proposal.pdf"), 14, "Wen Hallow");
        List<String> papers = new ArrayList<>(answers.papers(job, Sight.EVERYTHING).stream()
                .map(PaperFile::name)
                .toList());
        routes = Routes.all(
                requestMappingHandlerMapping,
                Map.ofEntries(
                        Map.entry("id", List.of(job.id().text())),
                        Map.entry(
                                "room",
                                List.of(Room.values()).stream().map(Room::key).toList()),
                        Map.entry("name", papers),
                        Map.entry("revision", List.of("1", "2")),
                        Map.entry("thing", List.of("G1")),
                        Map.entry("book", List.of("example-2027")),
                        Map.entry("chapter", List.of("index", "money", "nowhere")),
                        Map.entry("table", List.of("materials.csv", "history.csv")),
                        Map.entry("number", List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12")),
                        Map.entry("file", List.of(photo, officeFile)),
                        Map.entry("secret", List.of(Secret.fresh().text())),
                        Map.entry("link", List.of(links.of(job.id()).get(0).id()))));
    }

    @Test
    void nobodyGetsInWithoutSigningIn() throws Exception {
        List<String> in = new ArrayList<>();
        for (Routes.Route route : routes) {
            if (OPEN.contains(route.pattern())) continue;
            MockHttpServletResponse answer = send(knock(route));
            boolean turnedAway = answer.getStatus() == 401
                    || (answer.getStatus() == 302
                            && String.valueOf(answer.getRedirectedUrl()).endsWith("/sign-in"));
            if (!turnedAway) in.add(answer.getStatus() + " " + route);
        }
        assertThat(in).isEmpty();
        assertThat(send(knock("GET", "/actuator/metrics")).getRedirectedUrl()).endsWith("/sign-in");
        assertThat(send(knock("GET", "/actuator/health/readiness")).getStatus()).isEqualTo(200);
    }

    @Test
    void withoutTheFormsTokenNothingIsChanged() throws Exception {
        List<String> in = new ArrayList<>();
        for (Routes.Route route : routes) {
            if (route.method().equals("GET") || route.path().startsWith("/api/")) continue;
            MockHttpServletResponse answer = send(request(HttpMethod.valueOf(route.method()), route.path())
                    .with(user("wen").roles("OWNER")));
            if (answer.getStatus() != 403) in.add(answer.getStatus() + " " + route);
        }
        assertThat(in).isEmpty();
    }

    @Test
    void aLinkOpensItsPapersAndNothingElse() throws Exception {
        String at = "/c/" + link.text();
        assertThat(send(knock("GET", at)).getStatus()).isEqualTo(200);
        assertThat(send(knock("GET", at + "/papers/proposal.pdf")).getStatus()).isEqualTo(200);
        assertThat(send(knock("GET", at + "/papers/proposal.pdf/pages/1")).getStatus())
                .isEqualTo(200);
        for (PaperFile paper : answers.papers(job, Sight.EVERYTHING))
            if (!paper.name().equals("proposal.pdf"))
                assertThat(send(knock("GET", at + "/papers/" + paper.name())).getStatus())
                        .as(paper.name())
                        .isEqualTo(404);
        for (String other : List.of("", "x", Secret.fresh().text(), link.text() + "x", link.hash()))
            assertThat(send(knock("GET", "/c/" + other)).getStatus()).as(other).isIn(404, 302);
        links.revoke(job.id(), links.of(job.id()).get(0).id(), "Wen Hallow");
        assertThat(send(knock("GET", at)).getStatus()).isEqualTo(404);
        assertThat(send(knock("GET", at + "/papers/proposal.pdf")).getStatus()).isEqualTo(404);
        assertThat(send(knock("POST", at + "/accept").param("name", "Odalys Venn"))
                        .getStatus())
                .isEqualTo(404);
    }

    @Test
    void aCustomerTicksOptionsSeesTheTotalAndAcceptsWithThem() throws Exception {
        String offered = example("nursery-lane-settled").replace("\"stages\": [", """
                        "options": [
                          { "id": "O1", "name": "Thin contingency", "kind": "extra", "edits": ["money.contingency=1%"] },
                          { "id": "O2", "name": "Lower margin", "kind": "extra", "edits": ["money.margin=15%"] },
                          { "id": "O3", "name": "No contingency", "kind": "extra", "edits": ["money.contingency=0%"] }
                        ],
                        "stages": [""");
        StoredJob choices = store.create("Choices", offered, "Wen Hallow");
        Secret secret = links.make(choices, List.of("proposal.pdf"), 14, "Wen Hallow");
        String at = "/c/" + secret.text();
        String plain = send(knock("GET", at)).getContentAsString();
        assertThat(plain).contains("Thin contingency", "Lower margin").doesNotContain("Total with tax");
        String two = send(knock("GET", at + "?tick=O1&tick=O2")).getContentAsString();
        assertThat(two).contains("The job as described", "You accept it with Thin contingency, Lower margin, $");
        List<Long> sum = new ArrayList<>();
        Matcher rows =
                Pattern.compile("<dd class=\"short\">([^<]*\\$[^<]*)</dd>").matcher(two);
        while (rows.find()) {
            String row = rows.group(1);
            long cents = Long.parseLong(row.replaceAll("[^0-9]", ""));
            sum.add(row.startsWith("$") || row.startsWith("+") ? cents : -cents);
        }
        long total = sum.remove(sum.size() - 1);
        assertThat(sum).hasSizeGreaterThanOrEqualTo(3);
        assertThat(sum.stream().mapToLong(Long::longValue).sum()).isEqualTo(total);

        String today = LocalDate.now(ZoneOffset.UTC).toString();
        MockHttpServletResponse both = send(knock("POST", at + "/accept")
                .param("name", "Odalys Venn")
                .param("date", today)
                .param("tick", "O1", "O3"));
        assertThat(both.getStatus()).isEqualTo(422);
        assertThat(both.getContentAsString()).contains("Tick what can be built together.");
        assertThat(links.of(choices.id()).get(0).isAccepted()).isFalse();

        MockHttpServletResponse taken = send(knock("POST", at + "/accept")
                .param("name", "Odalys Venn")
                .param("date", today)
                .param("tick", "O1", "O2"));
        assertThat(taken.getStatus()).isEqualTo(303);
        assertThat(links.of(choices.id()).get(0).ticked()).startsWith("with Thin contingency, Lower margin, $");
        assertThat(send(knock("GET", at)).getContentAsString())
                .contains("Odalys Venn accepted this on " + today + ", with Thin contingency, Lower margin, $")
                .doesNotContain("/accept\"");
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"SHOP", "CREW"})
    void noFigureOfMoneyReachesShopOrCrew(Role role) throws Exception {
        // Beside the job that was offered one that is done, with bills, what was paid, changes and hours.
        String done = example("nursery-lane-settled");
        StoredJob settled = store.create(Rooms.titleOf(done), done, "Wen Hallow");
        List<String> leaks = new ArrayList<>();
        int seen = 0;
        for (StoredJob one : List.of(job, settled)) {
            Set<String> figures = figures(one);
            assertThat(figures).hasSizeGreaterThan(60);
            for (Routes.Route route : routes) {
                if (OPEN.contains(route.pattern()) || !route.method().equals("GET")) continue;
                String path = route.path().replace(job.id().text(), one.id().text());
                MockHttpServletResponse answer = send(as(role, "GET", path));
                // What turns them away must not say it either.
                for (String leak : leaks(answer, figures)) leaks.add(path + ": " + leak);
                if (answer.getStatus() == 200) seen++;
            }
        }
        assertThat(leaks).isEmpty();
        assertThat(seen).isGreaterThan(60);
        assertThat(send(as(role, "GET", "/jobs/" + job.id() + "/files/" + officeFile))
                        .getStatus())
                .isEqualTo(404);
        assertThat(send(as(role, "GET", "/jobs/" + job.id() + "/money")).getStatus())
                .isEqualTo(403);
        assertThat(send(as(role, "GET", "/jobs/" + job.id() + "/history")).getContentAsString())
                .contains("a change of the terms")
                .doesNotContain("21%");
    }

    /** What is folded away is veiled as what stands open: a crew sees what was checked and holds, check by check. */
    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"SHOP", "CREW"})
    void shopAndCrewSeeTheChecksThatHold(Role role) throws Exception {
        MockHttpServletResponse answer = send(as(role, "GET", "/jobs/" + job.id() + "/strength"));
        assertThat(answer.getContentAsString())
                .contains("Checks that hold", "Checked, and within its limit", ">Check</th>");
        assertThat(leaks(answer, figures(job))).isEmpty();
        assertThat(send(as(Role.OWNER, "GET", "/jobs/" + job.id() + "/strength"))
                        .getContentAsString())
                .contains("Checks that hold");
    }

    /** The same walk finds money where it may be seen; else the test above would prove nothing. */
    @Test
    void theOwnerSeesEveryFigure() throws Exception {
        Set<String> figures = figures(job);
        List<String> found = new ArrayList<>();
        for (String path : List.of("/money", "/stock", "/papers/files/proposal.pdf", "/papers/files/packet.pdf"))
            found.addAll(leaks(send(as(Role.OWNER, "GET", "/jobs/" + job.id() + path)), figures));
        assertThat(found).hasSizeGreaterThan(60);
        assertThat(send(as(Role.OWNER, "GET", "/jobs/" + job.id() + "/files/" + officeFile))
                        .getStatus())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"SHOP", "CREW"})
    void shopAndCrewChangeNothingButAddFilesWriteHoursDownAndCountWhatComes(Role role) throws Exception {
        List<String> done = new ArrayList<>();
        for (Routes.Route route : routes) {
            if (route.method().equals("GET") || OPEN.contains(route.pattern())) continue;
            MockHttpServletResponse answer = send(as(role, route));
            if (answer.getStatus() != 403) done.add(route.pattern());
        }
        assertThat(new TreeSet<>(done))
                .containsExactlyInAnyOrder(
                        "/jobs/{id}/files",
                        "/jobs/{id}/stock/receiving",
                        "/jobs/{id}/stock/receiving/undo",
                        "/jobs/{id}/{room}/write-down",
                        "/me/keys",
                        "/me/keys/end",
                        "/me/password");
        assertThat(store.open(job.id()).orElseThrow()).isEqualTo(job);
        assertThat(send(as(role, "POST", "/jobs/" + job.id() + "/stock/write-down")
                                .param("list", "money.billing.paid"))
                        .getStatus())
                .isEqualTo(403);
        assertThat(send(as(role, "POST", "/jobs/" + job.id() + "/money/write-down")
                                .param("list", "actuals"))
                        .getStatus())
                .isEqualTo(403);
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"SHOP", "CREW"})
    void whatShopAndCrewWriteDownReachesNoOtherPartOfTheJob(Role role) throws Exception {
        String at = "/jobs/" + job.id() + "/stock/write-down";
        for (String list : List.of(
                "changes",
                "warranty",
                "parts",
                "runs",
                "money.options",
                "money.allowances",
                "money.billing.bills",
                "money.billing.paid"))
            assertThat(send(written(role, at, list)).getStatus()).as(list).isEqualTo(403);
        for (String list : List.of("", "ACTUALS", "actuals ", "actuals[0]", "money", "money.kept", "used.x"))
            assertThat(send(written(role, at, list)).getStatus()).as(list).isEqualTo(400);
        for (String room :
                List.of("ground", "line", "gates", "strength", "money", "papers", "stock/..", "%2e%2e/money"))
            assertThat(send(written(role, at.replace("stock", room), "actuals")).getStatus())
                    .as(room)
                    .isNotIn(200, 303);
        assertThat(send(request(HttpMethod.POST, at)
                                .with(user(role.key()).roles(role.name()))
                                .param("list", "actuals")
                                .param("version", "2"))
                        .getStatus())
                .isEqualTo(403);
        assertThat(store.open(job.id()).orElseThrow()).isEqualTo(job);

        String breakOut = "\"} ], \"money\": { \"margin\": \"1%\" }, \"x\": [ { \"y\": \"";
        MockHttpServletResponse kept = send(written(role, at, "actuals")
                .param("date", "2027-05-03")
                .param("task", "stake-out")
                .param("quantity", "4")
                .param("hours", "1.5")
                .param("money.margin", "1%")
                .param("price", "$1.00")
                .param("note", "paid $77,123.45 for it" + breakOut));
        assertThat(kept.getStatus()).isEqualTo(303);
        String document = store.open(job.id()).orElseThrow().document();
        assertThat(document).contains("77,123.45");
        assertThat(without(document)).isEqualTo(without(job.document()));
        for (String path : List.of("/stock", "/history", "/file", "/gates"))
            assertThat(send(as(role, "GET", "/jobs/" + job.id() + path)).getContentAsString())
                    .as(path)
                    .doesNotContain("77,123.45");
        assertThat(send(as(role, "GET", "/api/v1/jobs/" + job.id())).getContentAsString())
                .doesNotContain("77,123.45");
        assertThat(send(as(Role.OWNER, "GET", "/jobs/" + job.id() + "/file")).getContentAsString())
                .contains("77,123.45");
    }

    private MockHttpServletRequestBuilder written(Role role, String at, String list) {
        return as(role, "POST", at).param("list", list).param("version", String.valueOf(job.version()));
    }

    /** The job but for the hours written down. */
    private static String without(String document) {
        Node root = JsonReader.read(document).match(tree -> tree.root(), broken -> Json.nothing());
        NodePath hours = NodePath.of("actuals");
        return JsonWriter.write(hours.find(root).isPresent() ? hours.remove(root) : root);
    }

    @Test
    void onlyAnOwnerRemovesAJobForGood() throws Exception {
        StoredJob thrown = store.create("Thrown away", job.document(), "Wen Hallow");
        store.throwAway(thrown.id(), "Wen Hallow");
        List<String> ways = List.of("/trash/" + thrown.id() + "/remove", "/trash/empty");
        for (Role role : Role.values())
            for (String way : ways)
                if (role != Role.OWNER)
                    assertThat(send(as(role, "POST", way).param("sure", "yes")).getStatus())
                            .as(role + way)
                            .isEqualTo(403);
        for (String way : ways)
            assertThat(send(as(Role.OWNER, "POST", way)).getStatus()).as(way).isEqualTo(422);
        assertThat(store.trash()).isNotEmpty();
        assertThat(send(as(Role.OWNER, "GET", "/trash")).getContentAsString()).contains("Remove for good");
        assertThat(send(as(Role.ESTIMATOR, "GET", "/trash")).getContentAsString())
                .contains("Thrown away")
                .doesNotContain("Remove for good");
        assertThat(send(as(Role.OWNER, "POST", ways.get(0)).param("sure", "yes"))
                        .getStatus())
                .isEqualTo(303);
        assertThat(store.trash()).noneMatch(line -> line.id().equals(thrown.id()));
        assertThat(send(as(Role.OWNER, "POST", "/trash/empty").param("sure", "yes"))
                        .getStatus())
                .isEqualTo(303);
        assertThat(store.trash()).isEmpty();
        assertThat(send(as(Role.OWNER, "GET", "/audit")).getContentAsString())
                .contains("removed a job for good", "Thrown away");
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"ESTIMATOR", "OFFICE", "SHOP", "CREW"})
    void onlyAnOwnerSeesPeopleAndTheLog(Role role) throws Exception {
        for (String path : List.of("/people", "/audit", "/actuator/metrics", "/actuator/health", "/%70eople"))
            assertThat(send(as(role, "GET", path)).getStatus()).as(path).isEqualTo(403);
        assertThat(send(as(Role.OWNER, "GET", "/people")).getStatus()).isEqualTo(200);
        assertThat(send(as(Role.OWNER, "GET", "/audit")).getStatus()).isEqualTo(200);
    }

    @Test
    void theFieldBookMayCompileItsEngineAndRunsNoText() throws Exception {
        assertThat(send(as(Role.CREW, "GET", "/field-book/")).getHeader("Content-Security-Policy"))
                .contains("default-src 'none'", "script-src 'self' 'wasm-unsafe-eval';", "frame-ancestors 'none'")
                .doesNotContain("'unsafe-eval'", "unsafe-inline");
    }

    @Test
    void whoSeesNoMoneyTakesNoPriceAlong() throws Exception {
        String path = "/field-book/jobs/" + job.id();
        for (Role role : List.of(Role.SHOP, Role.CREW))
            assertThat(send(as(role, "GET", path)).getContentAsString())
                    .contains("Crew sheet", "<svg")
                    .doesNotContain("\"kit\"", "\"document\"", "priceBook", "margin\"", "margin\\\"");
        assertThat(send(as(Role.ESTIMATOR, "GET", path)).getContentAsString())
                .contains("\"kit\"", "\"document\"", "margin")
                .as("the book that the job names, the program's own too: the engine on a device has none")
                .contains("\\\"materials\\\": \\\"# Materials of the price book");
    }

    @Test
    void everyAnswerCarriesTheHeadersThatKeepItToItself() throws Exception {
        for (String path : List.of("/", "/jobs/" + job.id() + "/gates", "/people", "/sign-in", "/jobs/nothing/gates")) {
            MockHttpServletResponse answer = send(as(Role.OWNER, "GET", path));
            assertThat(answer.getHeader("Content-Security-Policy"))
                    .contains("default-src 'none'", "script-src 'self'", "frame-ancestors 'none'")
                    .doesNotContain("unsafe");
            assertThat(answer.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(answer.getHeader("X-Frame-Options")).isEqualTo("DENY");
            assertThat(answer.getContentAsString()).doesNotContain("<script>", " onclick", " style=\"", "<style");
        }
    }

    /** Every amount of the job, as JSON and pages write it. */
    private Set<String> figures(StoredJob of) {
        Set<String> figures = new TreeSet<>(List.of("9876.54", "4321.09"));
        Matcher json = IN_JSON.matcher(answers.design(of, Sight.EVERYTHING).orElseThrow());
        while (json.find()) figures.add(json.group(1).replace("-", ""));
        return figures;
    }

    private static List<String> leaks(MockHttpServletResponse answer, Set<String> figures) throws IOException {
        String type = String.valueOf(answer.getContentType());
        if (type.startsWith("image/png")) return List.of();
        String text = type.startsWith("application/pdf")
                ? pdfText(answer.getContentAsByteArray())
                : answer.getContentAsString(StandardCharsets.UTF_8);
        List<String> leaks = new ArrayList<>();
        Matcher dollars = IN_TEXT.matcher(text);
        while (dollars.find()) leaks.add(dollars.group());
        if (leaks.isEmpty() && ANY_AMOUNT.matcher(text).find()) leaks.add("an amount");
        if (type.startsWith("text/csv"))
            for (String cell : text.split("[,\\r\\n]", -1))
                if (figures.contains(cell) && cell.length() >= 6) leaks.add("the cell " + cell);
        for (String figure : figures)
            // Small figures meet lengths and hours by chance; with a dollar sign they were found above.
            if (figure.length() >= 6 && text.contains("\"" + figure + "\"")) leaks.add("\"" + figure + "\"");
        return leaks;
    }

    private static String pdfText(byte[] bytes) throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private MockHttpServletRequestBuilder knock(Routes.Route route) {
        return knock(route.method(), route.path());
    }

    private MockHttpServletRequestBuilder knock(String method, String path) {
        return request(HttpMethod.valueOf(method), java.net.URI.create(path)).with(csrf());
    }

    private MockHttpServletRequestBuilder as(Role role, Routes.Route route) {
        return as(role, route.method(), route.path());
    }

    private MockHttpServletRequestBuilder as(Role role, String method, String path) {
        MockHttpServletRequestBuilder knock = knock(method, path);
        return path.startsWith("/api/")
                ? knock.header("Authorization", "Bearer " + key(role))
                : knock.with(user(role.key()).roles(role.name()));
    }

    private final Map<Role, String> made = new java.util.EnumMap<>(Role.class);

    private String key(Role role) {
        return made.computeIfAbsent(role, r -> keys.make(person(r), "the test").text());
    }

    private Person person(Role role) {
        return people.all().stream()
                .map(PersonLine::person)
                .filter(person -> person.signIn().equals(role.key()))
                .findFirst()
                .orElseThrow();
    }

    private MockHttpServletResponse send(MockHttpServletRequestBuilder request) throws Exception {
        return web.perform(request).andReturn().getResponse();
    }

    private static String example(String name) throws IOException {
        try (InputStream file = Objects.requireNonNull(
                Workspace.class.getResourceAsStream("/plumbleaf/web/examples/" + name + ".json"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
