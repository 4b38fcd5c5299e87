package plumbleaf.engine.line;

import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The pickets whose middles lie in a bay.
 *
 * @param gap between pickets as set; negative where they lap
 * @param rip width of the ripped end pickets of the stretch; the whole width where none is ripped
 * @param gapDriest gap once the wood is as dry as it gets
 * @param gapWettest gap once it is as wet as it gets in service; negative when the boards press on each other
 * @param pickets in the order of the walk
 */
public record BayPickets(Offset gap, Length rip, Offset gapDriest, Offset gapWettest, List<FencePicket> pickets) {
    static final BayPickets NONE = new BayPickets(Offset.ZERO, Length.ZERO, Offset.ZERO, Offset.ZERO, List.of());

    public BayPickets {
        pickets = List.copyOf(pickets);
    }

    public int count() {
        return pickets.size();
    }
}
