package plumbleaf.engine.job;

import java.util.List;

/** What is there already. */
public record Existing(List<PrivateLine> lines, List<Plug> plugs, List<OldFence> fences, List<LocateTicket> tickets) {
    public Existing {
        lines = List.copyOf(lines);
        plugs = List.copyOf(plugs);
        fences = List.copyOf(fences);
        tickets = List.copyOf(tickets);
    }

    public static Existing none() {
        return new Existing(List.of(), List.of(), List.of(), List.of());
    }
}
