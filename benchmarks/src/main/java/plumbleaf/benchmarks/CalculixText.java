package plumbleaf.benchmarks;

import java.util.List;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Support;

/** A frame of square rods as CalculiX reads it: quadratic beams, which it makes bricks of. */
final class CalculixText {
    private CalculixText() {}

    /** @param asked the node whose movement is printed */
    static String of(FrameSample sample, String loadCase, String asked, int elements) {
        List<Node> joints = sample.model().nodes();
        StringBuilder nodes = new StringBuilder("*NODE,NSET=ALL\n");
        for (int i = 0; i < joints.size(); i++) node(nodes, i + 1, joints.get(i), joints.get(i), 0);
        StringBuilder beams = new StringBuilder("*ELEMENT,TYPE=B32R,ELSET=RODS\n");
        int last = joints.size();
        int element = 0;
        for (Member member : sample.model().members()) {
            Node start = joints.get(number(sample, member.start()) - 1);
            Node end = joints.get(number(sample, member.end()) - 1);
            int before = number(sample, member.start());
            for (int i = 1; i <= elements; i++) {
                node(nodes, ++last, start, end, (2 * i - 1.0) / (2 * elements));
                int middle = last;
                int after = i == elements ? number(sample, member.end()) : ++last;
                if (i < elements) node(nodes, after, start, end, (double) i / elements);
                beams.append(++element + "," + before + "," + middle + "," + after + "\n");
                before = after;
            }
        }
        double side = Math.sqrt(sample.model().members().get(0).stiffness().areaIn2());
        double poisson = FrameSample.E_PSI / (2 * FrameSample.G_PSI) - 1;
        StringBuilder text = new StringBuilder().append(nodes).append(beams);
        text.append(
                "*NSET,NSET=ASKED\n" + number(sample, asked) + "\n*MATERIAL,NAME=STEEL\n*ELASTIC\n" + FrameSample.E_PSI
                        + "," + poisson + "\n*BEAM SECTION,ELSET=RODS,MATERIAL=STEEL,SECTION=RECT\n" + side + "," + side
                        + "\n0,1,0\n*BOUNDARY\n");
        for (Support support : sample.model().supports())
            support.held()
                    .forEach(dof -> text.append(number(sample, support.node()) + ","
                            + (List.of(Dof.values()).indexOf(dof) + 1) + "\n"));
        text.append("*STEP\n*STATIC\n*CLOAD\n");
        for (LoadCase each : sample.cases()) {
            if (!each.name().equals(loadCase)) continue;
            for (Load load : each.loads()) {
                Load.AtNode at = (Load.AtNode) load;
                double[] force = {
                    at.forceLb().x(), at.forceLb().y(), at.forceLb().z()
                };
                for (int k = 0; k < 3; k++)
                    if (force[k] != 0) text.append(number(sample, at.node()) + "," + (k + 1) + "," + force[k] + "\n");
            }
        }
        return text.append("*NODE PRINT,NSET=ASKED\nU\n*END STEP\n").toString();
    }

    /** Place of a node in the model, from 1. */
    private static int number(FrameSample sample, String id) {
        for (int i = 0; i < sample.model().nodes().size(); i++) {
            if (sample.model().nodes().get(i).id().equals(id)) return i + 1;
        }
        throw new IllegalArgumentException("There is no node " + id);
    }

    private static void node(StringBuilder text, int number, Node from, Node to, double share) {
        text.append(number + "," + between(from.xIn(), to.xIn(), share) + "," + between(from.yIn(), to.yIn(), share)
                + "," + between(from.zIn(), to.zIn(), share) + "\n");
    }

    private static double between(double from, double to, double share) {
        return from + (to - from) * share;
    }
}
