package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/** What goes on the truck, day by day and in the order the day uses it: posts cut to length, goods in the units they come in, leaves whole. */
public record LoadList(List<Load> loads, Truck truck) {
    private static final int LEAST_HEAVY_LB = 50;

    public LoadList {
        loads = List.copyOf(loads);
    }

    /**
     * One thing to load.
     *
     * @param count of {@code unit}
     * @param longest of its pieces; zero where that does not matter
     */
    public record LoadLine(String item, String what, long count, String unit, Force weight, Length longest) {}

    /** A day's load, first what is used first; of things used together the longest and heaviest first. */
    public record Load(LoadStage stage, List<LoadLine> lines) {
        public Load {
            lines = List.copyOf(lines);
        }

        public Force weight() {
            Force sum = Force.ZERO;
            for (LoadLine line : lines) sum = sum.plus(line.weight());
            return sum;
        }

        public Length longest() {
            Length longest = Length.ZERO;
            for (LoadLine line : lines) {
                if (line.longest().compareTo(longest) > 0) longest = line.longest();
            }
            return longest;
        }
    }

    public static LoadList of(Takeoff takeoff, List<Leaf> leaves, Truck truck) {
        Map<LoadStage, List<LoadLine>> days = new LinkedHashMap<>();
        for (LoadStage stage : LoadStage.values()) days.put(stage, new ArrayList<>());
        Set<String> gates = new LinkedHashSet<>();
        for (Leaf leaf : leaves) {
            gates.add(leaf.id());
            gates.add(leaf.id().substring(0, leaf.id().length() - 1));
        }
        for (TakeoffLine line : takeoff.lines()) {
            for (LoadStage stage : stages(line, gates)) add(days, stage, line, takeoff);
        }
        for (Leaf leaf : leaves)
            of(days, LoadStage.HANG)
                    .add(new LoadLine(
                            leaf.id(),
                            "leaf " + leaf.id() + ", built",
                            1,
                            "each",
                            leaf.weight().wet(),
                            leaf.width()));
        List<Load> loads = new ArrayList<>();
        days.forEach((stage, lines) -> {
            lines.sort(Comparator.comparingInt((LoadLine line) -> OrderOfUse.of(stage, kind(line, gates)))
                    .thenComparing(Comparator.comparing((LoadLine line) -> line.longest())
                            .reversed())
                    .thenComparing(Comparator.comparing((LoadLine line) -> line.weight())
                            .reversed())
                    .thenComparing(LoadLine::item));
            if (!lines.isEmpty()) loads.add(new Load(stage, lines));
        });
        return new LoadList(loads, truck);
    }

    private static String kind(LoadLine line, Set<String> leaves) {
        return leaves.contains(line.item()) ? OrderOfUse.LEAF : line.item();
    }

    /** The tube, boards and wire of a leaf stay in the shop; it rides as a leaf. */
    private static List<LoadStage> stages(TakeoffLine line, Set<String> gates) {
        boolean gateOnly = line.causes().stream().allMatch(cause -> gates.contains(Cause.whole(cause.part())));
        return switch (line.group()) {
            case POSTS, FOOTINGS -> List.of(LoadStage.SET);
            case FENCE -> gateOnly ? List.of() : List.of(LoadStage.BUILD);
            case GATE, CONSUMABLES -> List.of();
            case HARDWARE -> List.of(gateOnly ? LoadStage.HANG : firstUse(line));
            case FINISH -> List.of(line.item().equals("zinc-paint") ? LoadStage.HANG : LoadStage.FINISH);
        };
    }

    /** Caps and anchors go with their posts. */
    private static LoadStage firstUse(TakeoffLine line) {
        if (OrderOfUse.isStretched(line.item())) return LoadStage.BUILD;
        return line.causes().stream().allMatch(cause -> cause.part().startsWith("P")) ? LoadStage.SET : LoadStage.BUILD;
    }

    private static void add(Map<LoadStage, List<LoadLine>> days, LoadStage stage, TakeoffLine line, Takeoff takeoff) {
        double share = line.fromYard() > 0 && line.units() == 0
                ? line.net() / line.sold().contents()
                : 0;
        if (!line.cut()) {
            long fromYard = (long) Math.ceil(
                    line.sold().withWaste(line.fromYard()) / line.sold().contents() - 1e-9);
            long count = line.units() + fromYard;
            boolean comes = line.sold().unit() == OrderUnit.YARD;
            Force weight = comes ? Force.ZERO : line.sold().weight().times((double) count);
            of(days, stage)
                    .add(new LoadLine(
                            line.item(),
                            line.sold().name() + (comes ? ": comes to the site, not loaded" : ""),
                            count,
                            line.sold().unit().key(),
                            weight,
                            spliced(line)));
            return;
        }
        double poundsAFoot = line.sold().weight().pounds() / line.sold().contents();
        if (line.group() == PartGroup.POSTS) {
            Force weight = Force.pounds(poundsAFoot * line.net());
            of(days, stage)
                    .add(new LoadLine(
                            line.item(),
                            line.sold().name() + ", cut to length",
                            line.causes().size(),
                            "each",
                            weight,
                            longestCut(line, takeoff)));
            return;
        }
        long count = line.units() + (long) Math.ceil(share - 1e-9);
        of(days, stage)
                .add(new LoadLine(
                        line.item(),
                        line.sold().name(),
                        count,
                        line.sold().unit().key(),
                        line.sold().weight().times((double) count),
                        Length.feet(line.sold().contents())));
    }

    /** Swaged rail rides in whole sticks, though no cut plan asks for them. */
    private static Length spliced(TakeoffLine line) {
        boolean stick = line.sold().unit() == OrderUnit.STICK && line.sold().of() == NetUnit.FEET;
        return stick ? Length.feet(line.sold().contents()) : Length.ZERO;
    }

    private static Length longestCut(TakeoffLine line, Takeoff takeoff) {
        long longest = 0;
        for (CutPlan plan : takeoff.cutPlans()) {
            if (!plan.stock().equals(line.item())) continue;
            for (CutBar bar : plan.bars()) {
                for (Cut cut : bar.cuts()) longest = Math.max(longest, cut.longPointNm());
            }
        }
        return Length.nanometres(longest);
    }

    private static List<LoadLine> of(Map<LoadStage, List<LoadLine>> days, LoadStage stage) {
        return days.computeIfAbsent(stage, key -> new ArrayList<>());
    }

    /** Where a day's load is more than a trip, or longer than the truck carries; and that the truck is assumed, where it is. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Load load : loads) {
            int trips = truck.trips(load.weight());
            if (trips > 1)
                findings.add(caution(
                        "truck.load",
                        load.stage().key() + ": the load is "
                                + DecimalText.whole(load.weight().pounds())
                                + " lb and the truck takes "
                                + DecimalText.whole(truck.payload().pounds()) + " lb, so " + trips
                                + " trips; or have it delivered."));
            if (!truck.carries(load.longest()))
                findings.add(caution(
                        "truck.length",
                        load.stage().key() + ": the longest piece is "
                                + DecimalText.upTo(load.longest().inFeet(), 1)
                                + " ft, and bed and overhang together are "
                                + DecimalText.upTo(
                                        truck.bed().plus(truck.overhang()).inFeet(), 1)
                                + " ft. Have it delivered, or cut before loading."));
        }
        if (truck.assumed() && !loads.isEmpty())
            findings.add(
                    caution(
                            "truck.assumed",
                            "The price book's house table says nothing of the truck: "
                                    + DecimalText.whole(truck.payload().pounds())
                                    + " lb, a bed of "
                                    + DecimalText.upTo(truck.bed().inFeet(), 1) + " ft and "
                                    + DecimalText.upTo(truck.overhang().inFeet(), 1)
                                    + " ft behind it are taken. Add the columns payload_lb, bed_ft and overhang_ft to house.csv."));
        return findings;
    }

    /** Lines that take two people. */
    public static boolean isHeavy(LoadLine line) {
        return line.count() > 0 && line.weight().pounds() / line.count() > LEAST_HEAVY_LB;
    }

    private static Finding caution(String id, String sentence) {
        return Checked.note(
                id,
                Severity.CAUTION,
                "load",
                sentence,
                Basis.commonPractice("vehicle's own plate and state law govern"));
    }
}
