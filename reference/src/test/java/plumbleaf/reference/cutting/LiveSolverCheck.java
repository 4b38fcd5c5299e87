package plumbleaf.reference.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

/**
 * Least cost of 200 seeded tasks with one to three kinds of bar, short supply, kerf and trim, against a general whole-number solver run here and now: it is given
 * every pattern that fits and chooses among them. {@link GeneralSolverCheck} holds recorded answers for machines without one.
 * Source: CBC, or GLPK where there is no CBC, as installed: a second method, not a publication.
 * Tolerance: none, to the cent.
 */
@Tag("solvers")
@Tag("slow")
class LiveSolverCheck {
    private static final int TASKS = 200;
    private static final int MOST_PATTERNS = 1_200;
    private static final String SECONDS = "5";
    private static final int MOST_SECONDS = 600;
    private static final int KERF = 2;
    private static final int TRIM = 8;
    private static final long SIXTEENTH_NM = 1_587_500;
    private static final int[] FEET = {8, 10, 12, 16, 20, 21, 24};
    private static final Pattern SAID = Pattern.compile("(?:Objective value:|Objective:\\s+\\S+ =)\\s+([0-9.]+)");

    private final List<Integer> lengths = new ArrayList<>();
    private final List<Integer> demand = new ArrayList<>();
    private final List<Kind> kinds = new ArrayList<>();

    @TempDir
    private Path folder = Path.of("");

    /** @param most bars there are; 0 for as many as wanted */
    private record Kind(int length, int cents, int most) {}

    /** How many of each size, from one kind of bar. */
    private record Fill(int kind, List<Integer> counts) {
        Fill {
            counts = List.copyOf(counts);
        }
    }

    @Test
    void leastCostAsTheSolverSays() throws IOException, InterruptedException {
        Assumptions.assumeTrue(isThere("cbc") || isThere("glpsol"), "neither cbc nor glpsol here");
        int compared = 0;
        int givenUp = 0;
        for (int seed = 1; compared < TASKS; seed++) {
            make(new Random(7_001L * seed));
            List<Fill> fills = fills();
            if (fills.size() > MOST_PATTERNS) continue;
            OptionalLong theirs = solved(fills);
            CutPlan plan = planned();
            if (theirs.isEmpty()) {
                assertThat(++givenUp).as("tasks the solver did not end").isLessThan(TASKS / 4);
                continue;
            }
            assertThat(plan.cost()).as("seed " + seed).isEqualTo(Money.cents(theirs.getAsLong()));
            assertThat(plan.proven()).as("seed " + seed).isTrue();
            compared++;
        }
    }

    private void make(Random random) {
        lengths.clear();
        demand.clear();
        kinds.clear();
        int first = random.nextInt(FEET.length);
        for (int k = 0; k < 1 + random.nextInt(3); k++) {
            int feet = FEET[(first + 2 * k) % FEET.length];
            int most = k > 0 && random.nextBoolean() ? 1 + random.nextInt(4) : 0;
            kinds.add(new Kind(feet * 192, feet * 190 + random.nextInt(400), most));
        }
        int whole = kinds.get(0).length();
        TreeSet<Integer> sizes = new TreeSet<>();
        while (sizes.size() < 3 + random.nextInt(6)) sizes.add(whole / 8 + random.nextInt(whole * 19 / 40));
        lengths.addAll(sizes.descendingSet());
        for (int i = 0; i < lengths.size(); i++) demand.add(1 + random.nextInt(12));
    }

    private List<Fill> fills() {
        List<Fill> fills = new ArrayList<>();
        for (int k = 0; k < kinds.size(); k++) fill(k, 0, kinds.get(k).length() - TRIM, new ArrayList<>(), fills);
        return fills;
    }

    /** A bar loses trim and a kerf, n pieces lose n - 1 kerfs: the same as each piece one kerf longer in a bar less its trim. */
    private void fill(int kind, int size, int left, List<Integer> counts, List<Fill> fills) {
        if (fills.size() > MOST_PATTERNS) return;
        if (size == lengths.size()) {
            if (counts.stream().anyMatch(count -> count > 0)) fills.add(new Fill(kind, counts));
            return;
        }
        int each = lengths.get(size) + KERF;
        for (int times = 0; times <= Math.min(demand.get(size), left / each); times++) {
            List<Integer> next = new ArrayList<>(counts);
            next.add(times);
            fill(kind, size + 1, left - times * each, next, fills);
        }
    }

    /** Nothing where the solver does not come to its end in a few seconds. */
    private OptionalLong solved(List<Fill> fills) throws IOException, InterruptedException {
        Path model = folder.resolve("cuts.lp");
        Path answer = folder.resolve("answer.txt");
        Files.deleteIfExists(answer);
        Files.writeString(model, model(fills), StandardCharsets.US_ASCII);
        List<String> command = isThere("cbc")
                ? List.of("cbc", model.toString(), "sec", SECONDS, "solve", "solu", answer.toString())
                : List.of("glpsol", "--lp", model.toString(), "--tmlim", SECONDS, "-o", answer.toString());
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
            return OptionalLong.empty();
        }
        String text = Files.readString(said) + (Files.exists(answer) ? Files.readString(answer) : "");
        if (!text.contains("Optimal solution found") && !text.contains("INTEGER OPTIMAL")) return OptionalLong.empty();
        Matcher found = SAID.matcher(text);
        assertThat(found.find()).isTrue();
        return OptionalLong.of(Math.round(Double.parseDouble(found.group(1))));
    }

    private static boolean isThere(String name) {
        for (String place : System.getenv().getOrDefault("PATH", "").split(":", -1))
            if (Files.isExecutable(Path.of(place, name))) return true;
        return false;
    }

    /** In CPLEX's LP format. */
    private String model(List<Fill> fills) {
        StringBuilder lp = new StringBuilder("Minimize\n cost:");
        for (int p = 0; p < fills.size(); p++)
            lp.append("\n + ")
                    .append(kinds.get(fills.get(p).kind()).cents())
                    .append(" x")
                    .append(p);
        lp.append("\nSubject To\n");
        for (int i = 0; i < lengths.size(); i++) {
            lp.append(" need").append(i).append(":");
            for (int p = 0; p < fills.size(); p++) {
                int times = fills.get(p).counts().get(i);
                if (times > 0) lp.append("\n + ").append(times).append(" x").append(p);
            }
            lp.append(" >= ").append(demand.get(i)).append("\n");
        }
        for (int k = 0; k < kinds.size(); k++) {
            if (kinds.get(k).most() == 0) continue;
            lp.append(" most").append(k).append(":");
            for (int p = 0; p < fills.size(); p++)
                if (fills.get(p).kind() == k) lp.append("\n + x").append(p);
            lp.append(" <= ").append(kinds.get(k).most()).append("\n");
        }
        lp.append("General\n");
        for (int p = 0; p < fills.size(); p++) lp.append(" x").append(p).append("\n");
        return lp.append("End\n").toString();
    }

    private CutPlan planned() {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            for (int n = 0; n < demand.get(i); n++)
                pieces.add(Piece.square("p" + pieces.size(), "", lengths.get(i) * SIXTEENTH_NM));
        }
        List<StockBar> bars = new ArrayList<>();
        for (Kind kind : kinds)
            bars.add(new StockBar(
                    "k" + bars.size(),
                    kind.length() * SIXTEENTH_NM,
                    Money.cents(kind.cents()),
                    kind.most() == 0 ? Supply.asMany() : Supply.atMost(kind.most()),
                    false));
        SawRules saw = new SawRules(KERF * SIXTEENTH_NM, TRIM * SIXTEENTH_NM, 0);
        CutAnswer answer = new ProvenCutPlanner().plan(new CutTask("live", pieces, bars, saw, CutTask.USUAL_STEPS));
        assertThat(answer).isInstanceOf(CutAnswer.Planned.class);
        return ((CutAnswer.Planned) answer).plan();
    }
}
