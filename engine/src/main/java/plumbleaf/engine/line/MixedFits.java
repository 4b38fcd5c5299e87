package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.FitPart;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Settles a mixed fit: every line of sight, from corner, gate or end to the next, is racked where no bay is steeper than its panel and brackets take and a line with
 * bends at its posts alone keeps the gap to the ground; else all of it is stepped, unless steps miss that gap by more than bays on the ground's own chords do. Never
 * both within a line of sight. Common practice, no source. Check: MixedFitCheck.
 */
final class MixedFits {
    private final Run run;
    private final Profile profile;
    private final Optional<FenceInfill.Panel> panel;
    private final Length largestGap;
    private final Length step;
    private final LineFindings say;
    private final List<Finding> findings = new ArrayList<>();

    /** @param step what steps are whole multiples of */
    MixedFits(Run run, Profile profile, Optional<FenceStyle> style, Length largestGap, Length step, LineFindings say) {
        this.run = run;
        this.profile = profile;
        this.panel = style.flatMap(made -> made.infill()
                .match(
                        up -> Optional.empty(),
                        both -> Optional.empty(),
                        lying -> Optional.empty(),
                        Optional::of,
                        f -> Optional.empty(),
                        m -> Optional.empty()));
        this.largestGap = largestGap;
        this.step = step;
        this.say = say;
    }

    List<Finding> findings() {
        return findings;
    }

    /** The run with a way of its own for every line of sight. */
    Run settled(List<Stop> stops) {
        boolean any = run.fit() == Fit.MIXED || run.fits().stream().anyMatch(part -> part.fit() == Fit.MIXED);
        if (!any) return run;
        List<FitPart> parts = new ArrayList<>();
        int start = 0;
        for (int i = 1; i < stops.size(); i++) {
            if (RunPosts.isOpen(stops.get(i - 1), stops.get(i))) {
                start = i;
                continue;
            }
            boolean sightEnds = i + 1 == stops.size()
                    || stops.get(i).role() == PostRole.CORNER
                    || RunPosts.isOpen(stops.get(i), stops.get(i + 1))
                    || asked(stops, i) != asked(stops, i - 1);
            if (!sightEnds) continue;
            parts.add(part(stops.subList(start, i + 1), asked(stops, start)));
            start = i;
        }
        return run.fitted(Fit.RACKED, parts);
    }

    private Fit asked(List<Stop> stops, int bay) {
        return run.fitAt((stops.get(bay).stationIn() + stops.get(bay + 1).stationIn()) / 2);
    }

    private FitPart part(List<Stop> sight, Fit asked) {
        Length from = new Length(Math.max(0, sight.get(0).stationIn()));
        Length to = new Length(sight.get(sight.size() - 1).stationIn());
        if (asked != Fit.MIXED) return new FitPart(from, to, asked);
        double steepest = 0;
        for (int i = 1; i < sight.size(); i++)
            steepest = Math.max(
                    steepest,
                    Math.abs(profile.gradeBetween(
                                    new Offset(sight.get(i - 1).stationIn()),
                                    new Offset(sight.get(i).stationIn()))
                            .ratio()));
        double most = most();
        boolean tooSteep = steepest > most;
        if (tooSteep || Shaping.canBeFaired(run, profile, largestGap, sight)) {
            Fit fit = tooSteep ? Fit.STEPPED : Fit.RACKED;
            findings.add(say.settled(run.id(), from, to, fit, steepest, most));
            return new FitPart(from, to, fit);
        }
        return nearer(sight, from, to);
    }

    /** Where no fair line keeps the gap: the way that misses it by less, steps where both are alike. */
    private FitPart nearer(List<Stop> sight, Length from, Length to) {
        Length racked = missed(sight, Fit.RACKED);
        Length stepped = missed(sight, Fit.STEPPED);
        Fit fit = racked.compareTo(stepped) < 0 ? Fit.RACKED : Fit.STEPPED;
        findings.add(say.settledByGap(run.id(), from, to, fit, racked, stepped));
        return new FitPart(from, to, fit);
    }

    private Length missed(List<Stop> sight, Fit fit) {
        return new Shaping(run, profile, largestGap, step, say).missed(sight, fit);
    }

    /** The steepest that a bay can be racked, rise over run. */
    private double most() {
        return panel.map(made -> Math.min(
                        made.rack().ratio(), StrictMath.tan(made.swivel().radians())))
                .orElse(Double.POSITIVE_INFINITY);
    }
}
