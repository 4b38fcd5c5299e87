package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.simplex.Answer;
import plumbleaf.engine.simplex.Constraint;
import plumbleaf.engine.simplex.LinearProgram;
import plumbleaf.engine.simplex.Simplex;
import plumbleaf.engine.simplex.Term;
import plumbleaf.engine.simplex.Variable;

/** The same three questions put to the simplex method, whose rows and columns grow as the number of posts, its work as the third power: the second method. */
final class FairingBySimplex {
    /** What a later program may lose of an earlier one's measure: rounding of the solver. */
    private static final double KEPT = 1e-7;

    private final Fairing.Input input;
    private final int knots;

    /** The three measures. */
    record Measures(double largest, double total, double away) {}

    private FairingBySimplex(Fairing.Input input) {
        this.input = input;
        this.knots = input.stationsIn().size();
    }

    /** The fair line; none when no line with knots at the posts keeps the gaps. */
    static Optional<Measures> of(Fairing.Input input) {
        if (input.gapMinIn() > input.gapMaxIn()) return Optional.empty();
        return new FairingBySimplex(input).solve();
    }

    private Optional<Measures> solve() {
        Optional<List<Double>> first = minimise(Aim.LARGEST, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        if (first.isEmpty()) return Optional.empty();
        double largest = largestChange(first.get());
        Optional<List<Double>> second =
                largest <= KEPT ? first : minimise(Aim.TOTAL, largest + KEPT, Double.POSITIVE_INFINITY);
        double total = totalChange(second.orElse(first.get()));
        Optional<List<Double>> third = minimise(Aim.WANTED, largest + KEPT, total + KEPT * knots);
        List<Double> gaps = third.or(() -> second).orElse(first.get());
        double away = 0;
        for (double gap : gaps) away += Math.abs(gap - input.wantedIn());
        return Optional.of(new Measures(largestChange(gaps) / 100, totalChange(gaps) / 100, away));
    }

    private enum Aim {
        LARGEST,
        TOTAL,
        WANTED
    }

    /** Variables: the gap at each post, the largest change, the change at each post, the distance from the wanted gap at each post. */
    private Optional<List<Double>> minimise(Aim aim, double largestAllowed, double totalAllowed) {
        List<Variable> variables = new ArrayList<>();
        for (int j = 0; j < knots; j++) variables.add(new Variable("gap " + j, 0, input.gapMinIn(), input.gapMaxIn()));
        int largest = variables.size();
        variables.add(new Variable("largest", aim == Aim.LARGEST ? 1 : 0, 0, largestAllowed));
        int change = variables.size();
        for (int j = 0; j < knots; j++) variables.add(Variable.positive("change " + j, aim == Aim.TOTAL ? 1 : 0));
        int away = variables.size();
        for (int j = 0; j < knots; j++) variables.add(Variable.positive("away " + j, aim == Aim.WANTED ? 1 : 0));
        List<Constraint> rows = new ArrayList<>();
        List<Term> sum = new ArrayList<>();
        for (int j = 1; j + 1 < knots; j++) {
            if (!input.smooth().get(j)) continue;
            sum.add(new Term(change + j, 1));
            bound(rows, j, change + j);
            rows.add(Constraint.atLeast("largest " + j, List.of(new Term(largest, 1), new Term(change + j, -1)), 0));
        }
        if (totalAllowed < Double.POSITIVE_INFINITY && !sum.isEmpty())
            rows.add(Constraint.atMost("total", sum, totalAllowed));
        if (aim == Aim.WANTED) {
            for (int j = 0; j < knots; j++) {
                rows.add(Constraint.atMost(
                        "above " + j, List.of(new Term(j, 1), new Term(away + j, -1)), input.wantedIn()));
                rows.add(Constraint.atLeast(
                        "below " + j, List.of(new Term(j, 1), new Term(away + j, 1)), input.wantedIn()));
            }
        }
        for (Fairing.Bend bend : input.bends()) rows.add(gapAt(bend));
        Answer answer = Simplex.minimise(new LinearProgram(variables, rows));
        return answer.match(
                optimal -> Optional.of(List.copyOf(optimal.values().subList(0, knots))),
                infeasible -> Optional.empty(),
                unbounded -> Optional.empty(),
                unfinished -> Optional.empty());
    }

    /** Holds a variable above the size of the change of slope at a post. */
    private void bound(List<Constraint> rows, int j, int variable) {
        double before = 100 / (station(j) - station(j - 1));
        double after = 100 / (station(j + 1) - station(j));
        double ground = (ground(j + 1) - ground(j)) * after - (ground(j) - ground(j - 1)) * before;
        List<Term> slope = List.of(new Term(j - 1, before), new Term(j, -before - after), new Term(j + 1, after));
        List<Term> up = new ArrayList<>(slope);
        up.add(new Term(variable, -1));
        rows.add(Constraint.atMost("bends up " + j, up, -ground));
        List<Term> down = new ArrayList<>(slope);
        down.add(new Term(variable, 1));
        rows.add(Constraint.atLeast("bends down " + j, down, -ground));
    }

    private Constraint gapAt(Fairing.Bend bend) {
        int j = bend.bay();
        double chord = ground(j) + (ground(j + 1) - ground(j)) * bend.share();
        double over = bend.groundIn() - chord;
        List<Term> gap = List.of(new Term(j, 1 - bend.share()), new Term(j + 1, bend.share()));
        return new Constraint("gap", gap, input.gapMinIn() + over, input.gapMaxIn() + over);
    }

    private double changeAt(List<Double> gaps, int j) {
        double before = (ground(j) + gaps.get(j) - ground(j - 1) - gaps.get(j - 1)) / (station(j) - station(j - 1));
        double after = (ground(j + 1) + gaps.get(j + 1) - ground(j) - gaps.get(j)) / (station(j + 1) - station(j));
        return 100 * Math.abs(after - before);
    }

    private double largestChange(List<Double> gaps) {
        double largest = 0;
        for (int j = 1; j + 1 < knots; j++) {
            if (input.smooth().get(j)) largest = Math.max(largest, changeAt(gaps, j));
        }
        return largest;
    }

    private double totalChange(List<Double> gaps) {
        double total = 0;
        for (int j = 1; j + 1 < knots; j++) {
            if (input.smooth().get(j)) total += changeAt(gaps, j);
        }
        return total;
    }

    private double station(int j) {
        return input.stationsIn().get(j);
    }

    private double ground(int j) {
        return input.groundIn().get(j);
    }
}
