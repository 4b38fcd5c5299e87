package plumbleaf.web.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.Trial;
import plumbleaf.web.Workspace;
import plumbleaf.web.page.Breadth;
import plumbleaf.web.page.Entry;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Room;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** Every field and every form's blank that holds a length, found on the pages themselves, reads it as people write it, in either display. */
@SpringBootTest(classes = Workspace.class)
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Tag("slow")
class EveryLengthTest {
    private static final List<String> AS_WRITTEN = List.of("4' 2 1/2", "50.5in", "1270mm", "4' 2-1/2\"", "1270 mm");
    private static final String NONE = "four feet";
    private static final String NEEDED = "gates[0].opening";
    private static final String NOT_READ = "not a length";
    private static final Pattern INPUT = Pattern.compile("<input id=\"[^\"]*\" name=\"([^\"]*)\"");

    @Autowired
    private JobStore store;

    @Autowired
    private Rooms rooms;

    @Autowired
    private MockMvc web;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "local");
    }

    @ParameterizedTest
    @ValueSource(strings = {"nursery-lane", "elder-row", "gannet-spit", "pool-court", "heron-walk", "tanner-steps"})
    void everyFieldOfEveryRoomAndOfTheWalk(String example) throws IOException {
        for (String display : List.of("us", "metric")) {
            StoredJob job = job(example, display);
            List<Field> lengths = lengths(job);
            assertThat(lengths).hasSizeGreaterThan(20);
            List<String> unread = new ArrayList<>();
            for (Field field : lengths) {
                if (reads(job, field, NONE)) unread.add(field.path() + " takes " + NONE);
                for (String length : AS_WRITTEN)
                    if (!reads(job, field, length)) unread.add(field.path() + " does not read " + length);
            }
            assertThat(unread).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"us", "metric"})
    void everyBlankOfEveryForm(String display) throws IOException {
        Set<String> lists = new LinkedHashSet<>();
        StoredJob job = job("gannet-spit", display);
        for (Panel panel : panels(job)) for (Entry entry : panel.entries()) lists.add(entry.list());
        List<String> unread = new ArrayList<>();
        int blanks = 0;
        for (String list : lists) {
            Ledger ledger = Ledger.of(list).orElse(null);
            if (ledger == null) continue;
            for (Blank blank : ledger.blanks()) {
                if (!blank.kind().unit().isLength()) continue;
                blanks++;
                for (String length : AS_WRITTEN)
                    if (says(job, ledger, list, blank, length)) unread.add(list + " " + blank.key() + " " + length);
            }
        }
        assertThat(blanks).isGreaterThan(20);
        assertThat(unread).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/new", "/new/fence"})
    void theFormsOfANewJob(String form) throws Exception {
        int lengths = 0;
        Matcher input =
                INPUT.matcher(web.perform(get(form)).andReturn().getResponse().getContentAsString());
        while (input.find()) {
            if (!made(form, input.group(1), NONE).getContentAsString().contains(NOT_READ)) continue;
            lengths++;
            for (String length : AS_WRITTEN)
                assertThat(made(form, input.group(1), length).getContentAsString())
                        .as(input.group(1) + " " + length)
                        .doesNotContain(NOT_READ, "is missing");
        }
        assertThat(lengths).isEqualTo(form.equals("/new") ? 6 : 2);
    }

    @Test
    void aLeftoverOfTheYard() throws Exception {
        int mark = 0;
        for (String length : AS_WRITTEN) {
            MockHttpServletResponse answer = web.perform(post("/yard/add")
                            .param("mark", "L" + ++mark)
                            .param("item", "TUBE-2x2x0.083")
                            .param("kind", "offcut")
                            .param("length", length)
                            .param("count", "1")
                            .param("contents", "1")
                            .with(csrf()))
                    .andReturn()
                    .getResponse();
            assertThat(answer.getContentAsString()).as(length).doesNotContain(NOT_READ);
            assertThat(answer.getStatus()).as(length).isEqualTo(303);
        }
    }

    private MockHttpServletResponse made(String form, String name, String value) throws Exception {
        MockHttpServletRequestBuilder typed = post(form).param(name, value).with(csrf());
        if (!name.equals(NEEDED)) typed = typed.param(NEEDED, "4'");
        return web.perform(typed).andReturn().getResponse();
    }

    private StoredJob job(String example, String display) throws IOException {
        String text = Files.readString(Path.of("..", "examples", example + ".json"))
                .replaceAll("\"display\": ?\"[a-z]+\"", "\"display\": \"" + display + "\"");
        return store.create(example, text, "you");
    }

    private List<Panel> panels(StoredJob job) {
        List<Panel> panels = new ArrayList<>();
        for (Room room : Room.values())
            panels.addAll(rooms.view(room, job, Typed.NOTHING, Sight.EVERYTHING, Breadth.WIDE)
                    .panels());
        int steps = rooms.walk(job, 1, Typed.NOTHING).names().size();
        for (int step = 1; step < steps; step++)
            panels.addAll(rooms.walk(job, step, Typed.NOTHING).view().panels());
        return panels;
    }

    /** By their unit, or by a length that stands in them. */
    private List<Field> lengths(StoredJob job) {
        Map<String, Field> fields = new LinkedHashMap<>();
        for (Panel panel : panels(job))
            Stream.concat(panel.fields().stream(), panel.strips().stream().flatMap(strip -> strip.fields().stream()))
                    .filter(field -> field.choices().isEmpty())
                    .filter(field -> field.unit().isLength() || isLength(field.value()))
                    .forEach(field -> fields.putIfAbsent(field.path(), field));
        return List.copyOf(fields.values());
    }

    private static boolean isLength(String value) {
        return value.matches(".*(\"|'|mm)$") && LengthText.offset(value).value().isPresent();
    }

    /** Whatever else may be wrong with it. */
    private boolean reads(StoredJob job, Field field, String typed) {
        return rooms.apply(job, new Edit(field.path(), field.unit(), typed))
                .match(fine -> true, refused -> !refused.problem().contains(NOT_READ));
    }

    private boolean says(StoredJob job, Ledger ledger, String list, Blank blank, String typed) {
        DocumentText text;
        try {
            text = ledger.added(DocumentText.of(job.document()), list, Map.of(blank.key(), typed));
        } catch (IllegalArgumentException noPlace) {
            return false;
        }
        return rooms.errors("the job", text.text().getBytes(StandardCharsets.UTF_8)).stream()
                .map(InputError::problem)
                .anyMatch(problem -> problem.contains(NOT_READ));
    }
}
