package plumbleaf.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plumbleaf.cutting.ProvenCutPlanner;

/**
 * The same cut lists given to general solvers, as the plain model says them: a whole number of each size on each bar, a bar used or not. All must come to the same
 * number of bars, or the row says so.
 */
final class CutDuel {
    private static final int MOST_SECONDS = 30;
    /** What {@code ./measure} fetches for its own use; its little program says what glpsol says. */
    private static final String OR_TOOLS = "OR-Tools";

    private static final Path OR_TOOLS_AT = Path.of("benchmarks", "target", "ortools");
    private static final Pattern CBC = Pattern.compile("Objective value:\\s+([0-9.]+)");
    private static final Pattern GLPK = Pattern.compile("Objective:\\s+\\S+ = ([0-9.]+)");

    private CutDuel() {}

    /** @param lists how many of the lists; each is one row */
    static List<String> rows(int lists) {
        List<String> rows = new ArrayList<>();
        rows.add("| list | bars | here, proven | CBC | GLPK | OR-Tools |\n| ---: | ---: | ---: | --- | --- | --- |");
        for (int seed = 0; seed < 20; seed++) ours(CutSample.of(seed % CutSample.LISTS));
        for (int seed = 0; seed < lists; seed++) {
            CutSample sample = CutSample.of(seed);
            long start = System.nanoTime();
            int bars = ours(sample);
            double millis = (System.nanoTime() - start) / 1e6;
            rows.add("| " + (seed + 1) + " | " + bars + " | " + Figure.text(millis) + " ms | "
                    + against(sample, bars, millis, "cbc", CBC) + " | "
                    + against(sample, bars, millis, "glpsol", GLPK) + " | "
                    + against(sample, bars, millis, OR_TOOLS, GLPK) + " |");
        }
        return rows;
    }

    private static int ours(CutSample sample) {
        return new ProvenCutPlanner()
                .plan(sample.task())
                .<Integer>match(
                        planned ->
                                planned.plan().proven() ? planned.plan().bars().size() : -1,
                        tooLong -> -1,
                        notEnough -> -1);
    }

    private static String against(CutSample sample, int bars, double millis, String solver, Pattern said) {
        boolean there = solver.equals(OR_TOOLS) ? Files.isDirectory(OR_TOOLS_AT) : Program.isThere(solver);
        if (!there) return "not installed";
        try {
            Path folder = Files.createTempDirectory("cuts");
            Path model = folder.resolve("cuts.lp");
            Path answer = folder.resolve("answer.txt");
            Files.writeString(model, model(sample, bars + 2), StandardCharsets.US_ASCII);
            List<String> command = command(solver, sample, bars + 2, model, answer);
            Optional<Program.Run> run = Program.run(command, MOST_SECONDS + 30);
            String text =
                    run.map(Program.Run::output).orElse("") + (Files.exists(answer) ? Files.readString(answer) : "");
            Files.deleteIfExists(answer);
            Files.delete(model);
            Files.delete(folder);
            Matcher found = said.matcher(text);
            boolean proven = text.contains("Optimal solution found") || text.contains("INTEGER OPTIMAL");
            if (run.isEmpty() || !found.find()) return "nothing in " + MOST_SECONDS + " s";
            long theirs = Math.round(Double.parseDouble(found.group(1)));
            if (theirs == 0) return "nothing in " + MOST_SECONDS + " s";
            String took = Figure.text(run.get().millis() / 1000) + " s, ";
            if (!proven) return took + theirs + " bars, not proven";
            return took + (theirs == bars ? "same" : "**" + theirs + " bars**") + ", "
                    + Math.round(run.get().millis() / millis) + " times as long";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> command(String solver, CutSample sample, int bars, Path model, Path answer) {
        if (solver.equals("cbc"))
            return List.of("cbc", model.toString(), "sec", "" + MOST_SECONDS, "solve", "solu", answer.toString());
        if (solver.equals("glpsol"))
            return List.of("glpsol", "--lp", model.toString(), "--tmlim", "" + MOST_SECONDS, "-o", answer.toString());
        return List.of(
                System.getProperty("java.home") + "/bin/java",
                "-cp",
                OR_TOOLS_AT + "/*",
                "benchmarks/ortools/PlainModel.java",
                "" + MOST_SECONDS,
                "" + bars,
                "" + room(),
                listed(sample.sizesNm().stream().map(CutDuel::taken).toList()),
                listed(sample.counts()));
    }

    private static String listed(List<? extends Number> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(","));
    }

    /** Length of a bar that pieces and their kerfs may take, in sixteenths. */
    private static long room() {
        return (CutSample.BAR_NM - CutSample.SAW.endTrimNm()) / CutSample.SIXTEENTH_NM;
    }

    /** Length of a bar that a piece takes with its kerf, in sixteenths. */
    private static long taken(long sizeNm) {
        return (sizeNm + CutSample.SAW.kerfNm()) / CutSample.SIXTEENTH_NM;
    }

    /** The plain model in CPLEX's LP format. n pieces take n - 1 kerfs: each piece and what is left of the bar are made one kerf longer. */
    static String model(CutSample sample, int bars) {
        StringBuilder lp = new StringBuilder("Minimize\n bars: ");
        for (int b = 0; b < bars; b++)
            lp.append(b == 0 ? "" : " + ").append("y").append(b);
        lp.append("\nSubject To\n");
        for (int s = 0; s < sample.sizesNm().size(); s++) {
            lp.append(" need").append(s).append(": ");
            for (int b = 0; b < bars; b++)
                lp.append(b == 0 ? "" : " + ").append("x").append(s).append("_").append(b);
            lp.append(" >= ").append(sample.counts().get(s)).append("\n");
        }
        for (int b = 0; b < bars; b++) {
            lp.append(" bar").append(b).append(": ");
            for (int s = 0; s < sample.sizesNm().size(); s++)
                lp.append(s == 0 ? "" : " + ")
                        .append(taken(sample.sizesNm().get(s)))
                        .append(" x")
                        .append(s)
                        .append("_")
                        .append(b);
            lp.append(" - ").append(room()).append(" y").append(b).append(" <= 0\n");
        }
        for (int b = 0; b + 1 < bars; b++)
            lp.append(" order")
                    .append(b)
                    .append(": y")
                    .append(b)
                    .append(" - y")
                    .append(b + 1)
                    .append(" >= 0\n");
        lp.append("Binary\n");
        for (int b = 0; b < bars; b++) lp.append(" y").append(b).append("\n");
        lp.append("General\n");
        for (int s = 0; s < sample.sizesNm().size(); s++)
            for (int b = 0; b < bars; b++)
                lp.append(" x").append(s).append("_").append(b).append("\n");
        return lp.append("End\n").toString();
    }
}
