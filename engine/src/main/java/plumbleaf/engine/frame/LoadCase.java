package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.List;

/** Loads that act together, under one name. */
public record LoadCase(String name, List<Load> loads) {
    public LoadCase {
        loads = List.copyOf(loads);
    }

    public static LoadCase of(String name, Load... loads) {
        return new LoadCase(name, List.of(loads));
    }

    public LoadCase named(String other) {
        return new LoadCase(other, loads);
    }

    public LoadCase times(double factor) {
        return new LoadCase(name, loads.stream().map(load -> load.times(factor)).toList());
    }

    /** Both at once, under this one's name. */
    public LoadCase plus(LoadCase other) {
        List<Load> both = new ArrayList<>(loads);
        both.addAll(other.loads);
        return new LoadCase(name, both);
    }
}
