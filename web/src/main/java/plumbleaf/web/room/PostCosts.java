package plumbleaf.web.room;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.takeoff.Cause;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;

/**
 * What is bought for each post and its hole: its share of every line of the order it is a cause of, by quantity. Waste and what is left
 * over of a stick or a bag go with it. Each share is rounded to the cent by itself; the order's own lines are what adds up.
 */
final class PostCosts {
    private PostCosts() {}

    static Map<String, Money> of(Takeoff takeoff) {
        Map<String, Money> costs = new LinkedHashMap<>();
        for (TakeoffLine line : takeoff.lines()) {
            if (line.net() <= 0) continue;
            for (Cause cause : line.causes()) {
                String part = Cause.whole(cause.part());
                if (!part.matches("[PF]\\d.*")) continue;
                Money share = line.cost().times(BigDecimal.valueOf(cause.quantity() / line.net()));
                costs.merge("P" + part.substring(1), share, Money::plus);
            }
        }
        return costs;
    }
}
