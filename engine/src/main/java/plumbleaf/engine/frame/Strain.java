package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.List;

/** The terms of {@link VirtualWork}. */
final class Strain {
    /** Simpson's rule. */
    private static final int[] WEIGHTS = {1, 4, 1};

    private Strain() {}

    /** Between breaks the loads' forces are of second degree, the unit load's of first: Simpson's rule is exact for their product. */
    static VirtualWork.Part member(Assembly assembly, CaseState real, CaseState unit, int member) {
        Element element = assembly.elements.get(member);
        Stiffness s = element.member.stiffness();
        double axial = 0;
        double torsion = 0;
        double bendingY = 0;
        double bendingZ = 0;
        for (Stretch stretch : stretches(assembly, real, unit, member)) {
            for (int p = 0; p < WEIGHTS.length; p++) {
                double weight = stretch.lengthIn() * WEIGHTS[p] / 6;
                Internal load = stretch.loads().get(p);
                Internal one = stretch.one().get(p);
                axial += weight * load.nLb() * one.nLb() / (s.ePsi() * s.areaIn2());
                torsion += weight * load.tLbIn() * one.tLbIn() / (s.gPsi() * s.jIn4());
                bendingY += weight * load.myLbIn() * one.myLbIn() / (s.ePsi() * s.iyIn4());
                bendingZ += weight * load.mzLbIn() * one.mzLbIn() / (s.ePsi() * s.izIn4());
            }
        }
        return new VirtualWork.Part(element.member.id(), axial, torsion, bendingY, bendingZ, 0);
    }

    static List<Stretch> stretches(Assembly assembly, CaseState real, CaseState unit, int member) {
        double[] breaks = assembly.elements.get(member).breaks(real.loads.get(member));
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i + 1 < breaks.length; i++) {
            double from = breaks[i];
            double to = breaks[i + 1];
            double middle = (from + to) / 2;
            stretches.add(new Stretch(
                    to - from,
                    List.of(
                            real.internalAt(assembly, member, from, true),
                            real.internalAt(assembly, member, middle, false),
                            real.internalAt(assembly, member, to, false)),
                    List.of(
                            unit.internalAt(assembly, member, from, true),
                            unit.internalAt(assembly, member, middle, false),
                            unit.internalAt(assembly, member, to, false))));
        }
        return stretches;
    }

    static VirtualWork.Part spring(String id, double[] forces, double[] unitPartings) {
        double sum = 0;
        for (int i = 0; i < forces.length; i++) sum += forces[i] * unitPartings[i];
        return new VirtualWork.Part(id, 0, 0, 0, 0, sum);
    }

    static VirtualWork.Part ground(GroundSpring spring, double[] real, double[] unit, int base) {
        double sum = 0;
        for (Dof row : Dof.values())
            for (Dof column : Dof.values())
                sum += unit[base + row.index()] * spring.stiffness().entry(row, column) * real[base + column.index()];
        return new VirtualWork.Part(spring.id(), 0, 0, 0, 0, sum);
    }

    /** A settled support does the unit load's reaction's work with the other sign; its part bears the node's name. */
    static void settlements(Assembly assembly, CaseState real, CaseState unit, List<VirtualWork.Part> parts) {
        for (int node = 0; node < assembly.model.nodes().size(); node++) {
            double sum = 0;
            for (int d = 6 * node; d < 6 * node + 6; d++) sum -= unit.reactions[d] * real.settled(d);
            if (sum != 0)
                parts.add(new VirtualWork.Part(assembly.model.nodes().get(node).id(), 0, 0, 0, 0, sum));
        }
    }
}
