package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.choose.Candidate;
import plumbleaf.engine.choose.Finer;
import plumbleaf.engine.choose.Rejected;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.job.Gate;

/**
 * What a page keeps of a search: a hundred thousand builds that fail are counted by reason, with the dearest of each.
 *
 * @param passing the cheapest build that passes and the next ones
 * @param finer what less drop costs; empty where nobody asked
 * @param all how many builds there were
 * @param failed how many cheaper ones fail; without a passing one, all of them
 * @param reasons each kind of reason once
 * @param dearest those that fail and are nearest in price, the dearest first
 */
record FoundBuilds(
        Gate gate,
        List<Candidate<PickedGate>> passing,
        List<Finer<PickedGate>> finer,
        int all,
        int failed,
        List<Reason> reasons,
        List<Rejected> dearest) {
    private static final int SHOWN = 12;

    FoundBuilds {
        passing = List.copyOf(passing);
        finer = List.copyOf(finer);
        reasons = List.copyOf(reasons);
        dearest = List.copyOf(dearest);
    }

    /** @param last the one nearest in price to what passes */
    record Reason(int builds, Rejected last) {}

    static FoundBuilds of(Gate gate, GateChoice choice) {
        List<Candidate<PickedGate>> passing = new ArrayList<>(choice.choice().best());
        passing.addAll(choice.choice().next());
        List<Rejected> rejected = choice.choice().rejected();
        Map<String, Reason> reasons = new LinkedHashMap<>();
        for (Rejected each : rejected)
            reasons.merge(
                    each.because().id(),
                    new Reason(1, each),
                    (before, now) -> new Reason(before.builds() + 1, now.last()));
        List<Rejected> dearest = new ArrayList<>();
        for (int i = rejected.size() - 1; i >= Math.max(0, rejected.size() - SHOWN); i--) dearest.add(rejected.get(i));
        return new FoundBuilds(
                gate,
                passing,
                choice.finer(),
                choice.choice().all(),
                rejected.size(),
                List.copyOf(reasons.values()),
                dearest);
    }

    boolean slides() {
        return gate.kind().match(swing -> false, pair -> false, slide -> true, flagged -> false);
    }
}
