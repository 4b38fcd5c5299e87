package plumbleaf.web.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import plumbleaf.web.Trial;
import plumbleaf.web.Workspace;
import plumbleaf.web.link.CustomerLinks;
import plumbleaf.web.people.Secret;
import plumbleaf.web.store.JobLine;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The desk: jobs by where they stand, found by their words, a page at a time. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Tag("slow")
class DeskTest {
    @Autowired
    private MockMvc web;

    @Autowired
    private JobStore store;

    @Autowired
    private CustomerLinks links;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "local");
    }

    @BeforeEach
    void clear() {
        for (JobLine line : store.list()) store.throwAway(line.id(), "you");
    }

    @Test
    void aJobIsFoundByEveryWordOfItsNameCustomerAndStreetAndNotByOthers() throws Exception {
        store.create("Kiln yard", Trial.yard(), "you");
        store.create("Ropewalk_100%", Trial.yard().replace("Kiln yard", "Ropewalk_100%"), "you");
        assertThat(page("/?find=KILN")).contains(">Kiln yard</a>").doesNotContain("Ropewalk");
        assertThat(page("/?find=walk_100%25")).contains("Ropewalk").doesNotContain(">Kiln yard</a>");
        assertThat(page("/?find=kiln+walk")).contains("No job here answers to that.");
        assertThat(page("/?find=%25")).doesNotContain(">Kiln yard</a>");
    }

    @Test
    void moneyThatCameInMovesAJobOn() throws Exception {
        String yard = Trial.yard();
        StoredJob job = store.create("Kiln yard", yard, "you");
        Standing before = standing();
        assertThat(before).isIn(Standing.SETTLE, Standing.OFFER);
        store.edit(
                job.id(),
                1,
                "Kiln yard",
                withMoney(
                        yard,
                        "\"billing\": { \"paid\": [{ \"date\": \"2027-05-03\", \"how\": \"check\", \"amount\": \"$500.00\" }] }"),
                "a deposit",
                "you");
        assertThat(standing()).isEqualTo(Standing.SOLD);
    }

    @Test
    void aLinkOutMeansItLiesWithTheCustomerAndAnAcceptanceSellsIt() throws Exception {
        StoredJob job = store.create("Kiln yard", Trial.yard(), "you");
        Secret secret = links.make(job, List.of("proposal.pdf"), 14, "you");
        assertThat(standing()).isEqualTo(Standing.OFFERED);
        links.revoke(job.id(), links.of(job.id()).get(0).id(), "you");
        assertThat(standing()).isIn(Standing.SETTLE, Standing.OFFER);
        Secret another = links.make(job, List.of("proposal.pdf"), 14, "you");
        assertThat(another.hash()).isNotEqualTo(secret.hash());
        links.accept(another, "Mirela Auerdal", LocalDate.of(2027, 5, 3), "");
        assertThat(standing()).isEqualTo(Standing.SOLD);
        assertThat(page("/?at=sold")).contains(">Kiln yard</a>");
        assertThat(page("/?at=offered")).doesNotContain(">Kiln yard</a>");
    }

    @Test
    void moreJobsThanAPageAreTurnedOver() throws Exception {
        for (int i = 0; i < DeskSheets.A_PAGE + 3; i++) store.create("Kiln yard", Trial.yard(), "you");
        String first = settledPage("/");
        assertThat(rows(first)).isEqualTo(DeskSheets.A_PAGE);
        assertThat(first).contains("Earlier changes").doesNotContain("Later changes");
        String second = page("/?from=" + DeskSheets.A_PAGE);
        assertThat(rows(second)).isEqualTo(3);
        assertThat(second).contains("Later changes").doesNotContain("Earlier changes");
    }

    private static int rows(String page) {
        return page.split("class=\"who-where\"", -1).length - 1;
    }

    /** The page when nothing is left for the background. */
    private String settledPage(String address) throws Exception {
        for (int tries = 0; tries < 600; tries++) {
            String page = page(address);
            if (!page.contains("still being worked out")) return page;
            Thread.sleep(50);
        }
        throw new AssertionError("the desk never caught up");
    }

    private Standing standing() throws Exception {
        String page = page("/");
        for (Standing standing : Standing.values())
            if (page.contains("<td class=\"stands\">" + standing.words())) return standing;
        throw new AssertionError("no job on the desk");
    }

    private static String withMoney(String yard, String more) {
        int at = Objects.requireNonNull(yard).indexOf("\"money\": {");
        assertThat(at).isPositive();
        int in = at + "\"money\": {".length();
        return yard.substring(0, in) + " " + more + "," + yard.substring(in);
    }

    private String page(String address) throws Exception {
        return web.perform(get(java.net.URI.create(address)))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
