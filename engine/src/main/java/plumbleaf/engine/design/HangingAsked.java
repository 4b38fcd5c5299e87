package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stated;

/**
 * What of a gate's hanging a search leaves open besides its build.
 *
 * @param hinges every hinge that is stocked instead of the one the job says
 * @param sides both sides the hinges may be on
 */
public record HangingAsked(boolean hinges, boolean sides) {
    public static final HangingAsked NOTHING = new HangingAsked(false, false);

    /** The gate on every hinge and side in question, each with what it is; the gate itself where nothing is. */
    List<Way> ways(GateSite site) {
        if (equals(NOTHING)) return List.of(new Way(Optional.empty(), site));
        List<Way> ways = new ArrayList<>();
        Gate gate = site.gate();
        List<String> models = hinges
                ? site.catalogue().hinges().stream().map(HingeModel::id).toList()
                : List.of(gate.hinges().model());
        for (String model : models)
            for (Optional<Side> side : sides(gate.kind())) {
                Gate hung = gate.withHinges(gate.hinges().withModel(model));
                if (side.isPresent()) hung = hung.withKind(on(gate.kind(), side.get()));
                ways.add(new Way(Optional.of(new Hanging(model, side)), site.with(hung)));
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
