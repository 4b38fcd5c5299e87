package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;

/**
 * From needs to an order. Loose goods: net, waste once, rounded up to whole units, bought in the way that costs least. Bars: one cut plan an item, which is the
 * waste of cutting; a share for culls comes on top where the book says so. Check: TakeoffCheck (MX15, MX16, MX36 to MX39, E11).
 */
public final class Takeoffs {
    private static final double NM_PER_FOOT = 304_800_000.0;

    /** A need a hair over a whole bag, from rounding in the last digit, opens no other. */
    private static final double HAIR = 1e-9;

    private final Goods goods;
    private final Saws saws;
    private final CutPlanner planner;
    private final List<TakeoffLine> lines = new ArrayList<>();
    private final List<CutPlan> plans = new ArrayList<>();
    private final List<StockTake> taken = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private Takeoffs(Goods goods, Saws saws, CutPlanner planner) {
        this.goods = goods;
        this.saws = saws;
        this.planner = planner;
    }

    public static Takeoff of(Needs needs, Goods goods, Saws saws, CutPlanner planner) {
        Takeoffs order = new Takeoffs(goods, saws, planner);
        Map<String, List<BarNeed>> bars = new LinkedHashMap<>();
        for (BarNeed need : needs.bars())
            bars.computeIfAbsent(need.item(), item -> new ArrayList<>()).add(need);
        bars.forEach(order::cut);
        Map<String, List<Need>> loose = new LinkedHashMap<>();
        for (Need need : needs.loose()) {
            if (need.quantity() > 0)
                loose.computeIfAbsent(need.item(), item -> new ArrayList<>()).add(need);
        }
        loose.forEach(order::buy);
        order.lines.sort(Comparator.comparing(TakeoffLine::group));
        return new Takeoff(order.lines, order.plans, order.taken, order.findings);
    }

    private void buy(String item, List<Need> needs) {
        NetUnit unit = needs.get(0).unit();
        double net = 0;
        Map<String, Double> causes = new LinkedHashMap<>();
        for (Need need : needs) {
            if (need.unit() != unit)
                throw new IllegalArgumentException(item + " is needed in " + unit.key() + " and "
                        + need.unit().key());
            net += need.quantity();
            causes.merge(need.cause(), need.quantity(), Double::sum);
        }
        List<Sold> ways =
                goods.of(item).stream().filter(sold -> sold.of() == unit).toList();
        if (ways.isEmpty()) {
            findings.add(noPrice(item, needs.get(0).name(), needs.get(0).cause()));
            return;
        }
        double there = takeFromYard(item, unit, ways.get(0).withWaste(net));
        double toBuy = Math.max(0, net - there / (1 + ways.get(0).waste()));
        Sold best = ways.get(0);
        for (Sold way : ways) {
            boolean cheaper = way.costOf(way.unitsFor(toBuy)).compareTo(best.costOf(best.unitsFor(toBuy))) < 0;
            if (cheaper) best = way;
        }
        List<OtherWay> others = new ArrayList<>();
        for (Sold way : ways) {
            if (!way.equals(best) && toBuy > 0) others.add(OtherWay.of(way, best, toBuy));
        }
        long units = toBuy > 0 ? best.unitsFor(toBuy) : 0;
        lines.add(new TakeoffLine(
                needs.get(0).group(),
                shares(causes),
                net,
                best.withWaste(net),
                best,
                units,
                best.costOf(units),
                false,
                net - toBuy,
                others));
    }

    /** Whole bags and boxes that are there, before any are bought; answers how much they hold of what is wanted, waste counted in. */
    private double takeFromYard(String item, NetUnit unit, double wanted) {
        double got = 0;
        for (OnHand.HeldGoods held : goods.onHand().goodsOf(item, unit)) {
            int count = (int) Math.min(held.count(), Math.ceil((wanted - got) / held.contents() - HAIR));
            if (count <= 0) break;
            taken.add(new StockTake(held.mark(), item, count));
            got += count * held.contents();
        }
        return Math.min(wanted, got);
    }

    private void cut(String item, List<BarNeed> needs) {
        List<Sold> ways = goods.of(item).stream()
                .filter(sold -> sold.of() == NetUnit.FEET)
                .toList();
        List<StockBar> bars = new ArrayList<>(goods.onHand().barsOf(item));
        for (Sold way : ways)
            bars.add(new StockBar(
                    barId(way),
                    Length.feet(way.contents()).nanometres(),
                    Money.rounded(way.price().dollars()),
                    Supply.asMany(),
                    false));
        if (bars.isEmpty()) {
            findings.add(noPrice(item, needs.get(0).name(), needs.get(0).piece().id()));
            return;
        }
        List<Piece> pieces = needs.stream().map(BarNeed::piece).toList();
        CutTask task = new CutTask(item, pieces, bars, saws.of(needs.get(0).saw()), CutTask.JOB_STEPS);
        planner.plan(task)
                .match(
                        planned -> planned(ways, needs, planned.plan()),
                        tooLong -> findings.add(Checked.note(
                                "takeoff.length",
                                Severity.MUST_FIX,
                                tooLong.pieces().get(0),
                                needs.get(0).name() + ": " + tooLong.pieces().size()
                                        + " pieces are longer than any bar that is sold. " + cure(needs.get(0)),
                                Basis.judgement("stock lengths in the price book"))),
                        tooFew -> findings.add(Checked.note(
                                "takeoff.stock",
                                Severity.MUST_FIX,
                                item,
                                needs.get(0).name()
                                        + ": what is on hand does not hold all pieces, and no more is sold.",
                                Basis.judgement("stock in the price book"))));
    }

    /** Wood rails and boards meet on posts; a splice between would be a hinge. An upright board is as long as the fence is high there. */
    private static String cure(BarNeed need) {
        if (need.group() == PartGroup.FENCE && need.name().equals("picket"))
            return "Follow the ground there with steps or a sloping top, build it lower, or find longer boards.";
        return need.group() == PartGroup.FENCE && need.saw() == BarNeed.Saw.WOOD
                ? "They meet on posts and are not spliced between: shorten the bay, or find longer bars."
                : "Splice them, shorten the bay, or find longer bars.";
    }

    private boolean planned(List<Sold> ways, List<BarNeed> needs, CutPlan plan) {
        plans.add(plan);
        PartGroup group = needs.get(0).group();
        List<String> sold = new ArrayList<>();
        for (Sold way : ways) {
            sold.add(barId(way));
            List<CutBar> bars = plan.bars().stream()
                    .filter(bar -> bar.bar().equals(barId(way)))
                    .toList();
            if (bars.isEmpty()) continue;
            Map<String, Double> causes = causes(bars);
            long units = way.sticksFor(bars.size());
            lines.add(new TakeoffLine(
                    group,
                    shares(causes),
                    sum(causes),
                    way.withCulls(bars.size()) * way.contents(),
                    way,
                    units,
                    way.costOf(units),
                    true,
                    0,
                    List.of()));
        }
        List<CutBar> own =
                plan.bars().stream().filter(bar -> !sold.contains(bar.bar())).toList();
        if (!own.isEmpty()) fromYard(ways, group, plan.stock(), own);
        return true;
    }

    /** Bars that lie in the yard: nothing is bought for what is cut from them, and it says so on a line of its own. */
    private void fromYard(List<Sold> ways, PartGroup group, String item, List<CutBar> own) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (CutBar bar : own) counts.merge(bar.bar(), 1, Integer::sum);
        counts.forEach((mark, count) -> taken.add(new StockTake(mark, item, count)));
        if (ways.isEmpty()) return;
        Map<String, Double> causes = causes(own);
        double net = sum(causes);
        lines.add(new TakeoffLine(group, shares(causes), net, net, ways.get(0), 0, Money.ZERO, true, net, List.of()));
    }

    private static Map<String, Double> causes(List<CutBar> bars) {
        Map<String, Double> causes = new LinkedHashMap<>();
        for (CutBar bar : bars) {
            for (Cut cut : bar.cuts()) causes.merge(cut.piece(), cut.longPointNm() / NM_PER_FOOT, Double::sum);
        }
        return causes;
    }

    private static double sum(Map<String, Double> causes) {
        double sum = 0;
        for (double each : causes.values()) sum += each;
        return sum;
    }

    private static String barId(Sold way) {
        return way.item() + " x " + DecimalText.upTo(way.contents(), 3) + " ft";
    }

    private static List<Cause> shares(Map<String, Double> causes) {
        List<Cause> shares = new ArrayList<>();
        causes.forEach((part, quantity) -> shares.add(new Cause(part, quantity)));
        return shares;
    }

    private static Finding noPrice(String item, String name, String part) {
        return Checked.note(
                "takeoff.price",
                Severity.CANNOT_SAY,
                part,
                name + " (" + item + ") has no price in the price book; the total is without it. Add a row.",
                Basis.judgement("price book"));
    }
}
