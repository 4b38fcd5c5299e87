package plumbleaf.engine.design;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.job.Gate;

/**
 * Which drop rod a pair is bought with: the pinned one, or the one its forces asked for; a gate that is priced and not hung takes that of the design it is
 * compared with, or one of middle size.
 *
 * @param built by gate
 */
record RodPick(Catalogue catalogue, Map<String, RodModel> built) {
    RodPick {
        built = Collections.unmodifiableMap(new LinkedHashMap<>(built));
    }

    static RodPick of(Catalogue catalogue, List<GateDesign> gates) {
        Map<String, RodModel> built = new LinkedHashMap<>();
        for (GateDesign gate : gates)
            gate.pair().ifPresent(pair -> built.put(gate.id(), pair.rod().rod()));
        return new RodPick(catalogue, built);
    }

    RodModel rod(Gate gate) {
        Optional<RodModel> pinned = pinned(gate).flatMap(catalogue::rod);
        if (pinned.isPresent()) return pinned.get();
        RodModel found = built.get(gate.id());
        return found != null ? found : middle(catalogue);
    }

    static RodModel middle(Catalogue catalogue) {
        return catalogue.rods().get(catalogue.rods().size() / 2);
    }

    static Optional<String> pinned(Gate gate) {
        return gate.kind()
                .match(
                        swing -> Optional.<String>empty(),
                        pair -> pair.meeting().rod().value(),
                        slide -> Optional.<String>empty(),
                        flagged -> Optional.<String>empty());
    }
}
