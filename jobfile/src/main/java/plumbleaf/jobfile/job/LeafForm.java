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
        return new LeafSpec(
                shape(shape),
                infill,
                bottomGap,
                leaf.assumed("hingeGap", Words.SPACE, Length.inches(0.75), Words.CUSTOM),
                leaf.assumed("latchGap", Words.SPACE, Length.inches(0.625), Words.CUSTOM),
                leaf.assumed("infillBelowFrame", Words.GAP, Length.ZERO, "infill and frame end alike"),
                leaf.assumedCount("midRails", 0, 4, infill.compareTo(TALL) > 0 ? 1 : 0, Words.CUSTOM));
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
        out.put("infill", TextKind.LENGTH, leaf.infill())
                .put("bottomGap", TextKind.LENGTH, leaf.bottomGap())
                .put("hingeGap", TextKind.LENGTH, leaf.hingeGap())
                .put("latchGap", TextKind.LENGTH, leaf.latchGap())
                .put("infillBelowFrame", TextKind.LENGTH, leaf.infillBelowFrame())
                .count("midRails", leaf.midRails());
    }
}
