package plumbleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import plumbleaf.web.page.Room;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The rooms Ground and Line: whatever a job says of its ground, its runs and its rules can be said there, and taken back; so can a gate's opening as its posts stand. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Tag("slow")
class LineAndGroundTest {
    /**
     * One item of a list as somebody types it.
     *
     * @param typed name and value by turns
     * @param file  what the job file then holds
     * @param wrong the blank that holds a bad value in the second try, and that value
     */
    record Written(Room room, String list, List<String> typed, String file, List<String> wrong) {
        @Override
        public String toString() {
            return list;
        }
    }

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

    static List<Written> everyForm() {
        return List.of(
                written(
                        Room.GATES,
                        "gates[G1].asSet",
                        List.of(
                                "date",
                                "2027-05-20",
                                "top",
                                "48 1/8",
                                "bottom",
                                "47-7/8",
                                "hingePlumb.along",
                                "-1/8",
                                "latchPlumb.along",
                                "-1/8"),
                        "\"hingePlumb\": { \"along\": \"-1/8\\\"\" }, \"latchPlumb\": { \"along\": \"-1/8\\\"\" }",
                        List.of("top", "wide")),
                written(
                        Room.LINE,
                        "runs[R1].noDig",
                        List.of("from", "33", "to", "34' 6\"", "why", "plum root"),
                        "{ \"from\": \"33'\", \"to\": \"34' 6\\\"\", \"why\": \"plum root\" }",
                        List.of("from", "three")),
                written(
                        Room.LINE,
                        "runs[R1].fits",
                        List.of("from", "26", "to", "40", "fit", "stepped"),
                        "{ \"from\": \"26'\", \"to\": \"40'\", \"fit\": \"stepped\" }",
                        List.of("to", "20'")),
                written(
                        Room.LINE,
                        "runs[R1].legs",
                        List.of("turn", "90 deg left", "arc.radius", "20", "arc.turn", "60 deg left"),
                        "\"arc\": { \"radius\": \"20'\", \"turn\": \"60 deg left\" } }",
                        List.of("arc.turn", "sixty")),
                written(
                        Room.LINE,
                        "rules.propertyLines",
                        List.of("what", "north line", "certifiedBy", "pins", "setback", "6", "points", "0, 30\n60, 30"),
                        "\"setback\": \"6\\\"\", \"points\": [{ \"east\": \"0'\", \"north\": \"30'\" }, {",
                        List.of("points", "0, 30")),
                written(
                        Room.LINE,
                        "rules.sights",
                        List.of(
                                "what",
                                "drive",
                                "east",
                                "-60",
                                "north",
                                "-60",
                                "first",
                                "0",
                                "firstLeg",
                                "15",
                                "second",
                                "90",
                                "secondLeg",
                                "15"),
                        "\"first\": \"0 deg\", \"firstLeg\": \"15'\", \"second\": \"90 deg\"",
                        List.of("second", "0")),
                written(
                        Room.LINE,
                        "rules.nearHouse.buildings",
                        List.of("what", "house", "corners", "0, 60\n30, 60"),
                        "\"what\": \"house\", \"corners\": [",
                        List.of("corners", "0, 60")),
                written(
                        Room.LINE,
                        "rules.accessible",
                        List.of("gate", "G1", "smoothBottom", "yes", "threshold", "1/2"),
                        "{ \"gate\": \"G1\", \"smoothBottom\": \"yes\", \"threshold\": \"1/2\\\"\" }",
                        List.of("threshold", "low")),
                written(
                        Room.LINE,
                        "rules.overnight",
                        List.of("what", "two goats", "temporaryFence", "40"),
                        "{ \"what\": \"two goats\", \"temporaryFence\": \"40'\" }",
                        List.of("temporaryFence", "some")),
                written(
                        Room.LINE,
                        "rules.pool.gates",
                        List.of("gate", "G1", "releaseHeight", "58", "shielded", "true", "closer", "no"),
                        "\"releaseHeight\": \"58\\\"\", \"shielded\": true, \"closer\": \"no\" }",
                        List.of("releaseHeight", "high")),
                written(
                        Room.LINE,
                        "rules.pool.climbables",
                        List.of("what", "pump", "run", "R1", "station", "8", "away", "20"),
                        "\"station\": \"8'\", \"away\": \"20\\\"\" }",
                        List.of("away", "near")),
                written(
                        Room.LINE,
                        "rules.pool.runs",
                        List.of("itself", "R1"),
                        "\"runs\": [ \"R1\" ]",
                        List.of("itself", "")),
                written(
                        Room.LINE,
                        "existing.tickets",
                        List.of("number", "K-4471", "digFrom", "2027-04-26", "validThrough", "2027-05-20"),
                        "{ \"number\": \"K-4471\", \"digFrom\": \"2027-04-26\", \"validThrough\": \"2027-05-20\" }",
                        List.of("digFrom", "Monday")),
                written(
                        Room.LINE,
                        "existing.lines",
                        List.of("kind", "drip line", "run", "R1", "station", "44"),
                        "{ \"kind\": \"drip line\", \"run\": \"R1\", \"station\": \"44'\" }",
                        List.of("station", "far")),
                written(
                        Room.LINE,
                        "existing.plugs",
                        List.of("run", "R1", "station", "38", "diameter", "10"),
                        "{ \"run\": \"R1\", \"station\": \"38'\", \"diameter\": \"10\\\"\" }",
                        List.of("diameter", "wide")),
                written(
                        Room.GROUND,
                        "ground.later",
                        List.of("run", "R1", "from", "30", "to", "40", "rise", "2", "why", "mulch"),
                        "\"rise\": \"2\\\"\", \"why\": \"mulch\" }",
                        List.of("rise", "a bit")),
                written(
                        Room.GROUND,
                        "ground.breaklines",
                        List.of("what", "curb", "shots", "S1, S2"),
                        "{ \"what\": \"curb\", \"shots\": [\"S1\", \"S2\"] }",
                        List.of("shots", "S1, S99")),
                written(
                        Room.GROUND,
                        "ground.setups",
                        List.of("on", "benchmark", "backsight", "50"),
                        "\"on\": \"benchmark\", \"backsight\": \"50\\\"\" }",
                        List.of("backsight", "fifty")),
                written(
                        Room.GROUND,
                        "ground.shots",
                        List.of("run", "R1", "station", "30", "elevation", "-20"),
                        "\"run\": \"R1\", \"station\": \"30'\", \"elevation\": \"-20\\\"\" }",
                        List.of("elevation", "low")));
    }

    private static Written written(Room room, String list, List<String> typed, String file, List<String> wrong) {
        return new Written(room, list, typed, file, wrong);
    }

    @ParameterizedTest
    @MethodSource("everyForm")
    void whatIsTypedIsKeptShownAndCanBeTakenOut(Written form) throws Exception {
        MockHttpServletResponse answer = send(writeDown(form, List.of()));
        assertThat(answer.getStatus()).as(answer.getContentAsString()).isEqualTo(303);
        assertThat(text()).contains(form.file());
        String page = send(get(at(form.room()))).getContentAsString();
        String item = lastItem(page, form.list());
        MockHttpServletResponse out = send(post(at(form.room()) + "/edit")
                .with(csrf())
                .param("version", version())
                .param("path", item)
                .param("value", ""));
        assertThat(out.getStatus()).as(out.getContentAsString()).isEqualTo(303);
        assertThat(text()).doesNotContain(form.file());
    }

    @ParameterizedTest
    @MethodSource("everyForm")
    void whatIsRefusedStaysInItsFormWithTheReason(Written form) throws Exception {
        MockHttpServletResponse answer = send(writeDown(form, form.wrong()));
        assertThat(answer.getStatus()).isEqualTo(422);
        String page = answer.getContentAsString();
        String own = page.substring(page.indexOf("name=\"list\" value=\"" + numbered(form.list()) + "\""));
        own = own.substring(0, own.indexOf("</form>"));
        assertThat(own).contains("class=\"problem\" role=\"alert\"");
        if (!form.wrong().get(1).contains("\n"))
            assertThat(own).contains(form.wrong().get(1).replace("'", "&#39;"));
        assertThat(text()).isEqualTo(Trial.yard());
    }

    @Test
    void aSecondHeightRuleNeedsAFirst() throws Exception {
        Written rule =
                written(Room.LINE, "rules.otherHeights", List.of("limit", "4", "from", "outside"), "", List.of());
        MockHttpServletResponse first = send(writeDown(rule, List.of()));
        assertThat(first.getStatus()).isEqualTo(422);
        assertThat(first.getContentAsString()).contains("put the first one under height", "value=\"4\"");
        assertThat(edit(Room.LINE, "rules.height.limit", "6' 6\"").getStatus()).isEqualTo(303);
        assertThat(send(writeDown(rule, List.of())).getStatus()).isEqualTo(303);
        assertThat(text()).contains("\"otherHeights\": [ { \"limit\": \"4'\", \"from\": \"outside\" } ]");
    }

    @Test
    void anEndIsAWallByOneChoice() throws Exception {
        assertThat(edit(Room.LINE, "runs[0].ends[0]", "wall concrete").getStatus())
                .isEqualTo(303);
        assertThat(text()).contains("{ \"kind\": \"wall\", \"of\": \"concrete\" }");
        assertThat(send(get(at(Room.LINE))).getContentAsString()).contains("value=\"wall concrete\" selected");
    }

    @Test
    void aWallNobodyKnowsIsRefusedInItsField() throws Exception {
        MockHttpServletResponse answer = edit(Room.LINE, "runs[0].ends[0]", "wall paper");
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString()).contains("value=\"wall paper\" selected", "class=\"problem\"");
    }

    @Test
    void aStraightLegBecomesACurveInOneLine() throws Exception {
        Written leg =
                written(Room.LINE, "runs[R1].legs", List.of("length", "20", "turn", "90 deg left"), "", List.of());
        assertThat(send(writeDown(leg, List.of())).getStatus()).isEqualTo(303);
        MockHttpServletResponse bad = edit(Room.LINE, "runs[0].legs[1].arc", "30'");
        assertThat(bad.getStatus()).isEqualTo(422);
        assertThat(bad.getContentAsString()).contains("arc.turn");
        MockHttpServletResponse good = edit(Room.LINE, "runs[0].legs[1].arc", "30, 40 deg left");
        assertThat(good.getStatus()).as(good.getContentAsString()).isEqualTo(303);
        assertThat(text())
                .contains("\"arc\": { \"radius\": \"30'\", \"turn\": \"40 deg left\" }")
                .doesNotContain("\"20'\"");
        assertThat(send(get(at(Room.LINE))).getContentAsString()).contains("a curve, fenced by chords");
    }

    @Test
    void theCrossSlopeIsKeptAsAGradeAndASteepOneRefused() throws Exception {
        assertThat(edit(Room.GROUND, "runs[0].crossSlope", "6%").getStatus()).isEqualTo(303);
        assertThat(text()).contains("\"crossSlope\": \"6%\"");
        job = store.create("Kiln yard", Trial.yard(), "you");
        MockHttpServletResponse steep = edit(Room.GROUND, "runs[0].crossSlope", "150%");
        assertThat(steep.getStatus()).isEqualTo(422);
        assertThat(steep.getContentAsString()).contains("1 in 1 at most", "value=\"150%\"");
    }

    @Test
    void aStyleSaysWhatItIs() throws Exception {
        assertThat(send(get(at(Room.LINE))).getContentAsString())
                .contains("cedar boards side by side on cedar rails", "Wood, shadowbox", "wood: ", "steel: ");
    }

    @Test
    void theCheapestFitIsNamedWithItsReasonAndTakenByOnePress() throws Exception {
        assertThat(send(get(at(Room.LINE))).getContentAsString())
                .contains("Price each run racked")
                .doesNotContain("Price of the whole job");
        edit(Room.LINE, "runs[0].fit", "level-top");
        assertThat(send(post(at(Room.LINE) + "/price-fits").with(csrf())).getStatus())
                .isEqualTo(303);
        String page = send(get(at(Room.LINE))).getContentAsString();
        assertThat(page)
                .contains("Price of the whole job, each designed and checked anew", "Cheapest fit", "most of it ");
        Matcher press = Pattern.compile("name=\"edit\" value=\"(runs\\[R1]\\.fit=[a-z-]+)\"")
                .matcher(page);
        assertThat(press.find()).as(page).isTrue();
        send(post(at(Room.LINE) + "/press")
                .with(csrf())
                .param("version", version())
                .param("edit", press.group(1)));
        send(post(at(Room.LINE) + "/price-fits").with(csrf()));
        assertThat(send(get(at(Room.LINE))).getContentAsString()).contains("costs least as it is");
    }

    /** Priced, held, and released under a letter; not before its opening was measured, unless the customer signed for that. */
    @Test
    void aGateIsHeldAndReleasedUnderItsLetter() throws Exception {
        assertThat(send(get(at(Room.GATES))).getContentAsString())
                .contains("priced from the plan, not for the shop", "on hold until its opening is measured");
        assertThat(edit(Room.GATES, "gates[0].release", "hold").getStatus()).isEqualTo(303);
        assertThat(text()).contains("\"release\": \"hold\"");
        assertThat(release("").getContentAsString())
                .contains("a gate is not released before its opening is measured between standing posts");
        assertThat(text()).contains("\"release\": \"hold\"");
        assertThat(release("true").getStatus()).isEqualTo(303);
        assertThat(text())
                .contains(
                        "\"revision\": \"B\"",
                        "\"by\": \"Ina Thole\"",
                        "\"beforePosts\": true",
                        "\"kind\": \"released\"");
        assertThat(send(get(at(Room.GATES))).getContentAsString()).contains("released for the shop", "Ina Thole");
        edit(Room.GATES, "gates[0].release", "hold");
        assertThat(text()).contains("\"release\": \"hold\"").doesNotContain("Ina Thole");
    }

    private MockHttpServletResponse release(String beforePosts) throws Exception {
        return send(post(at(Room.GATES) + "/write-down")
                .with(csrf())
                .param("version", version())
                .param("list", "gates[0].release")
                .param("revision", "B")
                .param("date", "2027-05-21")
                .param("by", "Ina Thole")
                .param("beforePosts", beforePosts));
    }

    private MockHttpServletRequestBuilder writeDown(Written form, List<String> wrong) {
        MockHttpServletRequestBuilder asked = post(at(form.room()) + "/write-down")
                .with(csrf())
                .param("version", version())
                .param("list", form.list());
        for (int i = 0; i < form.typed().size(); i += 2) {
            String name = form.typed().get(i);
            asked.param(
                    name,
                    !wrong.isEmpty() && wrong.get(0).equals(name)
                            ? wrong.get(1)
                            : form.typed().get(i + 1));
        }
        return asked;
    }

    /** The path that the last strip of a list is taken out by. */
    private static String lastItem(String page, String list) {
        Matcher item = Pattern.compile("value=\"(" + Pattern.quote(numbered(list)) + "\\[\\d+])\"")
                .matcher(page);
        String last = "";
        while (item.find()) last = item.group(1);
        assertThat(last).as(list).isNotEmpty();
        return last;
    }

    private static String numbered(String list) {
        return list.replace("[R1]", "[0]").replace("[G1]", "[0]");
    }

    private MockHttpServletResponse edit(Room room, String path, String value) throws Exception {
        return send(post(at(room) + "/edit")
                .with(csrf())
                .param("version", version())
                .param("path", path)
                .param("unit", "WORDS")
                .param("value", value));
    }

    private String at(Room room) {
        return "/jobs/" + job.id() + "/" + room.key();
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
