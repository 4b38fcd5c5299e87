package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.job.Meeting;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;

/** What would hold a pair better where its leaves meet, each change worked out on the same leaves and offered only where it helps. */
final class MeetingRemedies {
    /** Sleeves are raised by this much at a time. */
    private static final double RAISE_STEP_IN = 0.5;

    /** Left between a raised sleeve and the leaf that swings over it. Judgement. */
    private static final double LEAST_OVER_IN = 0.5;

    /** What a centre stop reaches up the leaf. Judgement. */
    private static final double STOP_ON_LEAF_IN = 1;

    private final GateSite site;
    private final PairWork work;
    private final double now;
    private final List<Remedy> found = new ArrayList<>();

    private MeetingRemedies(GateSite site, PairWork work, double now) {
        this.site = site;
        this.work = work;
        this.now = now;
    }

    static List<Remedy> of(GateSite site, PairWork work, PairDesign pair) {
        MeetingRemedies all = new MeetingRemedies(site, work, pair.rod().utilisation());
        Meeting meeting = pair.asked();
        all.biggerRod(meeting, pair.rod().rod());
        all.raisedSleeve(meeting);
        if (meeting.rods() == 1)
            all.offer("second-rod", "give each leaf its own rod", meeting.withRods(2), "rods", "2");
        if (!meeting.hasStop()) all.centreStop(meeting);
        if (!meeting.topKeeper())
            all.offer(
                    "top-keeper",
                    "keep the tops overhead, where there is a beam to keep them at",
                    meeting.withTopKeeper(true),
                    "topKeeper",
                    "true");
        return List.copyOf(all.found);
    }

    /** What keeps the tops in line: one in a hundred of the height is the limit. */
    static List<Remedy> ofTop(GateSite site, PairWork work, double limitIn) {
        Meeting kept = work.asked().meeting().withTopKeeper(true);
        Offset top = work.design(work.tried(kept), Offset.ZERO, Offset.ZERO).topInService();
        return List.of(
                new Remedy(
                        "top-keeper",
                        "keep the tops overhead, where there is a beam to keep them at",
                        OptionalDouble.of(top.inches() / limitIn),
                        Optional.empty(),
                        edit(site.gate().id(), "topKeeper", "true")),
                new Remedy(
                        "stiffer-frame",
                        "take a wider or thicker tube for the frames",
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    static Optional<String> edit(String gate, String key, Length value) {
        return edit(gate, key, LengthText.exact(value.inches()));
    }

    private static Optional<String> edit(String gate, String key, String value) {
        return Optional.of("gates[" + gate + "].meeting." + key + "=" + value);
    }

    /** The next rod, then the first that holds. */
    private void biggerRod(Meeting meeting, RodModel rod) {
        boolean first = true;
        for (RodModel next : site.catalogue().rods()) {
            if (next.diameter().compareTo(rod.diameter()) <= 0) continue;
            PairWork.Tried tried = work.tried(meeting.withRod(next.id()));
            boolean holds = tried.rod().utilisation() <= 1;
            if (first || holds) add("bigger-rod", "take a " + next.name(), tried, "rod", next.id());
            first = false;
            if (holds) return;
        }
    }

    /** As little as holds, as much as the leaves pass over. */
    private void raisedSleeve(Meeting meeting) {
        DisplayUnits display = site.job().display();
        double most = work.place().clear().inches() - LEAST_OVER_IN;
        Optional<Meeting> best = Optional.empty();
        for (double up = meeting.sleeveAbove().inches() + RAISE_STEP_IN; up <= most; up += RAISE_STEP_IN) {
            best = Optional.of(meeting.withSleeveAbove(Length.inches(up)));
            if (work.tried(best.get()).rod().utilisation() <= 1) break;
        }
        best.ifPresent(raised -> offer(
                "raise-sleeve",
                "raise the mouth of the sleeve to " + display.length(raised.sleeveAbove())
                        + " above the ground, so that less of the rod stands free",
                raised,
                "sleeveAbove",
                LengthText.exact(raised.sleeveAbove().inches())));
    }

    private void centreStop(Meeting meeting) {
        Length height = Length.inches(Math.ceil(work.place().toGuide().inches() + STOP_ON_LEAF_IN));
        offer(
                "centre-stop",
                "set a center stop " + site.job().display().length(height)
                        + " high for both leaves to close against, on the side they do not swing to",
                meeting.withStop(height),
                "stop",
                LengthText.exact(height.inches()));
    }

    private void offer(String id, String words, Meeting changed, String key, String value) {
        add(id, words, work.tried(changed), key, value);
    }

    private void add(String id, String words, PairWork.Tried tried, String key, String value) {
        double ratio = tried.rod().utilisation();
        if (ratio >= now) return;
        found.add(new Remedy(
                id,
                words,
                OptionalDouble.of(ratio),
                Optional.empty(),
                edit(site.gate().id(), key, value)));
    }
}
