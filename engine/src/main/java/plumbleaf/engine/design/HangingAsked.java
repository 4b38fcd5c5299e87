package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;

/**
 * What of a gate's hanging a search leaves open besides its build.
 *
 * @param hinges every hinge that is stocked instead of the one the job says
 * @param sides both sides the hinges may be on
 * @param tails of a slide, longer and shorter tails than the job says; with {@code hinges} every set of rollers too
 */
public record HangingAsked(boolean hinges, boolean sides, boolean tails) {
    public static final HangingAsked NOTHING = new HangingAsked(false, false, false);

    /** Shares of the opening that a tail has, up to the next 6 in. Judgement. */
    private static final List<Double> TAILS = List.of(0.4, 0.5, 0.6);

    private static final double STEP_IN = 6;

    public HangingAsked(boolean hinges, boolean sides) {
        this(hinges, sides, false);
    }

    /** The gate with every tail in question, as the job says it first: where its rear post stands is another yard each time. */
    List<Gate> gates(Gate gate) {
        List<Gate> all = new ArrayList<>(List.of(gate));
        if (!tails) return all;
        for (double share : TAILS) {
            Length tail = Length.inches(Math.ceil(share * gate.opening().inches() / STEP_IN - 1e-9) * STEP_IN);
            gate.kind()
                    .match(
                            swing -> false,
                            pair -> false,
                            slide -> slide.spec().tail().equals(tail)
                                    ? false
                                    : all.add(gate.withKind(new GateKind.Slide(
                                            slide.opensTo(), slide.spec().withTail(tail)))),
                            flagged -> false);
        }
        return all;
    }

    /** The gate on every hinge and side in question, each with what it is; the gate itself where nothing is. */
    List<Way> ways(GateSite site) {
        if (equals(NOTHING)) return List.of(new Way(Optional.empty(), site));
        List<Way> ways = new ArrayList<>();
        Gate gate = site.gate();
        Optional<List<Way>> slides = gate.kind()
                .match(
                        swing -> Optional.empty(),
                        pair -> Optional.empty(),
                        slide -> Optional.of(slides(site, slide)),
                        flagged -> Optional.empty());
        if (slides.isPresent()) return slides.get();
        List<String> models = hinges
                ? site.catalogue().hinges().stream().map(HingeModel::id).toList()
                : List.of(gate.hinges().model());
        for (String model : models)
            for (Optional<Side> side : sides(gate.kind())) {
                Gate hung = gate.withHinges(gate.hinges().withModel(model));
                if (side.isPresent()) hung = hung.withKind(on(gate.kind(), side.get()));
                ways.add(new Way(Optional.of(new Hanging(model, side, Optional.empty())), site.with(hung)));
            }
        return ways;
    }

    private List<Way> slides(GateSite site, GateKind.Slide slide) {
        List<Way> ways = new ArrayList<>();
        Optional<Length> tail = tails ? Optional.of(slide.spec().tail()) : Optional.empty();
        if (!hinges && tail.isEmpty()) return List.of(new Way(Optional.empty(), site));
        if (!hinges) return List.of(new Way(Optional.of(new Hanging("", Optional.empty(), tail)), site));
        for (RollerModel rollers : site.catalogue().rollers()) {
            GateKind on = new GateKind.Slide(slide.opensTo(), slide.spec().withRollers(rollers.id()));
            ways.add(new Way(
                    Optional.of(new Hanging(rollers.id(), Optional.empty(), tail)),
                    site.with(site.gate().withKind(on))));
        }
        return ways;
    }

    private List<Optional<Side>> sides(GateKind kind) {
        return kind.match(
                swing -> sides || !swing.hinge().isSaid()
                        ? List.of(Optional.of(Side.LEFT), Optional.of(Side.RIGHT))
                        : List.of(swing.hinge().value()),
                pair -> List.of(Optional.empty()),
                slide -> List.of(Optional.empty()),
                flagged -> List.of(Optional.empty()));
    }

    private static GateKind on(GateKind kind, Side side) {
        return kind.match(
                swing -> new GateKind.Swing(Stated.of(side), swing.swing(), swing.opens(), swing.holdOpen()),
                pair -> pair,
                slide -> slide,
                flagged -> flagged);
    }

    /** One way a gate may hang. */
    record Way(Optional<Hanging> hanging, GateSite site) {}

    /** A job whose gate is another. */
    static Job with(Job job, Gate changed) {
        return job.withGates(job.gates().stream()
                .map(gate -> gate.id().equals(changed.id()) ? changed : gate)
                .toList());
    }
}
