package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.strength.BoltRow;
import plumbleaf.engine.strength.BoltWorking;
import plumbleaf.engine.strength.WeldLines;
import plumbleaf.engine.strength.WeldWorking;
import plumbleaf.engine.strength.WoodFixingWorking;

/** Forces on a fixing and the arms they have there: off its plate, across, along it; twist in its plane, tilt of its ends, roll about its line. */
record Eccentric(double off, double across, double along, double twist, double tilt, double roll) {
    /** On a hinge's post: the pin stands off its face. */
    static Eccentric onPost(HingePull pull, int hinge, double pinOffIn) {
        double down = pull.downLb(hinge);
        return new Eccentric(
                pull.alongLb(hinge), pull.acrossLb(hinge), down, 0, down * pinOffIn, pull.acrossLb(hinge) * pinOffIn);
    }

    Force perInch(WeldLines lines) {
        return lines.perInch(off, across, along, twist, tilt, roll);
    }

    List<WorkedLine> lines(WeldLines lines) {
        return WeldWorking.of(lines, off, across, along, twist, tilt, roll);
    }

    List<WorkedLine> lines(BoltWorking bolts) {
        return bolts.lines(across, along, Math.abs(off), twist, tilt, roll);
    }

    /** As fixings in wood take it: whatever acts off the plate counts as a pull. */
    WoodFixingWorking.Carried carried() {
        return new WoodFixingWorking.Carried(across, along, Math.abs(off), twist, tilt, roll);
    }

    BoltRow.Share share(BoltRow row) {
        return row.share(across, along, Math.abs(off), twist, tilt, roll);
    }
}
