package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.Allowance;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.MoistureReading;
import plumbleaf.engine.job.OldFence;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.labour.Labours;
import plumbleaf.engine.labour.Work;
import plumbleaf.engine.labour.Works;
import plumbleaf.engine.pricing.ChargePer;
import plumbleaf.engine.pricing.Counts;
import plumbleaf.engine.pricing.Crew;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.pricing.Pricing;
import plumbleaf.engine.pricing.Terms;
import plumbleaf.engine.takeoff.Assembly;
import plumbleaf.engine.takeoff.LoadList;
import plumbleaf.engine.takeoff.Saws;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.Takeoffs;

/** From an assembly to a price: take-off, hours, days, trips, build-up. */
public final class Quotes {
    /** Loose soil takes more room than it did in the ground: 1.25 to 1.3, common practice, no source. */
    private static final double SWELL = 1.3;

    /** Old wood fence with rails and posts by the foot, dry: judgement. */
    private static final double OLD_FENCE_LB_PER_FT = 15;

    /** An old plug: 10 x 30 in. of concrete, 205 lb. */
    private static final double PLUG_LB = 205;

    private static final double LB_PER_TON = 2000;

    /** Moisture content below which most stains for fences may be put on; the can's own limit goes before it. Common practice, no source. */
    private static final double DRY_ENOUGH = 0.15;

    private Quotes() {}

    /** @param start first day of work, where one is known */
    public static Quote of(
            Assembly assembly, Job job, PriceBook book, Saws saws, CutPlanner planner, Stated<LocalDate> start) {
        Takeoff takeoff = Takeoffs.of(assembly.needs(), book, saws, planner);
        List<Leaf> leaves =
                assembly.leaves().stream().map(Assembly.BuiltLeaf::leaf).toList();
        LoadList load = LoadList.of(takeoff, leaves, book.rules().truck());
        List<Work> works = new ArrayList<>(Works.of(assembly, job.site().soil()));
        for (OldFence fence : job.existing().fences()) works.addAll(Works.tearOut(fence));
        Crew crew = book.crew();
        Pace pace = new Pace(crew.people(), crew.hoursPerDay(), crew.cureDays());
        Schedule schedule = Schedules.of(Labours.of(works, book.labour()), pace, start, isDry(job));
        int trips = (int) Math.ceil(schedule.siteDays());
        works.add(Works.trips(trips));
        Labour labour = Labours.of(works, book.labour());
        Counts counts =
                new Counts(schedule.siteDays(), trips, assembly.holes(), hauledTons(job), assembly.spoilYards(SWELL));
        Price price = Pricing.of(takeoff, labour, counts, book, Terms.of(job.money(), schedule.siteDays()));
        return new Quote(NeedDays.on(takeoff, load, schedule), load, labour, schedule, price, notes(job, book));
    }

    /** By the latest reading. */
    private static boolean isDry(Job job) {
        List<MoistureReading> readings = job.log().moisture();
        return !readings.isEmpty() && readings.get(readings.size() - 1).moisture() <= DRY_ENOUGH;
    }

    private static List<Finding> notes(Job job, PriceBook book) {
        List<Finding> notes = new ArrayList<>();
        if (book.isEmpty())
            notes.add(note("There is no price book " + book.id()
                    + " here, so nothing is priced. Name one that is, or bring it in."));
        for (Allowance allowance : job.money().offer().allowances()) {
            boolean known = book.charges().stream()
                    .anyMatch(charge ->
                            charge.per() == ChargePer.ALLOWANCE && charge.id().equals(allowance.charge()));
            if (!known)
                notes.add(note("The price book has no allowance " + allowance.charge()
                        + "; the price is without it. Add it to the charges of the book, by allowance."));
        }
        return notes;
    }

    private static Finding note(String sentence) {
        return Checked.note("money.book", Severity.CANNOT_SAY, "job", sentence, Basis.judgement("price book"));
    }

    /** The old fence, and the plugs of its posts where it has any. */
    private static double hauledTons(Job job) {
        double pounds = 0;
        for (OldFence fence : job.existing().fences()) {
            pounds += fence.length().inFeet() * OLD_FENCE_LB_PER_FT;
            boolean hasPlugs = fence.concrete() && !fence.pitch().isZero();
            if (hasPlugs)
                pounds += (Math.floor(fence.length().inches() / fence.pitch().inches()) + 1) * PLUG_LB;
        }
        return pounds / LB_PER_TON;
    }
}
