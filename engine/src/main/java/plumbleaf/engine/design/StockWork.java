package plumbleaf.engine.design;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FenceRails;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Regrade;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.OpenBook;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.schedule.Quote;
import plumbleaf.engine.schedule.Quotes;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.takeoff.Assembly;
import plumbleaf.engine.takeoff.BayGoods;
import plumbleaf.engine.takeoff.PairTake;
import plumbleaf.engine.takeoff.PostTake;
import plumbleaf.engine.takeoff.Saws;
import plumbleaf.engine.takeoff.SlideTake;

/** Hands a designed yard to take-off and price. */
final class StockWork {
    /** Drain gravel under the concrete; common practice, no source. */
    static final Length GRAVEL = Length.inches(4);

    private StockWork() {}

    static Quote quote(Job job, OpenBook book, CutPlanner planner, Assembly assembly) {
        return Quotes.of(assembly, job, book, Saws.USUAL, planner, firstDay(job));
    }

    static Money total(Job job, OpenBook book, CutPlanner planner, Assembly assembly) {
        return Quotes.total(assembly, job, book, Saws.USUAL, planner, firstDay(job));
    }

    static Assembly assembly(
            Job job,
            Catalogue catalogue,
            Layout layout,
            List<PostDesign> posts,
            List<GateDesign> gates,
            RodPick rods,
            Picks picks) {
        List<PostTake> takes = new ArrayList<>();
        for (PostDesign post : posts)
            takes.addAll(post.footing()
                    .map(is -> PostTake.of(post.post(), post.section(), is.hole(), GRAVEL))
                    .orElseGet(() -> PostTake.undug(post.post(), post.section())));
        List<Assembly.StyledBay> bays = new ArrayList<>();
        List<Assembly.WovenRun> woven = new ArrayList<>();
        for (RunLayout run : layout.runs()) {
            if (run.style().isEmpty()) continue;
            FenceStyle style = run.style().get();
            PostStock post = picks.of(job.run(run.run())).post();
            Map<String, BayGoods.End> ends = BayGoods.endsOf(run);
            for (Bay bay : run.bays())
                bays.add(new Assembly.StyledBay(bay, style, BayGoods.of(bay, style, catalogue, ends, post))
                        .with(job.run(bay.run()).stain()));
            woven(job.run(run.run()), run, style, catalogue, picks).ifPresent(woven::add);
        }
        List<Assembly.BuiltLeaf> leaves = new ArrayList<>();
        for (GateDesign gate : gates) {
            for (Leaf leaf : gate.plan().leaves())
                leaves.add(new Assembly.BuiltLeaf(
                        leaf, gate.partsOf(leaf), job.run(gate.asked().run()).stain()));
        }
        List<PairTake> pairs = new ArrayList<>();
        for (GateDesign gate : gates) pairs.addAll(pair(gate, rods));
        return new Assembly(takes, bays, woven, leaves, pairs, slides(gates), job.gates(), regrades(gates));
    }

    static List<PairTake> pair(GateDesign gate, RodPick rods) {
        List<Leaf> leaves = gate.plan().leaves();
        if (leaves.size() != 2) return List.of();
        return gate.asked()
                .kind()
                .match(
                        swing -> List.<PairTake>of(),
                        pair -> List.of(PairTake.of(gate.id(), pair, rods.rod(gate.asked()), leaves)),
                        slide -> List.<PairTake>of(),
                        flagged -> List.<PairTake>of());
    }

    private static List<Regrade> regrades(List<GateDesign> gates) {
        List<Regrade> cuts = new ArrayList<>();
        for (GateDesign gate : gates) cuts.addAll(gate.plan().regrades());
        return cuts;
    }

    private static List<SlideTake> slides(List<GateDesign> gates) {
        List<SlideTake> slides = new ArrayList<>();
        for (GateDesign gate : gates)
            gate.plan().slide().ifPresent(is -> slides.add(new SlideTake(gate.id(), is.rollers())));
        return slides;
    }

    private static Optional<Assembly.WovenRun> woven(
            Run run, RunLayout layout, FenceStyle style, Catalogue catalogue, Picks picks) {
        Optional<FenceInfill.Fabric> fabric = style.infill()
                .match(
                        up -> Optional.empty(),
                        both -> Optional.empty(),
                        lying -> Optional.empty(),
                        panel -> Optional.empty(),
                        Optional::of,
                        mesh -> Optional.empty());
        return fabric.map(is -> new Assembly.WovenRun(
                layout,
                is,
                run.infill(),
                style.rails()
                        .match(
                                none -> Optional.empty(),
                                wood -> Optional.empty(),
                                steel -> catalogue.section(steel.section())),
                style.rails().match(none -> false, wood -> false, FenceRails.Steel::bottomWire),
                picks.of(run).post(),
                picks.of(run).terminal()));
    }

    /** The day agreed, and not before the locate ticket lets anyone dig; without either no day is promised. */
    private static Stated<LocalDate> firstDay(Job job) {
        List<LocateTicket> tickets = job.existing().tickets();
        if (tickets.isEmpty()) return job.site().start();
        LocalDate dig = tickets.get(0).digFrom();
        LocalDate agreed = job.site().start().or(dig);
        return Stated.of(agreed.isAfter(dig) ? agreed : dig);
    }
}
