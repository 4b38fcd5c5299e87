package plumbleaf.documents.view;

import plumbleaf.engine.gate.Opening;
import plumbleaf.engine.gate.SwingAxes;

/** A gate and where it hangs. */
public record PlacedGate(GateSubject gate) {
    /** Station of the pin axis, in inches. */
    double pinStationIn() {
        Opening opening = gate.plan().opening();
        double offset = gate.parts().hinge().pinOffset().inches();
        boolean atStart = opening.hingeAtStart(gate.leaf().hand().hinge());
        double station = opening.station().inches();
        return atStart ? station + offset : station + opening.clear().inches() - offset;
    }

    SwingAxes axes() {
        return SwingAxes.of(
                gate.plan().opening(), gate.leaf().hand(), gate.parts().hinge().pin());
    }
}
