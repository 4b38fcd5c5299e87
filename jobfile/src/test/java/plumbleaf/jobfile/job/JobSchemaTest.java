package plumbleaf.jobfile.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.schema.SchemaFile;

/** Holds the published schema of the job file and the reader to the same keys and words. */
class JobSchemaTest {
    private static final SchemaFile SCHEMA = SchemaFile.read("job.schema.json");

    @Test
    void theSchemaKnowsEveryKeyOfTheReaderAndNoOther() {
        Map<String, Set<String>> reader = oneSupport(JobFile.keysAskedFor(FullJob.TEXT, Examples.CATALOGUE));
        Map<String, Set<String>> schema = oneSupport(SCHEMA.keys());
        assertThat(schema.keySet()).containsExactlyElementsOf(reader.keySet());
        reader.forEach((object, keys) ->
                assertThat(schema.get(object)).as("keys of " + object).containsExactlyInAnyOrderElementsOf(keys));
    }

    /** Every post's support has the same keys, and so have what fills and what braces a leaf, but the full job shows each kind at one place only. */
    private static Map<String, Set<String>> oneSupport(Map<String, Set<String>> keys) {
        Map<String, Set<String>> merged = new TreeMap<>();
        keys.forEach((object, names) -> {
            int at = object.indexOf("support");
            String alike = object.replace("builds.*.rightLeaf.braces", "builds.*.braces")
                    .replace("builds.*.rightLeaf.fill", "gates[].leaf.fill");
            merged.computeIfAbsent(at < 0 ? alike : object.substring(at), unused -> new TreeSet<>())
                    .addAll(names);
        });
        return merged;
    }

    @Test
    void theExamplesAreAsTheSchemaSays() {
        assertThat(SCHEMA.errors(Examples.NURSERY)).isEmpty();
        assertThat(SCHEMA.errors(Examples.KILN)).isEmpty();
        assertThat(SCHEMA.errors(Examples.SPIT)).isEmpty();
        assertThat(SCHEMA.errors(FullJob.TEXT)).isEmpty();
    }

    @Test
    void whatIsWrittenIsAsTheSchemaSays() {
        for (String text : new String[] {Examples.NURSERY, Examples.KILN, Examples.SPIT, FullJob.TEXT}) {
            Job job = JobFile.read("job", text, Examples.CATALOGUE).job().orElseThrow();
            assertThat(SCHEMA.errors(JobFile.write(job))).isEmpty();
        }
    }

    @Test
    void theSchemaRefusesWhatTheReaderRefuses() {
        assertThat(SCHEMA.errors(Examples.NURSERY.replace("\"hinge\": \"left\"", "\"hinge\": \"lef\"")))
                .containsExactly("gates[0].hinge: not one of the values");
        assertThat(SCHEMA.errors(Examples.NURSERY.replace("\"opening\": \"4'\", ", "")))
                .containsExactly("gates[0]: opening is missing");
        assertThat(SCHEMA.errors(Examples.NURSERY.replace("\"opens\":", "\"open\":")))
                .containsExactly("gates[0].open: unknown key");
        assertThat(SCHEMA.errors(Examples.NURSERY.replace(
                        "\"holdOpen\": \"cane-bolt\"", "\"holdOpen\": { \"kind\": \"brick\" }")))
                .containsExactly("gates[0].holdOpen: none of the kinds");
    }
}
