package plumbleaf.engine.design;

import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.wind.Screen;

/** How much of a leaf stops the wind: its boards where it has any, else its frame alone. */
final class LeafScreen {
    private LeafScreen() {}

    static Screen of(Leaf leaf, Optional<FenceStyle> style, Catalogue catalogue) {
        double heightIn = leaf.outline().corners().get(3).z().inches()
                - leaf.outline().corners().get(0).z().inches();
        if (style.isPresent()) return FenceScreen.of(style.get(), catalogue, Length.inches(heightIn));
        double solidIn2 = 0;
        for (Member member : leaf.members())
            solidIn2 += member.cutLength().inches() * member.section().depth().inches();
        return Screen.flat(Math.min(1, solidIn2 / (leaf.width().inches() * heightIn)));
    }
}
