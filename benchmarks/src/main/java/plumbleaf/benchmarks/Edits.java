package plumbleaf.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.job.JobFile;

/** A job as it is edited, one value after the other: ground, line, gates, builds, site and money, each as often as it has values. Seeded. */
final class Edits {
    private static final Pattern VALUE = Pattern.compile(
            "\"(elevation|rod|falls|station|opening|infill|bottomGap|maxBay|hingeGap|latchGap|hole|depth|nh|overhead|margin|tax|title|speed)\":"
                    + " *\"([^\"]*)\"");
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private final Random random;
    private String text;

    Edits(Path example, int seed) {
        this.random = new Random(seed);
        try {
            this.text = Files.readString(example, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The job after the next edit that a job file may hold. */
    Job next() {
        while (true) {
            String tried = edited();
            Optional<Job> job = JobFile.read("edited", tried, Yards.CATALOGUE).job();
            if (job.isEmpty()) continue;
            text = tried;
            return job.get();
        }
    }

    /** A walk of so many edits. */
    List<Job> walk(int edits) {
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < edits; i++) jobs.add(next());
        return jobs;
    }

    private String edited() {
        List<int[]> places = new ArrayList<>();
        Matcher value = VALUE.matcher(text);
        while (value.find()) places.add(new int[] {value.start(2), value.end(2)});
        int[] place = places.get(random.nextInt(places.size()));
        String was = text.substring(place[0], place[1]);
        Matcher number = NUMBER.matcher(was);
        if (!number.find()) return put(place, was.endsWith(".") ? was.substring(0, was.length() - 1) : was + ".");
        long changed = Math.max(0, Long.parseLong(number.group()) + (random.nextBoolean() ? 1 : -1));
        return put(place, was.substring(0, number.start()) + changed + was.substring(number.end()));
    }

    private String put(int[] place, String words) {
        return text.substring(0, place[0]) + words + text.substring(place[1]);
    }
}
