package plumbleaf.engine.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.SpacingLimit;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.strength.PostSpacing;
import plumbleaf.engine.strength.PostStrength;
import plumbleaf.engine.wind.LegWind;

/**
 * How far apart the wind lets the posts of engineered runs stand. A customary run keeps its own longest bay, and its rated gust says what that comes to.
 *
 * <p>What a post bends with also counts its weight, so that room for the weight of the longest bay is kept: with {@code Pr/(2 Pc) + Mr/Mc = 1} the moment may
 * be {@code Mc (1 - Pr/(2 Pc))}.
 * Source: AISC 360-22 H1-1b. Check: WindSpacingTest.
 */
final class WindSpacing implements SpacingLimit {
    private final Map<String, Engineered> runs = new LinkedHashMap<>();

    private record Engineered(RunWind wind, List<LegWind> legs, Moment allowable, Length most) {}

    /** @param winds on the runs of the job, in their order */
    WindSpacing(Job job, Catalogue catalogue, Picks picks, List<RunWind> winds) {
        for (int i = 0; i < job.runs().size(); i++) {
            Run run = job.runs().get(i);
            Optional<FenceStyle> style = catalogue.style(run.style());
            boolean engineered = job.site().forcesEngineered() || job.basisOf(run) == DesignBasis.ENGINEERED;
            if (!engineered || style.isEmpty()) continue;
            RunWind wind = winds.get(i);
            runs.put(
                    run.id(),
                    new Engineered(
                            wind,
                            wind.designOfLegs(),
                            allowable(run, picks.of(run), style.get(), catalogue),
                            run.maxBay()));
        }
    }

    private static Moment allowable(Run run, PickedRun pick, FenceStyle style, Catalogue catalogue) {
        Length height = run.infill().plus(run.bottomGap());
        double down = pick.post().weightOf(height).pounds()
                + BayWeight.atMost(run.maxBay(), run.infill(), style, catalogue).pounds();
        PostStrength strength = PostStrength.of(pick.post());
        return strength.allowableInWind().times(strength.roomBeside(Force.pounds(down), height));
    }

    @Override
    public Length longestFrom(String run, Offset from) {
        Engineered engineered = runs.get(run);
        if (engineered == null) return NONE.longestFrom(run, from);
        int leg = engineered.wind().legAt(from);
        return PostSpacing.longestFrom(
                engineered.legs().get(leg),
                engineered.wind().legLength(leg),
                engineered.wind().alongLeg(leg, from),
                engineered.allowable(),
                engineered.most());
    }
}
