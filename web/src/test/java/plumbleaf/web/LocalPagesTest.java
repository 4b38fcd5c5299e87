package plumbleaf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import plumbleaf.web.page.Room;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The rooms for one person on one machine: edits, conflicts, undo, and the doors that stay shut. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Tag("slow")
class LocalPagesTest {
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

    @ParameterizedTest
    @EnumSource(Room.class)
    void everyRoomOpens(Room room) throws Exception {
        MockHttpServletResponse page = send(get(at(room)));
        assertThat(page.getStatus()).isEqualTo(200);
        assertThat(page.getContentAsString())
                .contains(
                        "<h1>Kiln yard</h1>",
                        "aria-current=\"page\">" + room.word() + "</a>",
                        "from outside: hinge right, swings in");
        assertThat(page.getHeader("Content-Security-Policy"))
                .contains("script-src 'self'")
                .doesNotContain("unsafe-inline");
        assertThat(page.getContentAsString()).doesNotContain(" style=\"", "<script>", "onclick");
    }

    @Test
    void theDeskListsTheJob() throws Exception {
        assertThat(send(get("/")).getContentAsString()).contains("/jobs/" + job.id(), "Kiln yard");
    }

    @Test
    void anEditIsKeptAndAnswersWithThePage() throws Exception {
        MockHttpServletResponse answer = send(edit(1, "gates[0].opening", "INCHES", "4' 6"));
        assertThat(answer.getStatus()).isEqualTo(303);
        assertThat(answer.getHeader("Location")).isEqualTo(at(Room.GATES));
        assertThat(text()).isEqualTo(Trial.yard().replace("\"opening\": \"4'\"", "\"opening\": \"4' 6\""));
    }

    @Test
    void anEditThatIsSentAgainBecauseItsAnswerWasLostIsNoConflict() throws Exception {
        send(edit(1, "gates[0].opening", "INCHES", "4' 6"));
        assertThat(send(edit(1, "gates[0].opening", "INCHES", "4' 6")).getStatus())
                .isEqualTo(303);
        assertThat(store.open(job.id()).orElseThrow().version()).isEqualTo(2);
        assertThat(send(edit(1, "gates[0].opening", "INCHES", "4' 7")).getStatus())
                .isEqualTo(409);
    }

    @Test
    void twoStatesOfAJobAreDrawnOverEachOtherAndTheSameStateIsNot() throws Exception {
        send(edit(1, "gates[0].opening", "INCHES", "4' 6"));
        assertThat(send(get("/jobs/" + job.id() + "/since/1")).getContentAsString())
                .contains("dashed in blue", "data-key=\"Frame of G1\"", "data-key=\"Site plan\"");
        assertThat(send(get("/jobs/" + job.id() + "/since/2")).getContentAsString())
                .contains("since revision 2")
                .doesNotContain("dashed in blue");
    }

    @Test
    void aBareNumberTakesTheUnitShown() throws Exception {
        send(edit(1, "gates[0].opening", "INCHES", "50 1/2"));
        assertThat(text()).contains("\"opening\": \"50 1/2\\\"\"");
    }

    @Test
    void aRefusedValueStaysInItsFieldWithTheReasonBesideIt() throws Exception {
        MockHttpServletResponse answer = send(edit(1, "gates[0].opening", "INCHES", "four feet"));
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString())
                .contains("value=\"four feet\"", "aria-invalid=\"true\"", "this is not a length; write 50");
        assertThat(text()).isEqualTo(Trial.yard());
    }

    @Test
    void whatWasTypedIntoAFormAndRefusedStaysInIt() throws Exception {
        MockHttpServletResponse answer = send(post(at(Room.STOCK) + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "actuals")
                .param("date", "2027-05-03")
                .param("task", "stake-out")
                .param("quantity", "four")
                .param("hours", "1.5")
                .param("note", "in the rain, \"twice\""));
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString())
                .contains("value=\"four\"", "value=\"1.5\"", "value=\"in the rain, &#34;twice&#34;\"");
        assertThat(text()).isEqualTo(Trial.yard());
    }

    /** Rooms write into the text that is there, so what is only begun stays in it. */
    @Test
    void whateverIsWrittenIntoADraftItsBegunRunsAndGatesStay() throws Exception {
        String begun = Trial.yard()
                .replaceFirst("\\{", "{ \"draft\": true,")
                .replaceFirst("\"runs\": \\[", "\"runs\": [ { \"id\": \"R8\" },")
                .replaceFirst("\"gates\": \\[", "\"gates\": [ { \"id\": \"G8\", \"opening\": \"5'\" },");
        job = store.create("Kiln yard", begun, "you");
        assertThat(send(edit(1, "gates[1].opening", "INCHES", "50")).getStatus())
                .isEqualTo(303);
        MockHttpServletResponse hours = send(post(at(Room.STOCK) + "/write-down")
                .with(csrf())
                .param("version", "2")
                .param("list", "actuals")
                .param("date", "2027-05-03")
                .param("task", "stake-out")
                .param("quantity", "4")
                .param("hours", "1.5"));
        assertThat(hours.getStatus()).isEqualTo(303);
        assertThat(send(post(at(Room.MONEY) + "/keep-prices").with(csrf()).param("version", "3"))
                        .getStatus())
                .isEqualTo(303);
        assertThat(store.open(job.id()).orElseThrow().version()).isEqualTo(4);
        assertThat(text())
                .contains("\"draft\": true", "{ \"id\": \"R8\" }", "{ \"id\": \"G8\", \"opening\": \"5'\" }")
                .contains("\"opening\": \"50\\\"\"", "stake-out", "\"kept\"");
    }

    @Test
    void aChangeNoFieldShowsIsRefusedInWords() throws Exception {
        MockHttpServletResponse answer = send(edit(1, "runs[0]", "WORDS", ""));
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString()).contains("Not kept: ", "role=\"alert\"");
        assertThat(text()).isEqualTo(Trial.yard());
    }

    @Test
    void hoursAreWrittenDownAndHeldAgainstTheEstimate() throws Exception {
        MockHttpServletResponse answer = send(post(at(Room.STOCK) + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "actuals")
                .param("date", "2027-05-03")
                .param("task", "stake-out")
                .param("quantity", "4")
                .param("hours", "1.5")
                .param("note", ""));
        assertThat(answer.getStatus()).isEqualTo(303);
        assertThat(text())
                .contains("{ \"date\": \"2027-05-03\", \"task\": \"stake-out\", \"quantity\": 4, \"hours\": 1.5 }");
        assertThat(send(get(at(Room.MONEY))).getContentAsString()).contains("data-head=\"Taken\">1.5</td>");
    }

    @Test
    void aTableOfOwnPartsIsKeptWithTheJobAndItsBadRowsAreNamed() throws Exception {
        MockHttpServletResponse bad = send(post(at(Room.STRENGTH) + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "parts")
                .param("file", "ironmonger 2026")
                .param("rows", "id,name,pin_offset_in,source\nOWN-1,our hinge,wide,sheet 4"));
        assertThat(bad.getStatus()).isEqualTo(422);
        assertThat(bad.getContentAsString()).contains("pin_offset_in", "this is not a number", "OWN-1,our hinge,wide");
        MockHttpServletResponse good = send(post(at(Room.STRENGTH) + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "parts")
                .param("file", "ironmonger 2026")
                .param("rows", "id,name,pin_offset_in,source\nOWN-1,our hinge,0.375,sheet 4"));
        assertThat(good.getStatus()).isEqualTo(303);
        assertThat(text()).contains("\"OWN-1,our hinge,0.375,sheet 4\"");
        assertThat(send(get(at(Room.STRENGTH))).getContentAsString()).contains("ironmonger 2026", "OWN-1");
    }

    /** Else a hand draws at one hole and all the others go down. */
    @Test
    void aHoleWithADepthOfItsOwnIsDrawnDeeperAlone() throws Exception {
        String build = "\"G1\": { ";
        String run = "\"id\": \"R1\",";
        String told = Trial.yard()
                .replaceFirst(Pattern.quote(build), build + "\"latchDepth\": \"44\\\\\"\", ")
                .replaceFirst(
                        Pattern.quote(run),
                        run + " \"sides\": [{ \"from\": \"0'\", \"to\": \"8'\", \"depth\": \"40\\\\\"\" }],");
        job = store.create("Kiln yard", told, "you");
        String page = send(get(at(Room.STRENGTH))).getContentAsString();
        assertThat(page)
                .contains(
                        held("F1", "runs[0].sides[0].depth", "Holes of run R1, side 1, at P1", 40),
                        held("F4", "builds.G1.latchDepth", "Footing F4 of gate G1, at P4", 44),
                        held("F5", "builds.G1.depth", "Footings of gate G1, at P5", 36),
                        held("F8", "builds.R1.depth", "Holes of run R1, at P8", 30))
                .contains("name=\"path\" value=\"runs[0].sides[0].depth\"")
                .contains("name=\"path\" value=\"builds.G1.latchDepth\"");
    }

    private static String held(String footing, String path, String name, int inches) {
        return "data-of=\"" + footing + ".depth\" data-path=\"" + path + "\" data-name=\"" + name
                + "\" data-dx=\"0.0\" data-dy=\"-1.0\" data-now=\"" + inches + ".0\"";
    }

    @Test
    void aHingeIsFilledInFieldByFieldAndWhatIsMissingIsNamed() throws Exception {
        MockHttpServletResponse bad = send(post(at(Room.STRENGTH) + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "parts+hinge")
                .param("id", "OWN-2")
                .param("name", "our hinge, long")
                .param("source", "sheet 5"));
        assertThat(bad.getStatus()).isEqualTo(422);
        assertThat(bad.getContentAsString()).contains("pin_offset_in", "value=\"OWN-2\"");
        MockHttpServletResponse good = send(post(at(Room.STRENGTH) + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "parts+hinge")
                .param("id", "OWN-2")
                .param("name", "our hinge, long")
                .param("pin_offset_in", "1/2")
                .param("pin_swing_side_in", "38.1 mm")
                .param("source", "sheet 5"));
        assertThat(good.getStatus()).isEqualTo(303);
        assertThat(text())
                .contains(
                        "\"file\": \"OWN-2.csv\"",
                        "id,name,pin_offset_in,pin_swing_side_in,source",
                        "OWN-2,\\\"our hinge, long\\\",0.5,1.5,sheet 5");
        assertThat(send(get(at(Room.STRENGTH))).getContentAsString()).contains("OWN-2");
    }

    /** A rod has its sizes and a corner bracket its sheet, whichever leaf they are on. */
    @Test
    void theRightLeafOfAPairIsAskedWhatItsOwnBuildAsks() throws Exception {
        String pair = Trial.yard().replaceFirst("\"opening\"", "\"kind\": \"pair\", \"opening\"");
        String own =
                "\"rightLeaf\": { \"frame\": \"TUBE-2x2x0.083\", \"joint\": \"bracketed\", \"braces\": \"rod\" }, ";
        job = store.create("Kiln yard", pair, "you");
        String alike = send(get(at(Room.GATES))).getContentAsString();
        assertThat(alike)
                .contains("value=\"builds.G1.rightLeaf.braces\"", "hinge post: the left one")
                .doesNotContain("rightLeaf.flat", "rightLeaf.braces.diameter", "builds.G1.bracket");
        job = store.create("Kiln yard", pair.replaceFirst("\"G1\": \\{ ", "\"G1\": { " + own), "you");
        assertThat(send(get(at(Room.GATES))).getContentAsString())
                .contains(
                        "value=\"builds.G1.rightLeaf.flat\"",
                        "value=\"builds.G1.rightLeaf.braces.diameter\"",
                        "value=\"builds.G1.bracket.capacity\"");
    }

    /** Else the table's reader takes 12. of a metric screen for twelve inches. */
    @Test
    void aLengthOfAPartThatIsNoneOnTheScreenIsRefusedThere() throws Exception {
        job = store.create("Kiln yard", Trial.yard().replace("\"display\": \"us\"", "\"display\": \"metric\""), "you");
        MockHttpServletResponse answer = send(post(at(Room.STRENGTH) + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "parts+hinge")
                .param("id", "OWN-3")
                .param("name", "our hinge")
                .param("pin_offset_in", "12.")
                .param("adjusts_in", "a little")
                .param("source", "sheet 6"));
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString())
                .contains(
                        "value=\"12.\"",
                        "Pin from the post's face along the run: this is not a length",
                        "Adjusts: this is not a length");
        assertThat(text()).doesNotContain("OWN-3");
    }

    @Test
    void whatCannotBeWrittenDownStaysInItsFormWithTheReason() throws Exception {
        MockHttpServletResponse answer = send(post(at(Room.MONEY) + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "money.billing.paid")
                .param("date", "2027-05-03")
                .param("how", "check")
                .param("amount", "a lot"));
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString()).contains("value=\"a lot\"", "value=\"check\"", "amount: this is not");
        assertThat(text()).isEqualTo(Trial.yard());
    }

    @Test
    void anOptionIsDesignedAndPricedBesideTheJob() throws Exception {
        send(post(at(Room.MONEY) + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "money.options")
                .param("name", "a foot more fence post")
                .param("kind", "extra")
                .param("edits", "builds.R1.post=F1083-REG-2.5"));
        assertThat(text()).contains("\"id\": \"O1\"", "\"edits\": [\"builds.R1.post=F1083-REG-2.5\"]");
        assertThat(send(get(at(Room.MONEY))).getContentAsString())
                .contains("a foot more fence post", "Each designed and checked like the job itself");
    }

    @Test
    void whatChangedSinceARevisionIsPricedAndCanBeSigned() throws Exception {
        send(post(at(Room.GATES) + "/press").with(csrf()).param("version", "1").param("edit", "gates[G1].opening=5'"));
        assertThat(send(get("/jobs/" + job.id() + "/history")).getContentAsString())
                .contains("/jobs/" + job.id() + "/since/1");
        assertThat(send(get("/jobs/" + job.id() + "/since/1")).getContentAsString())
                .contains("Price with tax: +$", "<td>G1</td><td>changed</td>");
        MockHttpServletResponse paper = send(get("/jobs/" + job.id() + "/since/1/change-order.pdf"));
        assertThat(paper.getContentType()).isEqualTo("application/pdf");
        assertThat(send(get("/jobs/" + job.id() + "/since/99")).getStatus()).isEqualTo(404);
    }

    @Test
    void aJobUsesTheYardTakesItsStockCountsWhatComesAndGivesBack() throws Exception {
        String yard = "mark,item,kind,length,count,contents,of,state,job\nshelf,concrete,goods,,5,0.6,ft3,here,\n";
        assertThat(web.perform(multipart("/yard")
                                .file(new MockMultipartFile(
                                        "file", "yard.csv", "text/csv", yard.getBytes(StandardCharsets.UTF_8)))
                                .with(csrf()))
                        .andReturn()
                        .getResponse()
                        .getStatus())
                .isEqualTo(303);
        assertThat(send(get(at(Room.STOCK))).getContentAsString())
                .contains("Out of the yard", "data-head=\"Mark\">shelf</td>", "Take from the yard, leave the offcuts");
        assertThat(send(get(at(Room.STOCK))).getContentAsString())
                .contains("<g data-of=\"P1\">")
                .containsPattern("<tr data-of=\"([^\"]* )?P1[ \"]");
        send(post("/yard/add")
                .with(csrf())
                .param("mark", "A9")
                .param("item", "TUBE-2x2x0.083")
                .param("kind", "offcut")
                .param("length", "6' 2\"")
                .param("count", "2")
                .param("contents", "1")
                .param("of", "pieces"));
        send(post("/yard/count").with(csrf()).param("mark", "A9").param("count", "3"));
        assertThat(send(get("/yard.csv")).getContentAsString()).contains("A9,TUBE-2x2x0.083,offcut,\"6' 2\"\"\",3,");
        MockHttpServletResponse twice = send(post("/yard/add")
                .with(csrf())
                .param("mark", "A9")
                .param("item", "x")
                .param("kind", "bar")
                .param("length", "6'")
                .param("count", "1"));
        assertThat(twice.getStatus()).isEqualTo(422);
        assertThat(twice.getContentAsString()).contains("two things in the yard have this mark");
        send(post("/yard/count").with(csrf()).param("mark", "A9").param("count", "0"));
        send(post(at(Room.STOCK) + "/take-from-yard").with(csrf()));
        assertThat(send(get(at(Room.STOCK))).getContentAsString()).contains("Yard: taken", "Give back to the yard");
        assertThat(send(get("/yard")).getContentAsString()).contains("Out with jobs", "taken for Kiln yard");
        assertThat(send(get(at(Room.STOCK) + "/order.csv")).getContentAsString())
                .startsWith("supplier,item,name,quantity,unit,weight_lb,swap,needed_for,needed_by\n")
                .doesNotContain("$");
        send(post(at(Room.STOCK) + "/give-back").with(csrf()));
        assertThat(send(get("/yard.csv")).getContentAsString())
                .contains("shelf,concrete,goods,,5,")
                .doesNotContain(",out,");
        String page = send(get(at(Room.STOCK) + "/receiving")).getContentAsString();
        assertThat(page).contains("<h1>Receiving for Kiln yard</h1>");
        Matcher first = Pattern.compile("name=\"tick\" value=\"([^\"]*)\"").matcher(page);
        assertThat(first.find()).isTrue();
        String line = first.group(1).replace("&amp;", "&");
        String price = price();
        MockHttpServletResponse counted = send(post(at(Room.STOCK) + "/receiving")
                .with(csrf())
                .param("tick", line)
                .param("came." + line, "1"));
        assertThat(counted.getStatus()).isEqualTo(303);
        assertThat(send(get(at(Room.STOCK) + "/receiving")).getContentAsString())
                .contains("1 came, ", " short", "Undo: ");
        assertThat(send(get("/yard.csv")).getContentAsString()).contains("\nY1,", ",kept,Kiln yard,");
        assertThat(send(get("/yard")).getContentAsString()).contains("Kept for jobs", "came for Kiln yard: 1 ");
        assertThat(send(get(at(Room.STOCK))).getContentAsString()).contains("Came for this job", ">Y1</td>");
        assertThat(price()).isEqualTo(price);
        MockHttpServletResponse wrong = send(post(at(Room.STOCK) + "/receiving")
                .with(csrf())
                .param("tick", line)
                .param("came." + line, "many"));
        assertThat(wrong.getStatus()).isEqualTo(422);
        assertThat(wrong.getContentAsString()).contains("is no count; write a whole number", "value=\"many\"");
        assertThat(send(post(at(Room.STOCK) + "/receiving").with(csrf())).getContentAsString())
                .contains("Nothing is ticked");
        send(post(at(Room.STOCK) + "/take-from-yard").with(csrf()));
        assertThat(send(post(at(Room.STOCK) + "/receiving/undo").with(csrf()).param("line", line))
                        .getContentAsString())
                .contains("some of it has been taken or set free since");
        send(post(at(Room.STOCK) + "/give-back").with(csrf()));
        send(post(at(Room.STOCK) + "/receiving/undo").with(csrf()).param("line", line));
        assertThat(send(get("/yard.csv")).getContentAsString()).doesNotContain(",kept,");
        assertThat(send(get(at(Room.STOCK) + "/receiving")).getContentAsString())
                .doesNotContain("<h2>Short</h2>", "Undo: ");
        send(post(at(Room.STOCK) + "/receiving")
                .with(csrf())
                .param("tick", line)
                .param("came." + line, "3"));
        MockHttpServletResponse tooMany = send(free("4"));
        assertThat(tooMany.getStatus()).isEqualTo(422);
        assertThat(tooMany.getContentAsString()).contains("Kiln yard has 3; write a whole number up to that");
        send(free("2"));
        assertThat(send(get("/yard.csv")).getContentAsString()).contains("\nY2,", ",here,Kiln yard,");
        web.perform(multipart("/yard")
                .file(new MockMultipartFile(
                        "file",
                        "yard.csv",
                        "text/csv",
                        "mark,item,kind,length,count,contents,of,state,job\n".getBytes(StandardCharsets.UTF_8)))
                .with(csrf()));
    }

    private MockHttpServletRequestBuilder free(String count) {
        return post("/yard/back")
                .with(csrf())
                .param("mark", "Y1")
                .param("job", "Kiln yard")
                .param("number", job.id().text())
                .param("count", count);
    }

    private String price() throws Exception {
        Matcher total = Pattern.compile("Total[^$]*\\$[0-9,.]+")
                .matcher(send(get(at(Room.MONEY))).getContentAsString());
        assertThat(total.find()).isTrue();
        return total.group();
    }

    @Test
    void theDaysOfAllJobsAreLaidSideBySide() throws Exception {
        send(post("/calendar/house")
                .with(csrf())
                .param("crews", "2")
                .param("cold", "7")
                .param("rain", "12.5"));
        assertThat(send(get("/calendar/days.csv")).getContentAsString()).contains("house,rain pct,12.5,");
        MockHttpServletResponse refused = send(post("/calendar/house")
                .with(csrf())
                .param("crews", "2")
                .param("cold", "7")
                .param("rain", "101"));
        assertThat(refused.getStatus()).isEqualTo(422);
        assertThat(refused.getContentAsString()).contains("from 0 to 100, such as 12.5");
        assertThat(send(get("/calendar?from=2027-05-03")).getContentAsString())
                .contains("Kiln yard, dig and set posts", "crew 2", "<svg");
        assertThat(send(get("/calendar.ics?from=2027-05-03")).getContentAsString())
                .startsWith("BEGIN:VCALENDAR");
        assertThat(send(get("/calendar?from=tomorrow")).getStatus()).isEqualTo(200);
        assertThat(send(get("/rates")).getStatus()).isEqualTo(200);
    }

    @Test
    void daysOffAndMachinesAreSaidByFormAndTakenOut() throws Exception {
        assertThat(send(post("/calendar/off")
                                .with(csrf())
                                .param("of", "crew 1")
                                .param("from", "2027-05-04")
                                .param("through", "2027-05-05")
                                .param("why", "vacation"))
                        .getStatus())
                .isEqualTo(303);
        String words = "crew 1, 2027-05-04 through 2027-05-05, vacation";
        assertThat(send(get("/calendar")).getContentAsString()).contains(words);
        assertThat(send(get("/calendar/days.csv")).getContentAsString())
                .contains("off,crew 1,,,2027-05-04,2027-05-05,vacation");
        send(post("/calendar/off/out").with(csrf()).param("which", "0").param("is", words));
        assertThat(send(get("/calendar")).getContentAsString()).doesNotContain(words);
        MockHttpServletResponse refused = send(post("/calendar/off")
                .with(csrf())
                .param("of", "crew 40")
                .param("from", "2027-05-04")
                .param("through", "2027-05-03"));
        assertThat(refused.getStatus()).isEqualTo(422);
        assertThat(refused.getContentAsString()).contains("goes by crew 40", "before the first");
        send(post("/calendar/machine")
                .with(csrf())
                .param("name", "mini digger")
                .param("count", "1")
                .param("for", "set", "tear-out"));
        assertThat(send(get("/calendar")).getContentAsString()).contains("mini digger");
        send(post("/calendar/machine/out").with(csrf()).param("name", "mini digger"));
        assertThat(send(get("/calendar/days.csv")).getContentAsString()).doesNotContain("mini digger");
        MockHttpServletResponse bad = web.perform(multipart("/calendar/days")
                        .file(new MockMultipartFile(
                                "file",
                                "days.csv",
                                "text/csv",
                                "kind,name,count,for,from,through,why\noff,crew 9,,,soon,,\n"
                                        .getBytes(StandardCharsets.UTF_8)))
                        .with(csrf()))
                .andReturn()
                .getResponse();
        assertThat(bad.getStatus()).isEqualTo(422);
        assertThat(bad.getContentAsString()).contains("days.csv:2: from");
    }

    @Test
    void optionsTickedTogetherAreWorkedOutAsOne() throws Exception {
        StoredJob settled = store.create(
                "Nursery", Files.readString(Path.of("..", "examples", "nursery-lane-settled.json")), "you");
        String money = "/jobs/" + settled.id() + "/money";
        send(post(money + "/write-down")
                .with(csrf())
                .param("version", "1")
                .param("list", "money.options")
                .param("name", "no contingency")
                .param("kind", "extra")
                .param("edits", "money.contingency=0%"));
        send(post(money + "/write-down")
                .with(csrf())
                .param("version", "2")
                .param("list", "money.options")
                .param("name", "thin contingency")
                .param("kind", "extra")
                .param("edits", "money.contingency=1%"));
        assertThat(send(get(money)).getContentAsString()).contains("/together");
        String one = send(get("/jobs/" + settled.id() + "/together?tick=O1")).getContentAsString();
        assertThat(one).contains("The job as described", "Total with tax");
        assertThat(send(get("/jobs/" + settled.id() + "/together?tick=O1&tick=O2"))
                        .getContentAsString())
                .contains("both change money.contingency");
    }

    @Test
    void aJobKeepsThePricesItWasQuotedAtWhenItsBookGoesUp() throws Exception {
        assertThat(web.perform(multipart("/books").with(csrf()).param("book", "spring-2027"))
                        .andReturn()
                        .getResponse()
                        .getStatus())
                .isEqualTo(303);
        send(edit(1, "money.priceBook", "WORDS", "spring-2027"));
        String before = total();
        send(post(at(Room.MONEY) + "/keep-prices").with(csrf()).param("version", "2"));
        assertThat(text()).contains("\"kept\": [ { \"of\": \"crew\"");
        send(post("/books/spring-2027/raise").with(csrf()).param("by", "10").param("why", "letter of March"));
        assertThat(total()).isEqualTo(before);
        assertThat(send(get(at(Room.MONEY))).getContentAsString()).contains("As the book stands today");
        assertThat(send(get("/books/spring-2027/history.csv")).getContentAsString())
                .contains("letter of March");
        send(post(at(Room.MONEY) + "/take-new-prices").with(csrf()).param("version", "3"));
        assertThat(total()).isNotEqualTo(before);
    }

    @Test
    void aBadTableOfPricesIsRefusedWholeWithEveryRowNamed() throws Exception {
        MockHttpServletResponse answer = web.perform(multipart("/books")
                        .file(new MockMultipartFile(
                                "file",
                                "my-house.csv",
                                "text/csv",
                                "people,hourly,hours_per_day,cure_days,minimum,round_to,source\nnone,68,8,3,950,1,us\n"
                                        .getBytes(StandardCharsets.UTF_8)))
                        .with(csrf())
                        .param("book", "bad"))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).isEqualTo(422);
        assertThat(answer.getContentAsString()).contains("house.csv:2: people");
        assertThat(send(get("/books")).getContentAsString()).doesNotContain("<h2>bad</h2>");
    }

    private String total() throws Exception {
        String page = send(get(at(Room.MONEY))).getContentAsString();
        int at = page.indexOf("data-number=\"money.total\">");
        return page.substring(at, page.indexOf("</dd>", at));
    }

    @Test
    void aRemedyNamesThingsByTheirIds() throws Exception {
        send(post(at(Room.GATES) + "/press").with(csrf()).param("version", "1").param("edit", "gates[G1].hinge=left"));
        assertThat(text()).isEqualTo(Trial.yard().replace("\"hinge\": \"right\"", "\"hinge\": \"left\""));
    }

    @Test
    void whatNobodySaidIsShownAsAssumed() throws Exception {
        String page = send(get(at(Room.GATES))).getContentAsString();
        assertThat(page).contains("class=\"field assumed\"", "assumed: ");
    }

    @Test
    void aScriptGetsTheInsideAlone() throws Exception {
        String inside = send(edit(1, "gates[0].opening", "INCHES", "4' 6").header("X-Live", "1"))
                .getContentAsString();
        assertThat(inside).contains("data-version=\"2\"").doesNotContain("<html");
    }

    @Test
    void whoEditsAnOldVersionSeesBoth() throws Exception {
        send(edit(1, "gates[0].opening", "INCHES", "4' 6"));
        MockHttpServletResponse second = send(edit(1, "gates[0].opening", "INCHES", "5'"));
        assertThat(second.getStatus()).isEqualTo(409);
        assertThat(second.getContentAsString())
                .contains("Someone changed this job first", "<dd>4' 6</dd>", "<dd>5'</dd>", "Put mine in");
        assertThat(text()).contains("\"opening\": \"4' 6\"");
    }

    @Test
    void sixMeasurementsMakeAJob() throws Exception {
        MockHttpServletResponse made = send(post("/new")
                .with(csrf())
                .param("title", "Side gate")
                .param("hand", "left-in")
                .param("gates[0].opening", "42")
                .param("gates[0].leaf.infill", "6'")
                .param("gates[0].leaf.bottomGap", "2 1/2")
                .param("ground.shots[1].elevation", "-3")
                .param("ground.shots[2].elevation", "-1 1/2")
                .param("ground.shots[3].elevation", "+1/2"));
        assertThat(made.getStatus()).isEqualTo(303);
        String id = Objects.requireNonNull(made.getHeader("Location")).split("/", -1)[2];
        String file = store.open(new JobId(id)).orElseThrow().document();
        assertThat(file)
                .contains("\"hinge\": \"left\"", "\"swing\": \"in\"", "\"opening\": \"42\\\"\"")
                .contains("\"station\": \"2'\", \"in\": \"3' 6\\\"\", \"elevation\": \"+1/2\\\"\"");
    }

    @Test
    void theWalkKeepsWhatWasTypedAndSaysWhatIsWrong() throws Exception {
        int before = store.list().size();
        MockHttpServletResponse refused = send(post("/new")
                .with(csrf())
                .param("hand", "right-out")
                .param("gates[0].opening", "wide")
                .param("ground.shots[1].elevation", "-3"));
        assertThat(refused.getStatus()).isEqualTo(422);
        assertThat(refused.getContentAsString())
                .contains("value=\"wide\"", "this is not a length", "value=\"-3\"", "value=\"right-out\" checked");
        assertThat(store.list()).hasSize(before);
    }

    @Test
    void aJobFileComesInWholeAndGoesOutTheSame() throws Exception {
        byte[] yard = Trial.yard().getBytes(StandardCharsets.UTF_8);
        MockHttpServletResponse taken = web.perform(multipart("/jobs")
                        .file(new MockMultipartFile("file", "yard.json", "application/json", yard))
                        .with(csrf()))
                .andReturn()
                .getResponse();
        assertThat(taken.getStatus()).isEqualTo(303);
        assertThat(send(get(taken.getHeader("Location") + "/file")).getContentAsByteArray())
                .isEqualTo(yard);
    }

    @Test
    void aBrokenJobFileIsRefusedWithItsLines() throws Exception {
        byte[] broken = Trial.yard()
                .replace("\"opening\": \"4'\"", "\"opening\": \"50\"")
                .getBytes(StandardCharsets.UTF_8);
        int before = store.list().size();
        MockHttpServletResponse refused = web.perform(multipart("/jobs")
                        .file(new MockMultipartFile("file", "yard.json", "application/json", broken))
                        .with(csrf()))
                .andReturn()
                .getResponse();
        assertThat(refused.getStatus()).isEqualTo(422);
        assertThat(refused.getContentAsString())
                .contains("yard.json:16: gates[0].opening \"50\": a length needs its unit");
        assertThat(store.list()).hasSize(before);
    }

    @Test
    void aShotIsAddedWhereTheGroundIsLeastKnownAndMovesNothing() throws Exception {
        MockHttpServletResponse answer =
                send(post(at(Room.GROUND) + "/add-shot").with(csrf()).param("version", "1"));
        assertThat(answer.getStatus()).isEqualTo(303);
        assertThat(text())
                .contains("{ \"id\": \"S8\", \"run\": \"R1\", \"station\": \"34'\", \"elevation\": \"-1' 8\\\"\" }");
    }

    @Test
    void theHistorySaysWhoDidWhat() throws Exception {
        send(edit(1, "gates[0].opening", "INCHES", "4' 6"));
        send(post(at(Room.GATES) + "/undo").with(csrf()).param("version", "2"));
        assertThat(send(get("/jobs/" + job.id() + "/history")).getContentAsString())
                .contains("gates[0].opening: 4' \u2192 4' 6", "undo", "started the job");
    }

    @Test
    void undoAndRedoAreOnePressEach() throws Exception {
        send(edit(1, "gates[0].opening", "INCHES", "4' 6"));
        send(post(at(Room.GATES) + "/undo").with(csrf()).param("version", "2"));
        assertThat(text()).isEqualTo(Trial.yard());
        send(post(at(Room.GATES) + "/redo").with(csrf()).param("version", "3"));
        assertThat(text()).contains("\"opening\": \"4' 6\"");
    }

    @Test
    void aFormWithoutItsTokenIsRefused() throws Exception {
        MockHttpServletResponse answer = send(post(at(Room.GATES) + "/edit")
                .param("version", "1")
                .param("path", "title")
                .param("value", "Mine"));
        assertThat(answer.getStatus()).isEqualTo(403);
        assertThat(text()).isEqualTo(Trial.yard());
    }

    @Test
    void whatPeopleWriteIsNeverMarkup() throws Exception {
        send(edit(1, "title", "WORDS", "<script>alert(1)</script>"));
        String page = send(get(at(Room.GATES))).getContentAsString();
        assertThat(page).contains("&lt;script&gt;alert(1)&lt;/script&gt;").doesNotContain("<script>alert");
    }

    @Test
    void anotherMachineIsNotLetIn() throws Exception {
        MockHttpServletResponse far = send(get("/").with(request -> {
            request.setRemoteAddr("192.0.2.7");
            return request;
        }));
        assertThat(far.getStatus()).isEqualTo(403);
        MockHttpServletResponse rebound = send(get("http://elsewhere.example/"));
        assertThat(rebound.getStatus()).isEqualTo(403);
        assertThat(rebound.getContentAsString()).startsWith("This workspace runs for one person on one machine.");
    }

    @Test
    void whatIsNotThereIsSaidSo() throws Exception {
        assertThat(send(get("/jobs/nosuchjob/gates")).getStatus()).isEqualTo(404);
        assertThat(send(get("/jobs/../../etc/gates")).getStatus()).isIn(400, 404);
        assertThat(send(get("/jobs/" + job.id() + "/cellar")).getStatus()).isEqualTo(404);
    }

    private String at(Room room) {
        return "/jobs/" + job.id() + "/" + room.key();
    }

    private String text() {
        return store.open(job.id()).orElseThrow().document();
    }

    private MockHttpServletRequestBuilder edit(long version, String path, String unit, String value) {
        return post(at(Room.GATES) + "/edit")
                .with(csrf())
                .param("version", Long.toString(version))
                .param("path", path)
                .param("unit", unit)
                .param("value", value);
    }

    private MockHttpServletResponse send(MockHttpServletRequestBuilder request) throws Exception {
        return web.perform(request).andReturn().getResponse();
    }
}
