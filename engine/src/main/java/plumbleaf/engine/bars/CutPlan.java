package plumbleaf.engine.bars;

import java.util.List;
import plumbleaf.engine.money.Money;

/**
 * Which pieces come from which bar.
 *
 * @param lowerBound no plan costs less: shown by exact whole-number arithmetic, not by search alone
 * @param proven the cost is the lower bound
 * @param steps effort taken
 * @param leastSetUps no plan with these bars needs fewer different set-ups; 1 says nothing
 */
public record CutPlan(
        String stock,
        SawRules saw,
        List<CutBar> bars,
        Money cost,
        Money lowerBound,
        boolean proven,
        long steps,
        int leastSetUps) {
    public CutPlan {
        bars = List.copyOf(bars);
    }

    /** Of whose set-ups nothing is known. */
    public CutPlan(
            String stock, SawRules saw, List<CutBar> bars, Money cost, Money lowerBound, boolean proven, long steps) {
        this(stock, saw, bars, cost, lowerBound, proven, steps, Math.min(1, bars.size()));
    }

    /** The same plan beside another bound, for which so many steps were taken in all; it is proven when it costs no more than that. */
    public CutPlan withBound(Money bound, long steps) {
        Money least = bound.compareTo(cost) < 0 ? bound : cost;
        return new CutPlan(stock, saw, bars, cost, least, least.equals(cost), steps, leastSetUps);
    }

    /** What the plan costs above the bound; zero when proven. */
    public Money gap() {
        return cost.minus(lowerBound);
    }

    /** All bars together. */
    public long barNm() {
        return bars.stream().mapToLong(CutBar::lengthNm).sum();
    }

    /** Offcuts long enough to be kept. */
    public long keptNm() {
        return bars.stream()
                .filter(CutBar::offcutUsable)
                .mapToLong(CutBar::offcutNm)
                .sum();
    }

    /** Kerf, end trim and scrap: what is neither in a piece nor kept. */
    public long wasteNm() {
        long pieces = bars.stream()
                .flatMap(bar -> bar.cuts().stream())
                .mapToLong(cut -> cut.longPointNm() - cut.lapNm())
                .sum();
        return Math.max(0, barNm() - keptNm() - pieces);
    }

    /** Waste in a hundred of the bars' length; 0 without bars. */
    public double wastePct() {
        return pct(wasteNm());
    }

    /** What goes back into the yard, in a hundred of the bars' length; 0 without bars. */
    public double keptPct() {
        return pct(keptNm());
    }

    /** What is in pieces, in a hundred of the bars' length; 0 without bars. */
    public double piecesPct() {
        return pct(barNm() - keptNm() - wasteNm());
    }

    private double pct(long nanometres) {
        long bars = barNm();
        return bars == 0 ? 0 : 100.0 * nanometres / bars;
    }

    /** Whether pieces lap, one slanted cut making the ends of both. */
    public boolean isNested() {
        return bars.stream().flatMap(bar -> bar.cuts().stream()).anyMatch(cut -> cut.lapNm() > 0);
    }

    /** How many different set-ups the saw needs: bars with the same lengths count once. */
    public int setUps() {
        return (int) bars.stream()
                .map(bar -> bar.cuts().stream().map(Cut::longPointNm).toList())
                .distinct()
                .count();
    }

    /** Whether these bars cannot be cut with fewer set-ups. */
    public boolean hasFewestSetUps() {
        return setUps() <= leastSetUps;
    }
}
