package plumbleaf.engine.takeoff;

import java.util.List;

/** What can be bought, and what lies in the yard. A price book answers this. */
public interface Goods {
    /** Every way an item is sold; empty when it has no price. */
    List<Sold> of(String item);

    /** What is there already and used first. */
    default OnHand onHand() {
        return OnHand.NOTHING;
    }
}
