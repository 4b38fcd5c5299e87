package plumbleaf.reference.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.CutAnswer;
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
 * Source: rows of published-instances.csv, each with its own (V. Chvatal, Linear Programming, chapter 13; M. Fieldhouse, SICUP Bulletin 5; the public encyclopedia's paper rolls; Fourer, Gay and Kernighan, section 15.6; a worked example of a public library's documentation).
 * Tolerance: none, whole bars.
 */
class CuttingStockCheck {
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

    static List<Instance> instances() {
        CsvTable<Instance> table = CsvTable.read(
                "published-instances.csv",
                text("/plumbleaf/reference/cutting/published-instances.csv"),
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
