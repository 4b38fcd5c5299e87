package plumbleaf.engine.design;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.job.AccessibleWay;
import plumbleaf.engine.job.Building;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.job.NearHouse;
import plumbleaf.engine.job.NoDig;
import plumbleaf.engine.job.Overnight;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.SightTriangle;
import plumbleaf.engine.job.Use;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.rule.AccessGate;
import plumbleaf.engine.rule.NearBuilding;
import plumbleaf.engine.rule.PlaceRules;
import plumbleaf.engine.rule.RuleTable;
import plumbleaf.engine.rule.SightLine;
import plumbleaf.engine.schedule.PlannedTask;
import plumbleaf.engine.schedule.Schedule;

/** The fence and its gates, as laid out, against what the place asks for. Check: SiteRulesTest. */
final class PlaceChecks {
    private final Job job;
    private final Ground ground;
    private final Layout layout;
    private final RuleTable rules;

    PlaceChecks(Job job, Ground ground, Layout layout, RuleTable rules) {
        this.job = job;
        this.ground = ground;
        this.layout = layout;
        this.rules = rules;
    }

    List<Finding> findings(List<GateDesign> gates, Schedule schedule) {
        List<Finding> findings = new ArrayList<>();
        for (SightTriangle sight : job.rules().sights()) findings.addAll(sight(sight));
        for (NearHouse near : job.rules().nearHouse()) findings.addAll(nearHouse(near));
        findings.addAll(LotLines.of(job, layout, rules));
        for (AccessibleWay way : job.rules().accessible()) {
            for (GateDesign gate : gates) if (gate.id().equals(way.gate())) findings.addAll(accessible(way, gate));
        }
        findings.addAll(digging(schedule));
        findings.addAll(overnight(schedule));
        return findings;
    }

    /** The highest of the fence in the triangle, run by run, and each gate that stands in it. */
    private List<Finding> sight(SightTriangle sight) {
        List<Finding> findings = new ArrayList<>();
        for (Run run : job.runs()) {
            RunLayout laid = layout.run(run.id());
            double most = Double.NEGATIVE_INFINITY;
            double from = Double.POSITIVE_INFINITY;
            double to = Double.NEGATIVE_INFINITY;
            for (Bay bay : laid.bays()) {
                double length = bay.level().inches();
                SightLine inside = SightLine.of(sight, laid.startOf(bay), laid.endOf(bay));
                if (!inside.isInside()) continue;
                double first = bay.start().inches() + inside.from() * length;
                double last = bay.start().inches() + inside.to() * length;
                from = Math.min(from, first);
                to = Math.max(to, last);
                most = Math.max(most, highest(run.id(), bay, first, last));
            }
            if (to > from)
                findings.add(
                        PlaceRules.sight(run.id(), sight, new Offset(most), new Offset(from), new Offset(to), rules));
        }
        for (Gate gate : job.gates()) {
            Length end = gate.station().plus(gate.opening());
            RunLayout laid = layout.run(gate.run());
            Offset left = gate.leftOfLine(job.run(gate.run()).outside());
            PlanPoint first = laid.line().line().pointAt(gate.station().asOffset(), left);
            PlanPoint last = laid.line().line().pointAt(end.asOffset(), left);
            if (!SightLine.of(sight, first, last).isInside()) continue;
            Length top = gate.leaf().infill().plus(gate.leaf().bottomGap());
            findings.add(PlaceRules.sight(
                    gate.id(), sight, top.asOffset(), gate.station().asOffset(), end.asOffset(), rules));
        }
        return findings.isEmpty() ? List.of(PlaceRules.sightClear(sight, rules)) : findings;
    }

    private double highest(String run, Bay bay, double from, double to) {
        Profile profile = ground.profile(run);
        double most = Double.NEGATIVE_INFINITY;
        double rise =
                (bay.topTo().inches() - bay.topFrom().inches()) / bay.level().inches();
        for (ProfilePoint point : profile.between(new Offset(from), new Offset(to))) {
            double top = bay.topFrom().inches()
                    + rise * (point.station().inches() - bay.start().inches());
            most = Math.max(most, top - point.elevation().inches());
        }
        return most;
    }

    private List<Finding> nearHouse(NearHouse near) {
        List<Finding> findings = new ArrayList<>();
        for (Building building : near.buildings()) {
            for (Run run : job.runs()) {
                RunLayout laid = layout.run(run.id());
                Length nearest = Length.inches(1e6);
                for (Bay bay : laid.bays()) {
                    Length away = NearBuilding.distance(laid.startOf(bay), laid.endOf(bay), building.corners());
                    if (away.compareTo(nearest) < 0) nearest = away;
                }
                if (nearest.compareTo(near.strip()) >= 0) continue;
                boolean burns = laid.style().map(PlaceChecks::burns).orElse(true);
                findings.add(PlaceRules.nearHouse(
                        run.id(), building.what(), nearest, burns, near.strip(), near.required(), rules));
            }
        }
        return findings;
    }

    private static boolean burns(FenceStyle style) {
        boolean woodFill = style.infill()
                .match(up -> true, both -> true, lying -> true, panel -> false, fabric -> false, mesh -> false);
        return woodFill || style.rails().match(none -> false, wood -> true, steel -> false);
    }

    private List<Finding> accessible(AccessibleWay way, GateDesign gate) {
        Length clear = AccessGate.clearOf(
                gate.plan().opening().clear(),
                gate.asked().leaf().hingeGap(),
                gate.build().frame().depth(),
                Length.ZERO);
        boolean pool = job.site().uses().contains(Use.POOL);
        return AccessGate.way(
                way,
                clear,
                gate.asked().latch().height(),
                pool,
                gate.asked().leaf().bottomGap(),
                rules);
    }

    /** Posts are dug, and old concrete comes out, on days that a ticket covers. */
    private List<Finding> digging(Schedule schedule) {
        List<Finding> findings = new ArrayList<>();
        List<LocateTicket> tickets = job.existing().tickets();
        if (tickets.isEmpty()) return findings;
        for (PlannedTask task : schedule.tasks()) {
            boolean digs = task.key().equals(Phase.SET.key())
                    || (task.key().equals(Phase.TEAR_OUT.key())
                            && job.existing().fences().stream().anyMatch(old -> old.concrete()));
            if (!digs || !task.first().isSaid() || !task.last().isSaid()) continue;
            LocalDate first = task.first().or(LocalDate.ofEpochDay(0));
            LocalDate last = task.last().or(LocalDate.ofEpochDay(0));
            Optional<LocateTicket> covers = tickets.stream()
                    .filter(ticket -> !first.isBefore(ticket.digFrom()) && !last.isAfter(ticket.validThrough()))
                    .findFirst();
            for (Run run : job.runs())
                for (NoDig marked : run.noDig())
                    marked.marked(job.existing())
                            .filter(ticket -> first.isBefore(ticket.digFrom()) || last.isAfter(ticket.validThrough()))
                            .ifPresent(ticket -> findings.add(
                                    PlaceRules.outsideMark(run.id(), marked, task.name(), first, last, ticket)));
            findings.add(
                    covers.isPresent()
                            ? PlaceRules.insideTicket(task.name(), first, last, covers.get())
                            : PlaceRules.outsideTicket(
                                    task.name(), first, last, tickets.stream().findFirst()));
        }
        return findings;
    }

    private List<Finding> overnight(Schedule schedule) {
        List<Finding> findings = new ArrayList<>();
        double line = 0;
        for (Run run : job.runs())
            line += layout.run(run.id()).line().line().length().inches();
        Length whole = Length.inches(line);
        for (Overnight kept : job.rules().overnight())
            findings.add(PlaceRules.overnight(kept, whole, schedule.siteDays(), rules));
        if (job.rules().overnight().isEmpty() && job.site().uses().contains(Use.POOL))
            findings.add(PlaceRules.poolOvernight(whole, schedule.siteDays(), rules));
        return findings;
    }
}
