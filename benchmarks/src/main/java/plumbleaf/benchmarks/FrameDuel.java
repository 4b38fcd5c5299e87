package plumbleaf.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Stiffness;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;

/**
 * The same frames given to others: to numpy as the same matrices, so that the movements must be the same to the last digits, and to CalculiX as bricks, where a
 * slender bar moves as a beam does and only then.
 */
final class FrameDuel {
    private static final int MOST_SECONDS = 60;
    private static final int WARM = 3000;
    private static final double SAME = 1e-9;
    /** Bricks against beams, in the plane of a frame of bars a ninetieth of their length thick. */
    private static final double ALIKE = 2e-3;

    private FrameDuel() {}

    static List<String> rows() {
        List<String> rows = new ArrayList<>();
        rows.add("| frame | by | time | movements |\n| --- | --- | ---: | --- |");
        for (int panels : List.of(3, 12)) {
            FrameSample sample = FrameSample.of(panels, 46, 22.0 * panels);
            String name = panels + " panels, " + 6 * sample.model().nodes().size() + " unknowns, 3 cases";
            rows.add("| " + name + " | Plumbleaf | " + Figure.text(ours(sample) * 1e3) + " ms | |");
            rows.add("| " + name + " | numpy | " + numpy(sample) + " |");
        }
        FrameSample rods = FrameSample.ofRods(3, 46, 66);
        rows.add("| 3 panels of slender rods, in its plane | Plumbleaf | " + Figure.text(ours(rods) * 1e3) + " ms | |");
        rows.add("| 3 panels of slender rods, in its plane | CalculiX, 8 bricks a member, a process | "
                + calculix(rods, "person", "l3", 8) + " |");
        return rows;
    }

    /** Seconds, warm. */
    private static double ours(FrameSample sample) {
        List<Double> seconds = new ArrayList<>();
        for (int i = 0; i < WARM; i++) {
            long start = System.nanoTime();
            Frames.solve(sample.model(), sample.cases());
            seconds.add((System.nanoTime() - start) / 1e9);
        }
        return Figure.of("solve", "s", seconds.subList(WARM / 2, WARM)).median();
    }

    private static String numpy(FrameSample sample) {
        if (!Program.isThere("python3")) return "no python3 | ";
        Path script = written("frame", ".py", resource("frame.py"));
        try {
            Optional<Program.Run> run = Program.fed(List.of("python3", script.toString()), words(sample), MOST_SECONDS);
            if (run.isEmpty() || run.get().exit() != 0) return "no numpy | ";
            FrameSolution here = Frames.solve(sample.model(), sample.cases());
            double most = 0;
            double largest = 0;
            double seconds = 0;
            for (String line : run.get().output().split("\n", -1)) {
                String[] word = line.split(" ", -1);
                if (word[0].equals("seconds")) seconds = Double.parseDouble(word[1]);
                if (!word[0].equals("moved")) continue;
                Vector ours = here.motion(word[1], word[2]).shiftIn();
                double[] shift = {ours.x(), ours.y(), ours.z()};
                for (int k = 0; k < 3; k++) {
                    most = Math.max(most, Math.abs(shift[k] - Double.parseDouble(word[3 + k])));
                    largest = Math.max(largest, Math.abs(shift[k]));
                }
            }
            return Figure.text(seconds * 1e3) + " ms | " + (most <= SAME * largest ? "same" : "**differ**") + ", to "
                    + power(most / largest) + " of the largest";
        } finally {
            delete(script);
        }
    }

    private static String power(double share) {
        return share == 0 ? "nothing" : "1e" + (int) Math.ceil(Math.log10(share));
    }

    /** The frame as numpy's script reads it. */
    static String words(FrameSample sample) {
        StringBuilder text = new StringBuilder();
        for (Node node : sample.model().nodes())
            text.append("node " + node.id() + " " + node.xIn() + " " + node.yIn() + " " + node.zIn() + "\n");
        for (Member member : sample.model().members()) {
            Stiffness is = member.stiffness();
            Vector up = member.orientation();
            text.append("member " + member.start() + " " + member.end() + " " + is.ePsi() + " " + is.gPsi() + " "
                    + is.areaIn2() + " " + is.iyIn4() + " " + is.izIn4() + " " + is.jIn4() + " " + up.x() + " " + up.y()
                    + " " + up.z() + "\n");
        }
        for (Support support : sample.model().supports())
            support.held()
                    .forEach(dof -> text.append("fix " + support.node() + " "
                            + List.of(Dof.values()).indexOf(dof) + "\n"));
        for (LoadCase each : sample.cases()) {
            for (Load load : each.loads()) {
                Load.AtNode at = (Load.AtNode) load;
                Vector force = at.forceLb();
                text.append("load " + each.name() + " " + at.node() + " " + force.x() + " " + force.y() + " "
                        + force.z() + "\n");
            }
        }
        return text.toString();
    }

    private static String calculix(FrameSample sample, String loadCase, String node, int elements) {
        if (!Program.isThere("ccx")) return "not installed | ";
        Path model = written("frame", ".inp", CalculixText.of(sample, loadCase, node, elements));
        String job = model.toString().replaceAll("\\.inp$", "");
        try {
            Optional<Program.Run> run = Program.run(List.of("ccx", job), MOST_SECONDS);
            Path said = Path.of(job + ".dat");
            if (run.isEmpty() || !Files.exists(said)) return "nothing | ";
            String[] numbers = Files.readString(said).trim().split("\\s+", -1);
            double theirs = Double.parseDouble(numbers[numbers.length - 1]);
            double ours = Frames.solve(sample.model(), sample.cases())
                    .motion(loadCase, node)
                    .shiftIn()
                    .z();
            double apart = Math.abs(theirs / ours - 1);
            return Figure.text(run.get().millis()) + " ms | " + (apart <= ALIKE ? "same" : "**differ**") + ", within "
                    + Figure.text(apart * 100) + " %";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            for (String end : List.of(".inp", ".dat", ".frd", ".sta", ".cvg", ".12d")) delete(Path.of(job + end));
        }
    }

    private static Path written(String name, String end, String text) {
        try {
            Path file = Files.createTempFile(name, end);
            Files.writeString(file, text, StandardCharsets.US_ASCII);
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String resource(String name) {
        try (InputStream in = FrameDuel.class.getResourceAsStream(name)) {
            if (in == null) throw new IllegalStateException("No " + name + " beside the benchmarks");
            return new String(in.readAllBytes(), StandardCharsets.US_ASCII);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
