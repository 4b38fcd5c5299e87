package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.job.GapRule;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * A gate and all that is needed to work it out.
 *
 * @param opening where it lies; its clear width is the gate's, as planned
 * @param ground under the swing
 * @param gap largest gap the job allows under the closed leaf
 * @param drop of the free lower latch corner once the leaf hangs; zero while it is not known yet
 * @param hingesToTry hinges that can be bought, for the remedies
 * @param rollersToTry sets of rollers that can be bought, for a slide gate
 * @param framesToTry tubes a leaf may be welded of, where its own is none that rollers take
 * @param rodWeight of a drop rod with its guides, where the gate is a pair
 */
public record GateAsk(
        Gate gate,
        Opening opening,
        GateParts parts,
        GroundUnder ground,
        GapRule gap,
        Length drop,
        List<HingeModel> hingesToTry,
        List<RollerModel> rollersToTry,
        List<Section> framesToTry,
        Force rodWeight,
        DisplayUnits display) {
    public GateAsk {
        hingesToTry = List.copyOf(hingesToTry);
        rollersToTry = List.copyOf(rollersToTry);
        framesToTry = List.copyOf(framesToTry);
    }

    /** A gate whose frame is as it is said. */
    public GateAsk(
            Gate gate,
            Opening opening,
            GateParts parts,
            GroundUnder ground,
            GapRule gap,
            Length drop,
            List<HingeModel> hingesToTry,
            List<RollerModel> rollersToTry,
            Force rodWeight,
            DisplayUnits display) {
        this(gate, opening, parts, ground, gap, drop, hingesToTry, rollersToTry, List.of(), rodWeight, display);
    }

    /** A gate on hinges without a drop rod. */
    public GateAsk(
            Gate gate,
            Opening opening,
            GateParts parts,
            GroundUnder ground,
            GapRule gap,
            Length drop,
            List<HingeModel> hingesToTry,
            DisplayUnits display) {
        this(gate, opening, parts, ground, gap, drop, hingesToTry, List.of(), Force.ZERO, display);
    }

    /** The same for a leaf of a pair: each hangs on the post of its own side, leaf a on the one named first. */
    GateAsk hungOn(Hand hand) {
        return hand.hinge() == Side.LEFT
                ? this
                : new GateAsk(
                        gate,
                        opening,
                        parts.turned(),
                        ground,
                        gap,
                        drop,
                        hingesToTry,
                        rollersToTry,
                        framesToTry,
                        rodWeight,
                        display);
    }

    /** The same gate welded of another tube. */
    GateAsk framed(Section frame) {
        return new GateAsk(
                gate,
                opening,
                parts.framed(frame),
                ground,
                gap,
                drop,
                hingesToTry,
                rollersToTry,
                framesToTry,
                rodWeight,
                display);
    }

    GateAsk over(GroundUnder remembered) {
        return new GateAsk(
                gate,
                opening,
                parts,
                remembered,
                gap,
                drop,
                hingesToTry,
                rollersToTry,
                framesToTry,
                rodWeight,
                display);
    }
}
