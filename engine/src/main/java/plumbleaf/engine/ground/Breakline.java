package plumbleaf.engine.ground;

import java.util.List;

/** A line the surface may bend at: shots in order, and what it is. */
public record Breakline(String what, List<String> shots) {
    public Breakline {
        shots = List.copyOf(shots);
    }
}
