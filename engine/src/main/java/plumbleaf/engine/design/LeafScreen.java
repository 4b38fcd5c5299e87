package plumbleaf.engine.design;

import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Panel;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.wind.Screen;

/**
 * How much of a leaf stops the wind: its boards where it has any, else its frame and what steel is in it. What one part hides of another is counted
 * twice, which is on the safe side.
 */
final class LeafScreen {
    private LeafScreen() {}

    /** @param style that it is boarded in, or that its fence is made in; none where it is filled otherwise */
    static Screen of(Leaf leaf, Cladding cladding, Optional<FenceStyle> style, Catalogue catalogue) {
        double heightIn = leaf.outline().corners().get(3).z().inches()
                - leaf.outline().corners().get(0).z().inches();
        return style.map(is -> FenceScreen.of(is, catalogue, Length.inches(heightIn)))
                .orElseGet(() -> of(leaf, cladding));
    }

    private static Screen of(Leaf leaf, Cladding cladding) {
        return cladding.match(
                open -> Screen.flat(share(frameIn2(leaf), leaf)),
                wood -> Screen.flat(1),
                pickets -> {
                    double solid = frameIn2(leaf);
                    for (Picket picket : leaf.pickets())
                        solid += picket.length().inches() * picket.width().inches();
                    Length size = pickets.section().depth();
                    return new Screen(share(solid, leaf), pickets.section().isRound(), size);
                },
                mesh -> Screen.flat(share(frameIn2(leaf) + panelIn2(leaf) * mesh.solidShare(), leaf)),
                sheet -> Screen.flat(share(frameIn2(leaf) + panelIn2(leaf), leaf)));
    }

    private static double share(double solidIn2, Leaf leaf) {
        return Math.min(1, solidIn2 / (leaf.outline().face().squareInches() * cladShare(leaf)));
    }

    /** A slide leaf is clad over its opening alone; its tail is bare, and counted by itself. */
    private static double cladShare(Leaf leaf) {
        return leaf.of(MemberRole.TAIL_UPRIGHT).isEmpty()
                ? 1
                : leaf.outline().latchEdge().inches() / leaf.width().inches();
    }

    private static double frameIn2(Leaf leaf) {
        double solid = 0;
        for (Member member : leaf.members())
            if (member.role() != MemberRole.ROD && !isOfTail(leaf, member))
                solid += member.cutLength().inches()
                        * member.section().depth().inches()
                        * (member.role().isRail() ? cladShare(leaf) : 1);
        return solid;
    }

    private static boolean isOfTail(Leaf leaf, Member member) {
        return cladShare(leaf) < 1
                && !member.role().isRail()
                && member.middle().r().inches() < 0;
    }

    private static double panelIn2(Leaf leaf) {
        double solid = 0;
        for (Panel panel : leaf.panels()) solid += panel.area().squareInches();
        return solid;
    }
}
