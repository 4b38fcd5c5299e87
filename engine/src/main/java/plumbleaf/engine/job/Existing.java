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

    /** The concrete that stays in the line of a run: no new hole meets it. */
    public List<Plug> leftIn(String run) {
        List<Plug> left = new ArrayList<>();
        for (Plug plug : plugs) if (plug.fate() == PlugFate.LEAVE && plug.run().equals(run)) left.add(plug);
        for (OldFence fence : fences)
            for (Plug plug : fence.left()) if (plug.run().equals(run)) left.add(plug);
        return left;
    }

    public static Existing none() {
        return new Existing(List.of(), List.of(), List.of(), List.of());
    }
}
