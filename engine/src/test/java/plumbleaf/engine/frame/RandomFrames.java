package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Frames nobody would build, to try every feature together: arms, releases, hinges, coupled footings, settlements, loads anywhere. */
final class RandomFrames {
    private final Random random;
    private final List<Node> nodes = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final List<GroundSpring> springs = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();

    private RandomFrames(long seed) {
        this.random = new Random(seed);
    }

    static FrameModel model(long seed) {
        return new RandomFrames(seed).made();
    }

    /** Loads of every kind on a model made by {@link #model}. */
    static LoadCase loads(String name, FrameModel model, long seed, boolean settling) {
        RandomFrames from = new RandomFrames(seed ^ 0x5eedL);
        List<Load> loads = new ArrayList<>();
        loads.add(new Load.AtNode(from.anyNode(model), from.vector(200), from.vector(900)));
        loads.add(new Load.AtNode(from.anyNode(model), from.vector(200)));
        loads.add(new Load.Uniform(from.anyMember(model), from.vector(3)));
        loads.add(new Load.Uniform(
                from.anyMember(model), from.vector(3), from.vector(20), 2 + from.random.nextDouble(), 6));
        loads.add(new Load.AtPoint(
                from.anyMember(model), 5 * from.random.nextDouble(), from.vector(100), from.vector(400)));
        if (settling) loads.add(new Load.Settlement("n0", Dof.UZ, 0.1 * from.random.nextDouble()));
        return new LoadCase(name, loads);
    }

    Vector vector(double size) {
        return new Vector(within(size), within(size), within(size));
    }

    String anyNode(FrameModel model) {
        return model.nodes().get(random.nextInt(model.nodes().size())).id();
    }

    String anyMember(FrameModel model) {
        return model.members().get(random.nextInt(model.members().size())).id();
    }

    static RandomFrames from(long seed) {
        return new RandomFrames(seed);
    }

    private FrameModel made() {
        int count = 6 + random.nextInt(8);
        for (int i = 0; i < count; i++) {
            nodes.add(new Node("n" + i, 40 * i + within(10), within(40), within(60)));
            if (i > 0) member(random.nextInt(i), i, false);
        }
        for (int i = 0; i < count / 2; i++) {
            int a = random.nextInt(count - 1);
            member(a, a + 1 + random.nextInt(count - a - 1), true);
        }
        supports.add(Support.fixed("n0"));
        springs.add(new GroundSpring("footing", "n" + (count - 1), footing()));
        Node hung = nodes.get(count / 2);
        nodes.add(new Node("leaf", hung.xIn() + 3, hung.yIn() - 4, hung.zIn()));
        nodes.add(new Node("far", hung.xIn() + 60, hung.yIn() + within(9), hung.zIn() + within(9)));
        members.add(Member.fixed("hung", "leaf", "far", stiffness(), vector(1)));
        Vector pin = hung.place().plus(new Vector(1.5, -2, 0));
        links.add(new Link("hinge", hung.id(), "leaf", pin, vector(1), vector(1), 2e5, 3e5, 1e5, 4e5, 0, 2e5));
        links.add(new Link("strut", "n1", "far", vector(30), vector(1), vector(1), 3000, 2000, 1000, 0, 5e4, 0));
        return new FrameModel(nodes, members, springs, links, supports);
    }

    private void member(int a, int b, boolean loose) {
        Member plain = Member.fixed("m" + members.size(), "n" + a, "n" + b, stiffness(), vector(1));
        Member armed = random.nextBoolean() ? plain.offset(vector(2), vector(2)) : plain;
        if (!loose) members.add(armed);
        else if (random.nextBoolean()) members.add(armed.released(List.of(Dof.RY, Dof.RZ), List.of(Dof.RX, Dof.RZ)));
        else members.add(armed.released(List.of(Dof.UX), List.of(Dof.UY, Dof.RY)));
    }

    private Stiffness stiffness() {
        double i = 0.2 + random.nextDouble();
        return new Stiffness(29e6, 11.2e6, 0.3 + random.nextDouble(), i, i * (0.5 + random.nextDouble()), 2 * i);
    }

    private SpringMatrix footing() {
        double a = 15_000 + 5000 * random.nextDouble();
        return SpringMatrix.diagonal(a, a, 1e6, 1e7, 1e7, 1e6)
                .with(Dof.UX, Dof.RY, -0.6 * Math.sqrt(a * 1e7))
                .with(Dof.UY, Dof.RX, 0.6 * Math.sqrt(a * 1e7));
    }

    private double within(double size) {
        return size * (2 * random.nextDouble() - 1);
    }
}
