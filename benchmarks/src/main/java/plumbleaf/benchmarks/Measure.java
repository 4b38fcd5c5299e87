package plumbleaf.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Measures everything and writes {@code docs/benchmarks.md}. Started by {@code ./measure}, from the project's folder. */
public final class Measure {
    private static final int RUNS = 9;
    private static final int BRIEF_RUNS = 2;
    private static final int SERVED = 1000;
    private static final int MANY = 10_000;

    private static final Path PAGE = Path.of("docs", "benchmarks.md");

    private Measure() {}

    public static void main(String[] arguments) throws IOException {
        if (List.of(arguments).contains("--cuts")) {
            List<String> words = List.of(arguments);
            CutClasses.say(words.subList(words.indexOf("--cuts") + 1, words.size()));
            return;
        }
        boolean brief = List.of(arguments).contains("--brief");
        List<String> page = new ArrayList<>();
        page.add("# Measured\n\nWritten by `./measure`. " + machine() + shared()
                + "\n"
                + "Times move with the machine and with what else it does; no test asks for one. A goal that"
                + " is not met says so.\n");
        section(page, "Inside a warm process", InProcess.rows(brief));
        section(page, "A yard edited, in processor time", Redesigns.rows(brief ? 4 : 6));
        section(page, "What bounds a redesign and a choice", Bounds.ROWS);
        section(page, "The engine in a browser, by the browser's own clock", PageFigures.rows());
        section(page, "Commands, each a cold process", Commands.rows(brief ? BRIEF_RUNS : RUNS));
        section(
                page,
                "Cut plans beside general solvers: twenty sizes, three hundred pieces",
                CutDuel.rows(brief ? 1 : 3));
        section(page, "Cut plans of published classes, in processor time", CutClasses.rows(brief ? 2 : 10, 1));
        section(page, "Frames beside general solvers", FrameDuel.rows());
        Path folder = Files.createTempDirectory("measured");
        try {
            int many = brief ? 500 : MANY;
            section(page, "The store with many jobs", StoreFigures.rows(StoreFigures.filled(folder, many), many));
            section(
                    page,
                    "The workspace, served",
                    Served.rows(StoreFigures.filled(folder, SERVED), SERVED, brief ? 10 : 60));
            section(
                    page,
                    "The workspace with many jobs",
                    Served.rows(folder.resolve("jobs-" + many + ".db"), many, brief ? 10 : 30));
        } finally {
            Commands.delete(folder);
        }
        List<Scale.Point> points = Scale.points();
        section(page, "A perimeter with a gate every 500 ft, in processor time", Scale.rows(points));
        Files.writeString(Path.of("docs", "pictures", "scale.svg"), ScalePicture.svg(points), StandardCharsets.UTF_8);
        System.err.println("Written: " + PAGE);
    }

    /** Written as it grows, so that what was measured stands even when a later part fails. */
    private static void section(List<String> page, String title, List<String> rows) throws IOException {
        page.add("## " + title + "\n");
        page.addAll(rows);
        page.add("");
        Files.writeString(PAGE, String.join("\n", page) + "\n", StandardCharsets.UTF_8);
        System.err.println("Measured: " + title);
    }

    private static String machine() throws IOException {
        String processor = "unknown processor";
        Path info = Path.of("/proc/cpuinfo");
        if (Files.exists(info))
            processor = Files.readAllLines(info).stream()
                    .filter(line -> line.startsWith("model name"))
                    .findFirst()
                    .map(line -> line.substring(line.indexOf(':') + 1).trim())
                    .orElse(processor);
        return Runtime.getRuntime().availableProcessors() + " processors (" + processor + "), Java "
                + System.getProperty("java.version") + ", " + System.getProperty("os.name")
                + version("cbc", "Version: (\\S+)", "-stop")
                + version("glpsol", "GLPK.*?([0-9]+\\.[0-9]+)", "--version") + ".";
    }

    /** What else the machine did when this began, where it says so. */
    private static String shared() throws IOException {
        Path load = Path.of("/proc/loadavg");
        if (!Files.exists(load)) return "";
        String waiting = Files.readString(load).split(" ", -1)[0];
        return " When it began, " + waiting + " tasks ran or waited for a processor.";
    }

    private static String version(String program, String pattern, String word) {
        if (!Program.isThere(program)) return "";
        Optional<Program.Run> run = Program.run(List.of(program, word), 10);
        java.util.regex.Matcher found = java.util.regex.Pattern.compile(pattern)
                .matcher(run.map(Program.Run::output).orElse(""));
        return ", " + program + (found.find() ? " " + found.group(1) : "");
    }
}
