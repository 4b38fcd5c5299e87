package plumbleaf.benchmarks;

import java.util.List;
import java.util.Locale;

/**
 * Something measured several times.
 *
 * @param goal the largest value that would do, in the same unit; empty where there is none
 * @param values as they came; at least one
 */
record Figure(String name, String unit, List<Double> goal, List<Double> values) {
    Figure {
        goal = List.copyOf(goal);
        values = values.stream().sorted().toList();
        if (values.isEmpty()) throw new IllegalArgumentException(name + " was never measured");
    }

    static Figure of(String name, String unit, List<Double> values) {
        return new Figure(name, unit, List.of(), values);
    }

    Figure upTo(double most) {
        return new Figure(name, unit, List.of(most), values);
    }

    double median() {
        int n = values.size();
        return n % 2 == 1 ? values.get(n / 2) : (values.get(n / 2 - 1) + values.get(n / 2)) / 2;
    }

    double least() {
        return values.get(0);
    }

    double most() {
        return values.get(values.size() - 1);
    }

    /** A row of the page: name, median, least, most, how often, goal. */
    String row() {
        String aim = goal.isEmpty()
                ? ""
                : "at most " + text(goal.get(0)) + " " + unit + (median() <= goal.get(0) ? "" : ", **not met**");
        return "| " + name + " | " + text(median()) + " " + unit + " | " + text(least()) + " | " + text(most()) + " | "
                + values.size() + " | " + aim + " |";
    }

    static String heading() {
        return "| what | median | least | most | runs | goal |\n| --- | ---: | ---: | ---: | ---: | --- |";
    }

    /** Three digits that count. */
    static String text(double value) {
        if (value == 0) return "0";
        int digits = (int) Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }
}
