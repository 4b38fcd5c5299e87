package plumbleaf.engine.design;

import java.util.Optional;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.wind.Screen;

/** How much of a leaf stops the wind: its boards where it has any, else its frame alone. */
final class LeafScreen {
    private LeafScreen() {}

    static Screen of(Leaf leaf, Optional<FenceStyle> style) {
        if (style.isPresent()) return Screen.flat(style.get().solidShare());
        double solidIn2 = 0;
        for (Member member : leaf.members())
            solidIn2 += member.cutLength().inches() * member.section().depth().inches();
        double heightIn = leaf.outline().corners().get(3).z().inches()
                - leaf.outline().corners().get(0).z().inches();
        return Screen.flat(Math.min(1, solidIn2 / (leaf.width().inches() * heightIn)));
    }
}
