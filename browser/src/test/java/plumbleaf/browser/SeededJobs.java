package plumbleaf.browser;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Jobs made from the examples by changing several of their values, the same ones each time: lengths, angles, wind, words of choice. */
final class SeededJobs {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final int CHANGES = 6;
    private static final Pattern VALUE = Pattern.compile(
            "\"(elevation|rod|falls|rises|station|opening|infill|bottomGap|maxBay|hingeGap|latchGap|speed|depth|margin|hinge|swing|fit|exposure)\":"
                    + " *\"([^\"]*)\"");
    private static final Pattern NUMBER = Pattern.compile("\\d+");
    private static final List<List<String>> WORDS = List.of(
            List.of("left", "right"),
            List.of("in", "out"),
            List.of("racked", "stepped", "level-top"),
            List.of("B", "C", "D"));

    private SeededJobs() {}

    record Named(String name, String text) {}

    /** Too long to be changed two hundred times; held to be the same as it is. */
    private static final String MILE = "thornmere-mile.json";

    static List<Named> allExamples() throws IOException {
        List<Named> examples = new ArrayList<>();
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            for (Path file : files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList())
                examples.add(new Named(file.getFileName().toString(), Files.readString(file, StandardCharsets.UTF_8)));
        }
        return examples;
    }

    private static List<Named> examples() throws IOException {
        return allExamples().stream().filter(one -> !one.name().equals(MILE)).toList();
    }

    static List<Named> seeded(int count) throws IOException {
        List<Named> examples = examples();
        List<Named> jobs = new ArrayList<>();
        for (int seed = 1; seed <= count; seed++) {
            Named from = examples.get(seed % examples.size());
            Random random = new Random(seed);
            String text = from.text();
            for (int i = 0; i < CHANGES; i++) text = changed(text, random);
            jobs.add(new Named(from.name() + ", seed " + seed, text));
        }
        return jobs;
    }

    private static String changed(String text, Random random) {
        List<int[]> places = new ArrayList<>();
        Matcher value = VALUE.matcher(text);
        while (value.find()) places.add(new int[] {value.start(2), value.end(2)});
        int[] place = places.get(random.nextInt(places.size()));
        String was = text.substring(place[0], place[1]);
        return text.substring(0, place[0]) + other(was, random) + text.substring(place[1]);
    }

    private static String other(String was, Random random) {
        for (List<String> choice : WORDS) if (choice.contains(was)) return choice.get(random.nextInt(choice.size()));
        Matcher number = NUMBER.matcher(was);
        if (!number.find()) return was;
        long now = Math.max(0, Long.parseLong(number.group()) + random.nextInt(5) - 2);
        return was.substring(0, number.start()) + now + was.substring(number.end());
    }
}
