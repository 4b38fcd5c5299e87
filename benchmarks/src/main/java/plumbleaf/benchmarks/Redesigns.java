package plumbleaf.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.Redesigner;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** A yard edited value after value: what an edit costs where only what it touches is worked out again, and what the whole costs. Processor time. */
final class Redesigns {
    private static final int EDITS = 200;
    private static final double MEDIAN_GOAL_MS = 5;
    private static final double SLOW_GOAL_MS = 16;

    private Redesigns() {}

    static List<String> rows(int rounds) {
        Standards standards = StandardTables.load().standards();
        List<String> rows = new ArrayList<>();
        rows.add("| what | median | 99 of 100 within | edits | goal |\n| --- | ---: | ---: | ---: | --- |");
        for (String example : List.of("kiln-yard.json", "sable-row.json")) {
            List<Job> walk = new Edits(Path.of("examples", example), 5).walk(EDITS);
            PriceBook book = PriceBooks.of(walk.get(0)).orElseThrow();
            Redesigner redesigner = new Redesigner(Yards.CATALOGUE, standards, new ProvenCutPlanner());
            List<Double> again = new ArrayList<>();
            List<Double> whole = new ArrayList<>();
            for (int round = 0; round < rounds; round++) {
                again.clear();
                whole.clear();
                for (Job job : walk) {
                    double start = Clock.processorSeconds();
                    redesigner.of(job, book);
                    double middle = Clock.processorSeconds();
                    Designs.of(job, Yards.CATALOGUE, standards, book, new ProvenCutPlanner());
                    again.add((middle - start) * 1e3);
                    whole.add((Clock.processorSeconds() - middle) * 1e3);
                }
            }
            rows.add(row(example + ", any value edited", again, true));
            rows.add(row(example + ", all of it anew", whole, false));
        }
        return rows;
    }

    private static String row(String name, List<Double> millis, boolean hasGoal) {
        Figure figure = Figure.of(name, "ms", millis);
        double slow = figure.values().get((int) (0.99 * (figure.values().size() - 1)));
        boolean met = figure.median() <= MEDIAN_GOAL_MS && slow <= SLOW_GOAL_MS;
        return "| " + name + " | " + Figure.text(figure.median()) + " ms | " + Figure.text(slow) + " ms | "
                + millis.size() + " | "
                + (hasGoal
                        ? "at most " + Figure.text(MEDIAN_GOAL_MS) + " ms, 99 of 100 within "
                                + Figure.text(SLOW_GOAL_MS) + " ms" + (met ? "" : ", **not met**")
                        : "")
                + " |";
    }
}
