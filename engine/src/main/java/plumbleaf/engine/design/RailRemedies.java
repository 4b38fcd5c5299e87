package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.job.RunSides;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;

/**
 * What cures rails, or boards that lie from post to post, that bend too much: posts closer where they fail and nowhere else, and the same all along to hold its
 * price against. The run is laid out and its rails are checked again with each before it is offered. Panels keep the length they are sold in. Check: RailRemediesTest.
 */
final class RailRemedies {
    static final Set<String> RAILS =
            new LinkedHashSet<>(List.of("rail.wind", "rail.weight", "board.wind", "board.weight"));

    /** Closer than this nobody sets posts for a rail's sake: a stronger rail is the answer. Judgement. */
    private static final double LEAST_IN = 36;

    /** Bays are asked for in whole steps of this, as a tape is read. */
    private static final double STEP_IN = 3;

    /** Beside a free end the wind of a shorter bay is stronger, so that the first spacing may not do. */
    private static final int MOST_TRIES = 4;

    /** A run that fails in more places than this is built alike all along. Judgement: nobody marks more of them on a plan. */
    private static final int MOST_STRETCHES = 3;

    private final Job job;
    private final YardWork yard;
    private final Function<Job, Optional<YardWork>> again;
    private int trials;

    /** @param again lays a changed job out; empty where one of its gates finds no place */
    RailRemedies(Job job, YardWork yard, Function<Job, Optional<YardWork>> again) {
        this.job = job;
        this.yard = yard;
        this.again = again;
        this.trials =
                RemedyPrices.MOST_POSTS / Math.max(1, yard.layout().posts().size());
    }

    private record Stretch(double fromIn, double toIn) {}

    /** The findings, those on rails with what cures them; one of a run names its worst bay. */
    List<Finding> offered(List<Finding> findings) {
        Map<String, List<Remedy>> offers = new LinkedHashMap<>();
        List<Finding> said = new ArrayList<>();
        for (Finding finding : findings) {
            boolean mine = finding instanceof Checked
                    && finding.severity() == Severity.MUST_FIX
                    && RAILS.contains(finding.id());
            Optional<Run> run = mine ? runOf(finding.part()) : Optional.empty();
            List<Remedy> cures = run.map(is -> offers.computeIfAbsent(is.id(), id -> cures(is)))
                    .orElse(List.of());
            said.add(cures.isEmpty() ? finding : ((Checked) finding).withRemedies(cures));
        }
        return said;
    }

    private Optional<Run> runOf(String bay) {
        return job.runs().stream()
                .filter(run -> yard.layout().run(run.id()).bays().stream()
                        .anyMatch(each -> each.id().equals(bay)))
                .findFirst();
    }

    private List<Remedy> cures(Run run) {
        List<BayWork.RailUse> uses = yard.railUses(run);
        List<BayWork.RailUse> failing =
                uses.stream().filter(BayWork.RailUse::fails).toList();
        double most = Double.MAX_VALUE;
        for (BayWork.RailUse use : failing)
            most = Math.min(most, use.bay().level().inches() / Math.sqrt(Math.max(1, use.ratio())));
        List<Remedy> cures = new ArrayList<>();
        if (failing.size() < uses.size() && stretches(failing, most).size() <= MOST_STRETCHES)
            closer(most, bay -> there(run, failing, bay)).ifPresent(cures::add);
        closer(most, bay -> everywhere(run, bay)).ifPresent(cures::add);
        return cures;
    }

    /** The first spacing that holds, in steps downward from where bending, which grows with its square, would do. */
    private static Optional<Remedy> closer(double mostIn, Function<Length, Optional<Remedy>> offer) {
        double bayIn = Math.floor(mostIn / STEP_IN) * STEP_IN;
        for (int tries = 0; tries < MOST_TRIES && bayIn >= LEAST_IN; tries++, bayIn -= STEP_IN) {
            Optional<Remedy> holds = offer.apply(Length.inches(bayIn));
            if (holds.isPresent()) return holds;
        }
        return Optional.empty();
    }

    /** Failing bays, neighbors made one, each begun so far before that no bay of the old length reaches in. */
    private static List<Stretch> stretches(List<BayWork.RailUse> failing, double bayIn) {
        List<Stretch> stretches = new ArrayList<>();
        for (BayWork.RailUse use : failing) {
            double from = Math.max(0, use.bay().start().inches() - bayIn);
            double to = use.bay().end().inches();
            int last = stretches.size() - 1;
            if (last >= 0 && stretches.get(last).toIn() >= from)
                stretches.set(last, new Stretch(stretches.get(last).fromIn(), to));
            else stretches.add(new Stretch(from, to));
        }
        return stretches;
    }

    private Optional<Remedy> there(Run run, List<BayWork.RailUse> failing, Length bay) {
        List<RunSide> sides = run.sides();
        List<String> where = new ArrayList<>();
        double endIn = yard.layout().run(run.id()).line().line().length().inches();
        for (Stretch stretch : stretches(failing, bay.inches())) {
            Length from = Length.inches(Math.floor(stretch.fromIn()));
            Length to = Length.inches(Math.min(Math.ceil(stretch.toIn()), endIn));
            sides = RunSides.changed(sides, from, to, side -> closer(side, bay));
            where.add("station " + job.display().length(from) + " to "
                    + job.display().length(to));
        }
        return tried(
                run,
                "closer-posts-there",
                "set the posts of " + run.id() + " at most " + job.display().length(bay) + " apart from "
                        + String.join(" and from ", where) + ", the rest as they are",
                "runs[" + run.id() + "].sides=" + RunSides.text(sides));
    }

    /** A side that asks for less already keeps it. */
    private static RunSide closer(RunSide side, Length bay) {
        return side.maxBay().or(bay).compareTo(bay) < 0 ? side : side.withMaxBay(bay);
    }

    private Optional<Remedy> everywhere(Run run, Length bay) {
        return tried(
                run,
                "closer-posts",
                "set the posts of " + run.id() + " at most " + job.display().length(bay) + " apart all along",
                "runs[" + run.id() + "].maxBay=" + LengthText.exact(bay.inches()));
    }

    /** Empty where rails of the run still fail, or its layout does. */
    private Optional<Remedy> tried(Run run, String id, String words, String edit) {
        if (trials-- <= 0) return Optional.empty();
        Optional<Job> changed = RemedyEdit.on(job, edit);
        Optional<YardWork> then = changed.flatMap(again);
        if (then.isEmpty()) return Optional.empty();
        List<BayWork.RailUse> uses = then.get().railUses(changed.get().run(run.id()));
        boolean holds =
                uses.stream().noneMatch(BayWork.RailUse::fails) && mustFix(yard).containsAll(mustFix(then.get()));
        double ratio = uses.stream().mapToDouble(BayWork.RailUse::ratio).max().orElse(0);
        return holds
                ? Optional.of(new Remedy(
                        id,
                        words + ": then " + DecimalText.fixed(ratio, 2),
                        OptionalDouble.of(ratio),
                        Optional.empty(),
                        Optional.of(edit)))
                : Optional.empty();
    }

    private static Set<String> mustFix(YardWork yard) {
        Set<String> ids = new LinkedHashSet<>();
        for (Finding finding : yard.layout().findings())
            if (finding.severity() == Severity.MUST_FIX) ids.add(finding.id());
        return ids;
    }
}
