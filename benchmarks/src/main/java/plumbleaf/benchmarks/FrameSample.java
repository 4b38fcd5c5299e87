package plumbleaf.benchmarks;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.frame.FrameModel;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Stiffness;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;

/**
 * A frame of the size of a leaf with its post: two stiles, rails between them at even heights, a brace in each panel, hung at two points. Made of round numbers, so
 * that another program can be given the same.
 */
record FrameSample(FrameModel model, List<LoadCase> cases) {
    static final double E_PSI = 29e6;
    static final double G_PSI = 11.2e6;

    static FrameSample leafLike() {
        return of(3, 46, 66);
    }

    /** @param panels between rails, each with its brace */
    static FrameSample of(int panels, double widthIn, double heightIn) {
        return of(
                panels,
                widthIn,
                heightIn,
                new Stiffness(E_PSI, G_PSI, 0.60, 0.37, 0.37, 0.62),
                Support.pinned("h" + panels));
    }

    /** The same of quarter-inch square rods, welded in at the top too: slender enough for bricks and beams to agree. */
    static FrameSample ofRods(int panels, double widthIn, double heightIn) {
        double side = 0.25;
        double fourth = side * side * side * side;
        Stiffness rod = Stiffness.alike(E_PSI, G_PSI, side * side, fourth / 12, 0.140577 * fourth);
        return of(panels, widthIn, heightIn, rod, Support.fixed("h" + panels));
    }

    private static FrameSample of(int panels, double widthIn, double heightIn, Stiffness tube, Support top) {
        List<Node> nodes = new ArrayList<>();
        List<Member> members = new ArrayList<>();
        Vector out = new Vector(0, 1, 0);
        for (int i = 0; i <= panels; i++) {
            double z = heightIn * i / panels;
            nodes.add(new Node("h" + i, 0, 0, z));
            nodes.add(new Node("l" + i, widthIn, 0, z));
            members.add(Member.fixed("rail" + i, "h" + i, "l" + i, tube, out));
            if (i == 0) continue;
            members.add(Member.fixed("hinge" + i, "h" + (i - 1), "h" + i, tube, out));
            members.add(Member.fixed("latch" + i, "l" + (i - 1), "l" + i, tube, out));
            members.add(Member.fixed("brace" + i, "h" + (i - 1), "l" + i, tube, out));
        }
        FrameModel model = FrameModel.of(nodes, members, List.of(Support.fixed("h0"), top));
        Load edge = new Load.AtNode("l" + panels, new Vector(0, 0, -200));
        Load wind = new Load.AtNode("l" + panels, new Vector(0, 150, 0));
        return new FrameSample(
                model,
                List.of(LoadCase.of("person", edge), LoadCase.of("wind", wind), LoadCase.of("both", edge, wind)));
    }
}
