package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.quantity.Length;

/** What passes through a closed leaf and beside it, as drawn. */
final class LeafOpenings {
    private LeafOpenings() {}

    /** Between pickets, through mesh, or between rails where nothing fills them; at the hinges and the latch too. */
    static Length widest(GateDesign design, Leaf leaf) {
        double beside = Math.max(
                design.asked().leaf().hingeGap().inches(),
                design.asked().leaf().latchGap().inches());
        return Length.inches(Math.max(Math.max(filled(design, leaf), meshed(design, leaf)), beside));
    }

    /** Between pickets, or between rails where nothing fills them. */
    static double filled(GateDesign design, Leaf leaf) {
        double between = Math.max(0, leaf.picketGap().inches());
        return design.partsOf(leaf)
                .cladding()
                .match(
                        open -> betweenRails(leaf),
                        wood -> between,
                        pickets -> Math.max(between, pickets.gap().inches()),
                        mesh -> 0.0,
                        sheet -> 0.0);
    }

    private static double meshed(GateDesign design, Leaf leaf) {
        return design.partsOf(leaf)
                .cladding()
                .match(
                        open -> 0.0,
                        wood -> 0.0,
                        pickets -> 0.0,
                        mesh -> Math.max(0, mesh.pitch().inches() - mesh.wire().inches()),
                        sheet -> 0.0);
    }

    static double betweenRails(Leaf leaf) {
        List<Member> rails = leaf.rails();
        double widest = 0;
        for (int i = 1; i < rails.size(); i++)
            widest = Math.max(
                    widest,
                    rails.get(i).middle().z().inches()
                            - rails.get(i - 1).middle().z().inches());
        return widest;
    }
}
