package plumbleaf.jobfile.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.jobfile.input.InputError;

/** A style file kept with the job: its styles are known to the runs, what is wrong in it is named, and what is written reads back. */
class StylesInAJobTest {
    private static String job(String style, String lap) {
        String rows =
                "\"{ \\\"format\\\": \\\"plumbleaf-styles\\\", \\\"version\\\": 1, \\\"source\\\": \\\"our yard\\\","
                        + " \\\"styles\\\": [\",\"{ \\\"id\\\": \\\"ours\\\", \\\"name\\\": \\\"Ours\\\", \\\"words\\\":"
                        + " \\\"boards in two layers\\\",\",\"\\\"infill\\\": { \\\"kind\\\": \\\"upright\\\","
                        + " \\\"board\\\": { \\\"width\\\": \\\"7-1/4\\\\\\\"\\\", \\\"thickness\\\": \\\"3/4\\\\\\\"\\\","
                        + " \\\"species\\\": \\\"redwood\\\" },\",\"\\\"gap\\\": \\\"" + lap
                        + "\\\", \\\"leastGap\\\": \\\"-1-3/4\\\\\\\"\\\", \\\"greatestGap\\\": \\\"-1\\\\\\\"\\\","
                        + " \\\"leastRip\\\": \\\"4\\\\\\\"\\\", \\\"top\\\": \\\"flat\\\", \\\"fasteners\\\": 2"
                        + " },\",\"\\\"rails\\\": { \\\"kind\\\": \\\"wood\\\", \\\"width\\\": \\\"3-1/2\\\\\\\"\\\","
                        + " \\\"thickness\\\": \\\"1-1/2\\\\\\\"\\\", \\\"species\\\": \\\"redwood\\\","
                        + " \\\"counts\\\": [ { \\\"upTo\\\": \\\"8'\\\", \\\"count\\\": 3 } ], \\\"edge\\\":"
                        + " \\\"7\\\\\\\"\\\" },\",\"\\\"posts\\\": { \\\"line\\\": [ { \\\"upTo\\\": \\\"8'\\\","
                        + " \\\"size\\\": \\\"PINE-6x6\\\" } ] }, \\\"source\\\": \\\"our foreman\\\" } ] }\"";
        return "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"parts\": [ { \"file\": \"styles.json\", \"rows\": ["
                + rows + "] } ], \"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"length\": \"40'\" } ], \"style\": \""
                + style + "\" } ] }";
    }

    @Test
    void aRunMayBeOfAStyleThatTheJobBrings() {
        JobReading read = JobFile.read("job.json", job("ours", "-1-1/4\\\\\\\""), Examples.CATALOGUE);
        assertThat(read.errors()).isEmpty();
        assertThat(read.job().orElseThrow().parts().styles()).hasSize(1);
        String written = JobFile.write(read.job().orElseThrow());
        assertThat(JobFile.read("again.json", written, Examples.CATALOGUE)
                        .job()
                        .orElseThrow()
                        .parts()
                        .styles())
                .isEqualTo(read.job().orElseThrow().parts().styles());
        assertThat(JobFile.read("job.json", job("theirs", "-1-1/4\\\\\\\""), Examples.CATALOGUE)
                        .errors())
                .extracting(InputError::field)
                .containsExactly("runs[0].style");
    }

    @Test
    void whatIsWrongInItIsNamed() {
        assertThat(JobFile.read("job.json", job("ours", "wide"), Examples.CATALOGUE)
                        .errors())
                .anySatisfy(error -> assertThat(error.problem()).contains("styles.json"));
    }
}
