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
 * bends at its posts alone keeps the gap to the ground; else all of it is stepped. Never both within a line of sight. Common practice, no source. Check: MixedFitCheck.
 */
final class MixedFits {
    private final Run run;
    private final Profile profile;
    private final Optional<FenceInfill.Panel> panel;
    private final Length largestGap;
    private final LineFindings say;
    private final List<Finding> findings = new ArrayList<>();

    MixedFits(Run run, Profile profile, Optional<FenceStyle> style, Length largestGap, LineFindings say) {
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
        boolean fair = !tooSteep && Shaping.canBeFaired(run, profile, largestGap, sight);
        Fit fit = fair ? Fit.RACKED : Fit.STEPPED;
        findings.add(say.settled(run.id(), from, to, fit, steepest, most, tooSteep));
        return new FitPart(from, to, fit);
    }

    /** The steepest that a bay can be racked, rise over run. */
    private double most() {
        return panel.map(made -> Math.min(
                        made.rack().ratio(), StrictMath.tan(made.swivel().radians())))
                .orElse(Double.POSITIVE_INFINITY);
    }
}
