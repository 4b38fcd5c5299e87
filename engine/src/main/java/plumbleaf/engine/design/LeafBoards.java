package plumbleaf.engine.design;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Nailer;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.section.Timber;
import plumbleaf.engine.strength.RailCheck;

/**
 * The wood boards of a leaf in wind, each a simple span from nailer to nailer, with the wind of its own pitch: a leaf without a mid rail asks more of them than the fence does.
 * Source: NDS 2018 3.3, 3.9.2; wind on the gross face by ASCE 7-16 29.3. Check: LeafBoardsTest.
 */
final class LeafBoards {
    private LeafBoards() {}

    /** @param wind strength level, on the gross face */
    static List<Checked> of(Leaf leaf, Cladding.Wood wood, Pressure wind, DesignBasis basis, DisplayUnits display) {
        if (leaf.pickets().isEmpty()) return List.of();
        boolean lying = leaf.pickets().get(0).lying();
        OptionalDouble span = lying
                ? widest(leaf.nailers().stream()
                        .filter(Nailer::upright)
                        .mapToDouble(each -> each.middle().r().inches()))
                : RailSpans.of(leaf).widest();
        if (span.isEmpty()) return List.of();
        Boarding boards = wood.style();
        double pitch = Math.max(
                boards.boardWidth().inches(),
                widest(leaf.pickets().stream().mapToDouble(each -> along(each, lying)))
                        .orElse(0));
        RailCheck board = new RailCheck(
                new Timber(boards.boardWidth(), boards.boardThickness(), wood.pickets()),
                Length.inches(span.getAsDouble()),
                0,
                wind.inPsi() * pitch);
        double used = board.windRatio();
        return List.of(Checked.of(
                "leaf.boards",
                basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION,
                leaf.id(),
                leaf.id() + ": its boards span " + display.length(board.span())
                        + " from nailer to nailer; wind bends them to " + DecimalText.fixed(used, 2)
                        + " of what they may carry.",
                Basis.clause("NDS 2018 3.3, wet service, wind duration 1.6"),
                Measure.demand(used, 1, "")));
    }

    private static double along(Picket board, boolean lying) {
        return lying ? board.middle().inches() : board.r().inches();
    }

    /** The widest step between neighbors; nothing between fewer than two. */
    private static OptionalDouble widest(DoubleStream places) {
        double[] sorted = places.sorted().toArray();
        OptionalDouble widest = OptionalDouble.empty();
        for (int i = 1; i < sorted.length; i++)
            widest = OptionalDouble.of(Math.max(widest.orElse(0), sorted[i] - sorted[i - 1]));
        return widest;
    }
}
