package plumbleaf.documents.view;

import plumbleaf.engine.gate.Opening;
import plumbleaf.engine.gate.SwingAxes;
import plumbleaf.engine.quantity.Offset;

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

    /** Station of the middle of its opening. */
    Offset middle() {
        Opening opening = gate.plan().opening();
        return Offset.inches(opening.station().inches() + opening.clear().inches() / 2);
    }

    SwingAxes axes() {
        return SwingAxes.of(
                gate.plan().opening(), gate.leaf().hand(), gate.parts().hinge().pin());
    }
}
