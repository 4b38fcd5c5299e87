package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Probe;
import plumbleaf.engine.frame.Stretch;
import plumbleaf.engine.frame.VirtualWork;
import plumbleaf.engine.gate.Member;

/**
 * What one member of a leaf's frame adds to a drop by virtual work, in inches, and from what. Source: unit load method. Check: DropShareTest, where the members and
 * what is no member's add up to the leaf's share.
 *
 * @param axialIn by being drawn and pressed, {@code integral of N n / EA}
 * @param inPlaneIn by bending in the plane of the leaf, {@code integral of M m / EI}
 * @param otherIn by bending out of its plane and by twist
 * @param stretches what strains it, from its start on
 */
public record DropShare(Member member, double axialIn, double inPlaneIn, double otherIn, List<Stretch> stretches) {
    public DropShare {
        stretches = List.copyOf(stretches);
    }

    public double totalIn() {
        return axialIn + inPlaneIn + otherIn;
    }

    /** Of every member that is there; the third axis of a member of the leaf stands square to the leaf, so {@code mz} bends it in its plane. */
    static List<DropShare> of(Collection<Chain> chains, FrameSolution solved, String loadCase, Probe probe) {
        Map<String, VirtualWork.Part> parts = new LinkedHashMap<>();
        for (VirtualWork.Part part : solved.virtualWork(loadCase, probe).parts()) parts.put(part.id(), part);
        List<DropShare> shares = new ArrayList<>();
        for (Chain chain : chains) {
            double axial = 0;
            double inPlane = 0;
            double other = 0;
            List<String> pieces = new ArrayList<>();
            for (Chain.Piece piece : chain.pieces()) {
                VirtualWork.Part part = parts.get(piece.member());
                if (part == null) continue;
                pieces.add(piece.member());
                axial += part.axial();
                inPlane += part.bendingZ();
                other += part.bendingY() + part.torsion();
            }
            if (!pieces.isEmpty())
                shares.add(
                        new DropShare(chain.member, axial, inPlane, other, solved.stretches(loadCase, probe, pieces)));
        }
        return shares;
    }
}
