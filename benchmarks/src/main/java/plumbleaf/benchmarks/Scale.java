package plumbleaf.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** Processor time and memory against length. Each length runs in a process of its own, which says one line. */
public final class Scale {
    private static final double[] MILES = {0.1, 1, 10, 100};
    private static final int MOST_SECONDS = 900;
    private static final double GOAL_MILES = 10;
    private static final double GOAL_S = 1;
    private static final double WARMING_S = 12;
    private static final int MOST_GB = 12;

    private Scale() {}

    /** One length: miles, posts, gates, seconds cold, seconds warm, megabytes that stay. */
    record Point(double miles, int posts, int gates, double coldS, double warmS, double heldMb) {
        String line() {
            return String.join(" ", "" + miles, "" + posts, "" + gates, "" + coldS, "" + warmS, "" + heldMb);
        }

        static Point read(String line) {
            String[] words = line.trim().split(" ", -1);
            return new Point(
                    Double.parseDouble(words[0]),
                    Integer.parseInt(words[1]),
                    Integer.parseInt(words[2]),
                    Double.parseDouble(words[3]),
                    Double.parseDouble(words[4]),
                    Double.parseDouble(words[5]));
        }
    }

    /** Works one length out and says its line. */
    public static void main(String[] arguments) {
        Standards standards = StandardTables.load().standards();
        Job job = Yards.perimeter(Double.parseDouble(arguments[0]));
        PriceBook book = PriceBooks.of(job).orElseThrow();
        double start = Clock.processorSeconds();
        Design design = Designs.of(job, Yards.CATALOGUE, standards, book, new ProvenCutPlanner());
        double cold = Clock.processorSeconds() - start;
        double warm = cold;
        // Run until the compiler has seen it, as far as that takes no longer than some seconds.
        for (double spent = cold; spent < WARMING_S; ) {
            start = Clock.processorSeconds();
            design = Designs.of(job, Yards.CATALOGUE, standards, book, new ProvenCutPlanner());
            double again = Clock.processorSeconds() - start;
            warm = Math.min(warm, again);
            spent += again;
        }
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        double held = (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
        System.out.println(new Point(
                        Double.parseDouble(arguments[0]),
                        design.posts().size(),
                        job.gates().size(),
                        cold,
                        warm,
                        held)
                .line());
    }

    static List<Point> points() {
        List<Point> points = new ArrayList<>();
        for (double miles : MILES) {
            System.err.println("Measuring a perimeter of " + Figure.text(miles) + " miles");
            Optional<Program.Run> run = Program.run(
                    List.of(
                            System.getProperty("java.home") + "/bin/java",
                            "-Xmx" + MOST_GB + "g",
                            "-cp",
                            System.getProperty("java.class.path"),
                            "plumbleaf.benchmarks.Scale",
                            "" + miles),
                    MOST_SECONDS);
            if (run.isEmpty() || run.get().exit() != 0) break;
            points.add(Point.read(run.get().output()));
        }
        return points;
    }

    static List<String> rows(List<Point> points) {
        List<String> rows = new ArrayList<>();
        rows.add("| miles | posts | gates | first time | again, the least | held |\n"
                + "| ---: | ---: | ---: | ---: | ---: | ---: |");
        for (Point p : points)
            rows.add("| " + p.miles() + " | " + p.posts() + " | " + p.gates() + " | " + Figure.text(p.coldS()) + " s | "
                    + Figure.text(p.warmS()) + " s | " + Figure.text(p.heldMb()) + " MB |");
        if (points.size() < MILES.length)
            rows.add("\nLonger ones did not end within " + MOST_SECONDS + " s and " + MOST_GB + " GB.");
        if (points.size() > 1) {
            rows.add(String.format(
                    Locale.ROOT,
                    "\nTime grows with the length to the power %.2f (least squares on the logarithms).",
                    exponent(points)));
            rows.add("\n![Time against length](pictures/scale.svg)");
        }
        for (Point p : points)
            if (p.miles() == GOAL_MILES)
                rows.add("\nThe goal is 10 miles in " + Figure.text(GOAL_S) + " s"
                        + (p.warmS() <= GOAL_S ? "." : ": **not met**."));
        return rows;
    }

    /** Slope of the line through the logarithms, by least squares. */
    static double exponent(List<Point> points) {
        double n = points.size();
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (Point p : points) {
            double x = Math.log(p.miles());
            double y = Math.log(p.warmS());
            sx += x;
            sy += y;
            sxx += x * x;
            sxy += x * y;
        }
        return (n * sxy - sx * sy) / (n * sxx - sx * sx);
    }
}
