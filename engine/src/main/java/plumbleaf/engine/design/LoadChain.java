package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Ties;

/** A load path as the load walks it: from the leaf through weld, bolt, hinge and post into the soil, and through the latch into the other post. */
public final class LoadChain {
    private static final List<String> ORDER = List.of(
            "leaf frame",
            "frame weld",
            "bolts to leaf",
            "weld to leaf",
            "hinge",
            "bolts to post",
            "weld to post",
            "hinge post wall",
            "hinge post at its holes",
            "hinge post",
            "hinge post support",
            "hinge post footing",
            "drop rod",
            "sleeve footing",
            "latch",
            "latch post",
            "latch post support",
            "latch post footing");

    private LoadChain() {}

    /** The worst link of each kind, in the order of the walk; kinds it does not know come where the latch is. */
    public static List<LinkUse> of(List<LinkUse> links) {
        List<LinkUse> chain = new ArrayList<>();
        for (LinkUse link : links) {
            int at = 0;
            boolean known = false;
            for (int i = 0; i < chain.size(); i++) {
                if (chain.get(i).link().equals(link.link())) {
                    known = true;
                    if (Ties.isMore(link.utilisation(), chain.get(i).utilisation())) chain.set(i, link);
                }
                if (rank(chain.get(i)) <= rank(link)) at = i + 1;
            }
            if (!known) chain.add(at, link);
        }
        return List.copyOf(chain);
    }

    private static int rank(LinkUse link) {
        int at = ORDER.indexOf(link.link());
        return at < 0 ? ORDER.indexOf("latch") : at;
    }
}
