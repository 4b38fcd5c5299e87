package plumbleaf.jobfile.job;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.Fields.Choice;
import plumbleaf.jobfile.input.TextKind;

/** {@code gates[].leaf}: shape, height, gaps. */
final class LeafForm {
    private static final List<String> SHAPES = List.of("square", "raked", "sloped");
    private static final Length TALL = Length.feet(4);

    private LeafForm() {}

    static LeafSpec read(Fields leaf, Optional<Run> fence) {
        boolean racks = GateForm.racks(fence);
        Choice shape = leaf.assumedChoice(
                "shape",
                SHAPES,
                racks ? "raked" : "square",
                racks ? "as the fence, which follows the ground" : "as the fence, which is level");
        Length bottomGap = leaf.assumed("bottomGap", Words.GAP, Length.inches(3), Words.CUSTOM);
        Length infill = leaf.assumed(
                "infill", Words.HEIGHT, infill(fence, bottomGap), "so that its top carries on the fence's");
        List<Length> midRailsAt = leaf.values("midRailsAt", Words.HEIGHT);
        return new LeafSpec(
                shape(shape),
                TopForm.read(leaf),
                infill,
                bottomGap,
                leaf.assumed("hingeGap", Words.SPACE, Length.inches(0.75), Words.CUSTOM),
                leaf.assumed("latchGap", Words.SPACE, Length.inches(0.625), Words.CUSTOM),
                leaf.assumed("infillBelowFrame", Words.GAP, Length.ZERO, "infill and frame end alike"),
                leaf.given("infillAboveFrame", Words.GAP).orElse(Length.ZERO),
                midRails(leaf, infill, midRailsAt),
                midRailsAt,
                FillForm.read(leaf));
    }

    private static int midRails(Fields leaf, Length infill, List<Length> midRailsAt) {
        if (midRailsAt.isEmpty())
            return leaf.assumedCount("midRails", 0, 4, infill.compareTo(TALL) > 0 ? 1 : 0, Words.CUSTOM);
        leaf.givenCount("midRails", 0, 4)
                .filter(count -> count != midRailsAt.size())
                .ifPresent(count -> leaf.refuse(
                        "midRails",
                        "midRailsAt gives the heights of " + midRailsAt.size() + " rails",
                        "leave midRails away"));
        for (int i = 1; i < midRailsAt.size(); i++)
            if (midRailsAt.get(i).compareTo(midRailsAt.get(i - 1)) <= 0)
                leaf.refuse(
                        "midRailsAt", "each rail stands higher than the one before", "order them from the lowest up");
        if (midRailsAt.size() > 4) leaf.refuse("midRailsAt", "a leaf has four mid rails at most", "leave some away");
        return midRailsAt.size();
    }

    private static Length infill(Optional<Run> fence, Length bottomGap) {
        Optional<Run> standing = fence.filter(run -> !run.isLoneGate());
        if (standing.isEmpty()) return Length.feet(6);
        Length top = standing.get().infill().plus(standing.get().bottomGap());
        return top.compareTo(bottomGap) > 0
                ? top.minus(bottomGap)
                : standing.get().infill();
    }

    private static LeafShape shape(Choice choice) {
        return switch (choice.kind()) {
            case "square" -> new LeafShape.Square();
            case "sloped" ->
                new LeafShape.Sloped(
                        choice.fields().needed("top", TextKind.SLOPE, Slope.ZERO),
                        choice.fields().needed("bottom", TextKind.SLOPE, Slope.ZERO));
            default -> new LeafShape.Raked();
        };
    }

    static void write(LeafSpec leaf, Entries out) {
        leaf.shape()
                .match(
                        square -> out.choice("shape", "square", rest -> {}),
                        raked -> out.choice("shape", "raked", rest -> {}),
                        sloped -> out.choice(
                                "shape",
                                "sloped",
                                rest -> rest.put("top", TextKind.SLOPE, sloped.top())
                                        .put("bottom", TextKind.SLOPE, sloped.bottom())));
        TopForm.write(leaf.top(), out);
        out.put("infill", TextKind.LENGTH, leaf.infill())
                .put("bottomGap", TextKind.LENGTH, leaf.bottomGap())
                .put("hingeGap", TextKind.LENGTH, leaf.hingeGap())
                .put("latchGap", TextKind.LENGTH, leaf.latchGap())
                .put("infillBelowFrame", TextKind.LENGTH, leaf.infillBelowFrame());
        if (!leaf.infillAboveFrame().isZero()) out.put("infillAboveFrame", TextKind.LENGTH, leaf.infillAboveFrame());
        if (leaf.midRailsAt().isEmpty()) out.count("midRails", leaf.midRails());
        out.values("midRailsAt", TextKind.LENGTH, leaf.midRailsAt());
        FillForm.write(leaf.fill(), out);
    }
}
