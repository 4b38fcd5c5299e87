package plumbleaf.reference.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;
import plumbleaf.jobfile.table.CsvTable;

/**
 * Cut plans reach the printed least number of bars, and say that they are proven.
 * Source: rows of published-instances.csv, each with its own and whether it was read or is from memory. Read: V. Chvatal, Linear Programming, chapter 13, in an open course notebook; the public encyclopedia's paper rolls; a modelling language's handbook, 161 rolls; J. Kantor, CBE 40455, Stock Cutting (two lengths, few of each); Falkenauer (uniform and triplets), Scholl and others, Schwerin and Waescher, one instance of each; 13 pieces that need a bar more than the fractions say. From memory: M. Fieldhouse, SICUP Bulletin 5; Fourer, Gay and Kernighan, section 15.6; a worked example of a public library's documentation.
 * Tolerance: none, whole bars.
 *
 * <p>Lists that may not be passed on are checked where somebody has them: {@code -Dcutting.lists=FILE} names a table of the same columns.
 */
class CuttingStockCheck {
    private static final String MORE = "cutting.lists";

    record Instance(String name, long barLength, List<Piece> pieces, long optimum) {
        Instance {
            pieces = List.copyOf(pieces);
        }
    }

    @ParameterizedTest
    @MethodSource("instances")
    void leastNumberOfBars(Instance instance) {
        StockBar bar = new StockBar("bar", instance.barLength(), Money.dollars(1), Supply.asMany(), false);
        CutTask task = new CutTask(
                instance.name(), instance.pieces(), List.of(bar), new SawRules(0, 0, 0), CutTask.USUAL_STEPS);
        CutAnswer answer = new ProvenCutPlanner().plan(task);
        assertThat(answer).isInstanceOf(CutAnswer.Planned.class);
        CutPlan plan = ((CutAnswer.Planned) answer).plan();
        assertThat(plan.bars()).hasSize((int) instance.optimum());
        assertThat(plan.proven()).isTrue();
        assertThat(plan.lowerBound()).isEqualTo(Money.dollars(instance.optimum()));
    }

    /**
     * J. Kantor, CBE 40455 Process Operations, notebook 5.7, Stock Cutting: three of 7 m, two of 6 m, six of 4 m, one of 3 m, from three bars of 15 m and three of
     * 10 m. The printed plan takes two of 15 m and three of 10 m with nothing left over: 60 m, and no plan takes less.
     */
    @Test
    void fewBarsOfTwoLengths() {
        List<StockBar> bars = List.of(
                new StockBar("15 m", 15, Money.dollars(15), Supply.atMost(3), false),
                new StockBar("10 m", 10, Money.dollars(10), Supply.atMost(3), false));
        CutTask task =
                new CutTask("notebook", pieces("7:3 6:2 4:6 3:1"), bars, new SawRules(0, 0, 0), CutTask.USUAL_STEPS);
        CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().plan(task)).plan();
        assertThat(plan.cost()).isEqualTo(Money.dollars(60));
        assertThat(plan.proven()).isTrue();
        assertThat(plan.bars())
                .extracting(CutBar::bar)
                .containsExactlyInAnyOrder("15 m", "15 m", "10 m", "10 m", "10 m");
    }

    static List<Instance> instances() throws IOException {
        List<Instance> all = new ArrayList<>(
                instances("published-instances.csv", text("/plumbleaf/reference/cutting/published-instances.csv")));
        String more = System.getProperty(MORE, "");
        if (!more.isEmpty()) all.addAll(instances(more, Files.readString(Path.of(more))));
        return all;
    }

    private static List<Instance> instances(String file, String text) {
        CsvTable<Instance> table = CsvTable.read(
                file,
                text,
                List.of("name", "bar_length", "pieces", "optimum", "source"),
                row -> new Instance(
                        row.needed("name"),
                        (long) row.number("bar_length", 1, 1e9),
                        pieces(row.needed("pieces")),
                        (long) row.number("optimum", 1, 1e6)));
        assertThat(table.errors()).isEmpty();
        return table.rows();
    }

    private static List<Piece> pieces(String text) {
        List<Piece> pieces = new ArrayList<>();
        for (String each : Arrays.asList(text.split(" ", -1))) {
            List<String> parts = Arrays.asList(each.split(":", -1));
            for (int n = 0; n < Integer.parseInt(parts.get(1)); n++)
                pieces.add(Piece.square("p" + pieces.size(), "", Long.parseLong(parts.get(0))));
        }
        return pieces;
    }

    static String text(String resource) {
        try (InputStream in = Objects.requireNonNull(CuttingStockCheck.class.getResourceAsStream(resource))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
