package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.quantity.Angle;

/** How a closed gate moves under its own weight, a person, the service gust, and ice; the last three alone, on the leaf as its weight left it. */
record Loaded(Hanging dead, Hanging person, Hanging gust, Hanging ice) {
    static final String DEAD = "D";
    static final String PERSON = "person";
    static final String GUST = "service gust";
    static final String ICE = "ice";

    static Loaded of(HungGate gate, BaseSpring foot, HungLoads loads) {
        if (TautGate.hasRods(gate)) return withRods(gate, foot, loads);
        GateFrame frame = closed(gate, foot, List.of());
        FrameSolution solved = frame.solve(List.of(
                new LoadCase(DEAD, frame.leaf.dead()),
                new LoadCase(PERSON, person(frame, loads)),
                new LoadCase(GUST, gust(frame, loads)),
                new LoadCase(ICE, ice(frame, loads))));
        Hanging all = new Hanging(frame, solved);
        return new Loaded(all, all, all, all);
    }

    private static Loaded withRods(HungGate gate, BaseSpring foot, HungLoads loads) {
        TautGate taut = taut(gate, foot);
        Hanging dead = taut.moves(DEAD, Loaded::weight, Loaded::weight, true);
        return new Loaded(
                dead,
                taut.moves(PERSON, with(frame -> person(frame, loads)), frame -> person(frame, loads), false),
                taut.moves(GUST, with(frame -> gust(frame, loads)), frame -> gust(frame, loads), false),
                loads.ice().isNone()
                        ? dead
                        : taut.moves(ICE, with(frame -> ice(frame, loads)), frame -> ice(frame, loads), false));
    }

    /** Under its own weight alone. */
    static Hanging dead(HungGate gate, BaseSpring foot) {
        if (TautGate.hasRods(gate)) return taut(gate, foot).moves(DEAD, Loaded::weight, Loaded::weight, true);
        GateFrame frame = closed(gate, foot, List.of());
        return new Hanging(frame, frame.solve(List.of(new LoadCase(DEAD, frame.leaf.dead()))));
    }

    static TautGate taut(HungGate gate, BaseSpring foot) {
        return new TautGate(gate, slack -> closed(gate, foot, slack));
    }

    static GateFrame closed(HungGate gate, BaseSpring foot, List<String> slackRods) {
        return new GateFrame(gate, foot, Angle.ZERO, gate.shutAt().heldAt(), false, slackRods, 1);
    }

    static List<Load> weight(GateFrame frame) {
        return frame.leaf.dead();
    }

    private static List<Load> person(GateFrame frame, HungLoads loads) {
        return frame.leaf.person(loads.person().pounds());
    }

    private static List<Load> gust(GateFrame frame, HungLoads loads) {
        return frame.leaf.wind(loads.serviceGust(), 1);
    }

    private static List<Load> ice(GateFrame frame, HungLoads loads) {
        return frame.leaf.ice(loads.ice(), 1);
    }

    private static TautGate.Acting with(TautGate.Acting more) {
        return frame -> {
            List<Load> both = new ArrayList<>(frame.leaf.dead());
            both.addAll(more.on(frame));
            return both;
        };
    }
}
