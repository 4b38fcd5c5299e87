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
import plumbleaf.engine.job.Access;
import plumbleaf.engine.job.Allowance;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.MoistureReading;
import plumbleaf.engine.job.OldFence;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.labour.Labours;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.labour.Reaching;
import plumbleaf.engine.labour.Work;
import plumbleaf.engine.labour.Works;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.ChargePer;
import plumbleaf.engine.pricing.Counts;
import plumbleaf.engine.pricing.Crew;
import plumbleaf.engine.pricing.OpenBook;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.pricing.Pricing;
import plumbleaf.engine.pricing.Terms;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.takeoff.Assembly;
import plumbleaf.engine.takeoff.LoadList;
import plumbleaf.engine.takeoff.Saws;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.Takeoffs;
import plumbleaf.engine.takeoff.TornOut;

/** From an assembly to a price: take-off, hours, days, trips, build-up. */
public final class Quotes {
    /** Loose soil takes more room than it did in the ground: 1.25 to 1.3, common practice, no source. */
    private static final double SWELL = 1.3;

    private static final double LB_PER_TON = 2000;

    /** Moisture content below which most stains for fences may be put on; the can's own limit goes before it. Common practice, no source. */
    private static final double DRY_ENOUGH = 0.15;

    private Quotes() {}

    /** @param start first day of work, where one is known */
    public static Quote of(
            Assembly assembly, Job job, PriceBook book, Saws saws, CutPlanner planner, Stated<LocalDate> start) {
        return of(assembly, job, OpenBook.of(book), saws, planner, start);
    }

    public static Quote of(
            Assembly assembly, Job job, OpenBook open, Saws saws, CutPlanner planner, Stated<LocalDate> start) {
        PriceBook book = open.book();
        Takeoff takeoff = Takeoffs.of(assembly.needs(), open, saws, planner);
        List<Leaf> leaves =
                assembly.leaves().stream().map(Assembly.BuiltLeaf::leaf).toList();
        LoadList load = LoadList.of(takeoff, leaves, book.rules().truck());
        Done done = done(assembly, job, open, start);
        return new Quote(
                NeedDays.on(takeoff, load, done.schedule()),
                load,
                done.torn(),
                done.labour(),
                done.schedule(),
                price(assembly, job, book, takeoff, done),
                notes(job, book, done.torn(), access(assembly, job, open)));
    }

    /** What a quote would come to, without its cut plans laid out, its load or its days: a remedy's price is the difference of two. */
    public static Money total(
            Assembly assembly, Job job, OpenBook open, Saws saws, CutPlanner planner, Stated<LocalDate> start) {
        Takeoff takeoff = Takeoffs.of(assembly.needs(), open, saws, planner::order);
        return price(assembly, job, open.book(), takeoff, done(assembly, job, open, start))
                .total();
    }

    /** All that is done, and when. */
    private record Done(TornOut torn, Labour labour, Schedule schedule, int trips) {}

    private static Done done(Assembly assembly, Job job, OpenBook open, Stated<LocalDate> start) {
        PriceBook book = open.book();
        List<Work> works = new ArrayList<>(Reaching.of(
                Works.of(assembly, job.site().soil()), assembly, job.site().access(), SWELL));
        TornOut torn = TornOut.of(job.existing(), book.rules().truck());
        for (OldFence fence : job.existing().fences()) works.addAll(Works.tearOut(fence));
        if (torn.plugs() > 0) works.add(Work.of("pull-plug", torn.plugs(), "old concrete"));
        Crew crew = book.crew();
        Pace pace = new Pace(crew.people(), crew.hoursPerDay(), crew.cureDays());
        Schedule schedule = Schedules.of(Labours.of(works, open.rates()), pace, start, isDry(job), cold(job));
        int trips = (int) Math.ceil(schedule.siteDays());
        works.add(Works.trips(trips));
        return new Done(torn, Labours.of(works, open.rates()), schedule, trips);
    }

    private static Price price(Assembly assembly, Job job, PriceBook book, Takeoff takeoff, Done done) {
        double siteDays = done.schedule().siteDays();
        Counts counts = new Counts(
                siteDays,
                done.trips(),
                assembly.holes(),
                done.torn().all().pounds() / LB_PER_TON,
                assembly.spoilYards(SWELL));
        return Pricing.of(takeoff, done.labour(), counts, book, Terms.of(job.money(), siteDays));
    }

    /** What the way to the line does to the hours. */
    private static List<Finding> access(Assembly assembly, Job job, OpenBook book) {
        Access access = job.site().access();
        if (!access.isByHand() && access.carry().isZero()) return List.of();
        List<Work> works = Works.of(assembly, job.site().soil());
        Labour open = Labours.of(works, book.rates());
        Labour reached = Labours.of(Reaching.of(works, assembly, access, SWELL), book.rates());
        StringBuilder words = new StringBuilder();
        if (access.isByHand())
            words.append("The way to the line is ")
                    .append(LengthText.inchesOnly(
                            access.passage().or(Length.ZERO).inches()))
                    .append(" wide and the digger needs ")
                    .append(LengthText.inchesOnly(access.machine().inches()))
                    .append(": holes are dug by hand. ");
        if (!access.carry().isZero())
            words.append("Concrete, soil and posts are carried ")
                    .append(LengthText.feetAndInches(access.carry().inches()))
                    .append(". ");
        words.append("Digging and setting takes ")
                .append(DecimalText.fixed(reached.hours(Phase.SET), 1))
                .append(" hours of one person instead of ")
                .append(DecimalText.fixed(open.hours(Phase.SET), 1))
                .append(".");
        return List.of(Checked.note(
                "schedule.access", Severity.PASS, "site", words.toString(), Basis.judgement("the way to the line")));
    }

    private static ColdWeather cold(Job job) {
        return new ColdWeather(job.site().frost().months(), ColdWeather.USUAL_CURE_DAYS);
    }

    /** By the latest reading. */
    private static boolean isDry(Job job) {
        List<MoistureReading> readings = job.log().moisture();
        return !readings.isEmpty() && readings.get(readings.size() - 1).moisture() <= DRY_ENOUGH;
    }

    private static List<Finding> notes(Job job, PriceBook book, TornOut torn, List<Finding> access) {
        List<Finding> notes = new ArrayList<>(access);
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
        if (!torn.isNothing()) notes.add(tearOut(book, torn));
        return notes;
    }

    private static Finding tearOut(PriceBook book, TornOut torn) {
        StringBuilder words = new StringBuilder("The old fence weighs about ")
                .append(DecimalText.whole(torn.fence().pounds()))
                .append(" lb");
        if (!torn.treated().isZero())
            words.append(", of that ")
                    .append(DecimalText.whole(torn.treated().pounds()))
                    .append(" lb treated or painted, which goes apart");
        if (torn.plugs() > 0)
            words.append("; ")
                    .append(torn.plugs())
                    .append(torn.plugs() == 1 ? " plug of concrete, " : " plugs of concrete, ")
                    .append(DecimalText.whole(torn.concrete().pounds()))
                    .append(" lb");
        if (torn.left() > 0)
            words.append("; ").append(torn.left()).append(torn.left() == 1 ? " plug stays" : " plugs stay");
        words.append(": ")
                .append(torn.loads())
                .append(torn.loads() == 1 ? " load of at most " : " loads of at most ")
                .append(DecimalText.whole(book.rules().truck().payload().pounds()))
                .append(" lb.");
        return Checked.note("haul.loads", Severity.PASS, "site", words.toString(), Basis.job("the old fence"));
    }

    private static Finding note(String sentence) {
        return Checked.note("money.book", Severity.CANNOT_SAY, "job", sentence, Basis.judgement("price book"));
    }
}
