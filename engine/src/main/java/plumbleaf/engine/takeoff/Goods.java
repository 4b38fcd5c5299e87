package plumbleaf.engine.takeoff;

import java.util.List;
import plumbleaf.engine.bars.StockBar;

/** What can be bought, and what lies in the yard. A price book answers this. */
public interface Goods {
    /** Every way an item is sold; empty when it has no price. */
    List<Sold> of(String item);

    /** Offcuts of an item on hand, free to use. */
    default List<StockBar> offcutsOf(String item) {
        return List.of();
    }
}
