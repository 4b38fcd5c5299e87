package plumbleaf.engine.job;

import java.util.ArrayList;
import java.util.List;

/** What is there already. */
public record Existing(List<PrivateLine> lines, List<Plug> plugs, List<OldFence> fences, List<LocateTicket> tickets) {
    public Existing {
        lines = List.copyOf(lines);
        plugs = List.copyOf(plugs);
        fences = List.copyOf(fences);
        tickets = List.copyOf(tickets);
    }

    /**
     * Concrete that stays in the ground.
     *
     * @param pulled the edit of the job that has it pulled, alone or with all of its fence
     */
    public record Left(Plug plug, String pulled) {}

    /** The concrete that stays in the line of a run: no new hole meets it. */
    public List<Left> leftIn(String run) {
        List<Left> left = new ArrayList<>();
        for (int i = 0; i < plugs.size(); i++) {
            Plug plug = plugs.get(i);
            String pulled = "existing.plugs[" + i + "].fate=" + PlugFate.PULL.key();
            if (plug.fate() == PlugFate.LEAVE && plug.run().equals(run)) left.add(new Left(plug, pulled));
        }
        for (int i = 0; i < fences.size(); i++) {
            String pulled = "existing.fences[" + i + "].plugs=" + PlugFate.PULL.key();
            for (Plug plug : fences.get(i).left()) if (plug.run().equals(run)) left.add(new Left(plug, pulled));
        }
        return left;
    }

    /** With one plug pulled; as it was where there is none at that place. */
    public Existing withPlugPulled(int place) {
        List<Plug> changed = new ArrayList<>(plugs);
        if (place < changed.size()) changed.set(place, changed.get(place).pulled());
        return new Existing(lines, changed, fences, tickets);
    }

    /** With the concrete of one old fence pulled; as it was where there is none at that place. */
    public Existing withPlugsPulled(int place) {
        List<OldFence> changed = new ArrayList<>(fences);
        if (place < changed.size()) changed.set(place, changed.get(place).withPlugsPulled());
        return new Existing(lines, plugs, changed, tickets);
    }

    public static Existing none() {
        return new Existing(List.of(), List.of(), List.of(), List.of());
    }
}
