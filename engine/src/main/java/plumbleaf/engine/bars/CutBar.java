package plumbleaf.engine.bars;

import java.util.List;
import plumbleaf.engine.money.Money;

/**
 * A bar with its pieces in sawing order, long to short.
 *
 * @param trimNm taken off its end first
 * @param offcutNm what is left after the last kerf; zero when the bar is used up
 * @param offcutUsable long enough to be kept
 */
public record CutBar(
        String bar,
        long lengthNm,
        Money price,
        boolean fromOffcut,
        long trimNm,
        List<Cut> cuts,
        long offcutNm,
        boolean offcutUsable) {
    public CutBar {
        cuts = List.copyOf(cuts);
    }
}
