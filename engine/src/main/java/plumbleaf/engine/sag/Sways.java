package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Mode;
import plumbleaf.engine.frame.Vibration;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;

/** Rods, twist and natural frequency of a closed leaf. */
final class Sways {
    /** Pieces of stile and rail between which the mass lies at nodes: finer ones change the frequency by less than a per cent. */
    private static final int PIECES = 6;

    private static final String WIND = "0.6W";
    private static final String PULLS = "pulls";

    private Sways() {}

    static LeafSway of(HungGate gate, HungLoads loads, Loaded likely, Offset framePlay) {
        BaseSpring foot = gate.foot().likely();
        Hanging gust = likely.gust();
        GateFrame frame = likely.dead().frame();
        Mode mode = mode(gate, foot, frame);
        Hanging wind = new Hanging(
                frame, frame.solve(List.of(new LoadCase(WIND, frame.leaf.wind(loads.shut(), Combination.D_W.wind())))));
        return new LeafSway(
                framePlay,
                pulls(gate, foot),
                withoutRods(gate, foot, likely),
                twist(gust, Loaded.GUST),
                twist(wind, WIND),
                mode.hertz(),
                mode.lbPerIn(),
                mode.pounds());
    }

    private static List<LeafSway.Pull> pulls(HungGate gate, BaseSpring foot) {
        List<LeafSway.Pull> pulls = new ArrayList<>();
        if (!TautGate.hasRods(gate)) return pulls;
        TautGate taut = Loaded.taut(gate, foot);
        Hanging held = taut.forces(PULLS, Loaded::weight);
        List<String> pulling = held.frame().leaf.rods().stream()
                .map(chain -> chain.member.id())
                .toList();
        for (Member rod : gate.leaf().of(MemberRole.ROD)) {
            boolean slack = !pulling.contains(rod.id());
            pulls.add(new LeafSway.Pull(
                    rod.id(), slack ? Force.ZERO : Force.pounds(taut.pullLb(held.solved(), PULLS, rod.id())), slack));
        }
        return pulls;
    }

    private static Offset withoutRods(HungGate gate, BaseSpring foot, Loaded likely) {
        if (!TautGate.hasRods(gate))
            return Sags.split(likely.dead().frame(), likely.dead().solved()).total();
        List<String> all =
                gate.leaf().of(MemberRole.ROD).stream().map(Member::id).toList();
        GateFrame bare = Loaded.closed(gate, foot, all);
        return Sags.split(bare, bare.solve(List.of(new LoadCase(Loaded.DEAD, bare.leaf.dead()))))
                .total();
    }

    private static Offset twist(Hanging hanging, String loadCase) {
        GateFrame frame = hanging.frame();
        return Offset.inches(Math.abs(hanging.solved()
                .motion(loadCase, frame.leaf.upperCorner().node())
                .shiftIn()
                .dot(frame.leaf.normal())));
    }

    /** In the state its weight leaves the rods in. */
    private static Mode mode(HungGate gate, BaseSpring foot, GateFrame hung) {
        List<String> pulling =
                hung.leaf.rods().stream().map(chain -> chain.member.id()).toList();
        List<String> slack = gate.leaf().of(MemberRole.ROD).stream()
                .map(Member::id)
                .filter(rod -> !pulling.contains(rod))
                .toList();
        GateFrame fine = new GateFrame(gate, foot, Angle.ZERO, gate.shutAt().heldAt(), false, slack, PIECES);
        return Vibration.lowest(fine.model(), new LoadCase(Loaded.DEAD, fine.leaf.dead()));
    }
}
