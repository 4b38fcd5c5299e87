package plumbleaf.engine.frame;

import java.util.List;

/** The terms of {@link VirtualWork}. */
final class Strain {
    private Strain() {}

    /** Between breaks the loads' forces are of second degree, the unit load's of first: Simpson's rule is exact for their product. */
    static VirtualWork.Part member(Assembly assembly, CaseState real, CaseState unit, int member) {
        Element element = assembly.elements.get(member);
        Stiffness s = element.member.stiffness();
        double axial = 0;
        double torsion = 0;
        double bendingY = 0;
        double bendingZ = 0;
        List<Double> breaks = element.breaks(real.loads.get(member));
        for (int i = 0; i + 1 < breaks.size(); i++) {
            double from = breaks.get(i);
            double to = breaks.get(i + 1);
            double[] places = {from, (from + to) / 2, to};
            double[] weights = {(to - from) / 6, (to - from) * 4 / 6, (to - from) / 6};
            for (int p = 0; p < 3; p++) {
                Internal load = real.internalAt(assembly, member, places[p], p == 0);
                Internal one = unit.internalAt(assembly, member, places[p], p == 0);
                axial += weights[p] * load.nLb() * one.nLb() / (s.ePsi() * s.areaIn2());
                torsion += weights[p] * load.tLbIn() * one.tLbIn() / (s.gPsi() * s.jIn4());
                bendingY += weights[p] * load.myLbIn() * one.myLbIn() / (s.ePsi() * s.iyIn4());
                bendingZ += weights[p] * load.mzLbIn() * one.mzLbIn() / (s.ePsi() * s.izIn4());
            }
        }
        return new VirtualWork.Part(element.member.id(), axial, torsion, bendingY, bendingZ, 0);
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
