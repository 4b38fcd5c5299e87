package plumbleaf.reference.line;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.GatePlace;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Layouts;
import plumbleaf.engine.line.PostSizes;
import plumbleaf.engine.line.RunLines;
import plumbleaf.engine.line.SpacingLimit;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;

/** A job laid out with 2-3/8 in. line posts, 2-7/8 in. gate posts, 10 and 12 in. holes. */
record LaidOut(Job job, Ground ground, Layout layout) {
    static final Catalogue CATALOGUE = StandardCatalogue.load();

    static final PostSizes SIZES = new PostSizes() {
        @Override
        public Length post(Run run) {
            return Length.inches(2.375);
        }

        @Override
        public Length hole(Run run) {
            return Length.inches(10);
        }
    };

    static List<GatePlace> places(Job job) {
        Length post = Length.inches(2.875);
        return job.gates().stream()
                .map(gate -> GatePlace.of(gate, job.run(gate.run()), post, post, Length.inches(12)))
                .toList();
    }

    static LaidOut example(String name) {
        try {
            return of(Files.readString(Path.of("..", "examples", name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static LaidOut of(String json) {
        JobReading reading = JobFile.read("job.json", json.getBytes(StandardCharsets.UTF_8), CATALOGUE);
        Job job = reading.job().orElseThrow(() -> new IllegalArgumentException("Bad job: " + reading.errors()));
        List<RunLine> lines = RunLines.of(job);
        Ground ground = Ground.of(job.ground(), lines);
        return new LaidOut(
                job, ground, Layouts.of(job, CATALOGUE, ground, lines, places(job), SIZES, SpacingLimit.NONE));
    }

    /** A job of one run with these shots, each {@code "station in feet, elevation in inches"}. */
    static LaidOut run(String legs, String more, double... shots) {
        StringBuilder list = new StringBuilder();
        for (int i = 0; i < shots.length; i += 2) {
            list.append(i == 0 ? "" : ",")
                    .append("{ \"id\": \"S")
                    .append(i / 2 + 1)
                    .append("\", \"run\": \"R1\", \"station\": \"")
                    .append(shots[i])
                    .append("'\", \"elevation\": \"")
                    .append(shots[i + 1])
                    .append("\\\"\" }");
        }
        return of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"Test slope\", \"date\": \"2027-05-03\","
                        + "\"ground\": { \"shots\": [" + list + "] }, \"runs\": [ { \"id\": \"R1\", \"legs\": [" + legs
                        + "], \"style\": \"wood-side-by-side\", \"infill\": \"6'\", \"bottomGap\": \"2\\\"\","
                        + " \"maxBay\": \"8'\""
                        + more
                        + " } ] }");
    }
}
