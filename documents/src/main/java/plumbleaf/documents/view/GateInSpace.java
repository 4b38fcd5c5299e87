package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.view.SpaceScene.Block;
import plumbleaf.documents.view.SpaceScene.Stuff;
import plumbleaf.documents.view.SpaceScene.TurningLeaf;
import plumbleaf.engine.gate.ClearanceMap;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafTrim;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Nailer;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.gate.Panel;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;

/** Puts a gate with its posts, footings and the ground under its swing into space. */
public final class GateInSpace {
    private static final int ROUND_SIDES = 20;
    private static final double MESH_IN = 0.2;

    private final GateSubject first;
    private final List<Block> standing = new ArrayList<>();
    private final List<TurningLeaf> leaves = new ArrayList<>();

    private GateInSpace(GateSubject first) {
        this.first = first;
    }

    /**
     * A post's hole.
     *
     * @param diameter zero where nothing is dug
     * @param depth    below grade
     */
    public record Footing(double diameter, double depth) {
        public static final Footing NONE = new Footing(0, 0);
    }

    /**
     * @param leaves of the gate: one, or the two of a pair
     * @param left   footing of the post on the left, seen from outside
     * @param right  of the post on the right
     */
    public static SpaceScene of(List<GateSubject> leaves, Footing left, Footing right) {
        GateSubject first = leaves.get(0);
        GateInSpace space = new GateInSpace(first);
        space.posts(leaves, left, right);
        for (GateSubject leaf : leaves) space.leaf(leaf);
        return new SpaceScene(
                first.plan().gate() + " on its ground", first.units() != DisplayUnits.US, space.standing, space.leaves);
    }

    /** Both posts; of a pair each leaf brings its own, of a single leaf the latch post comes with it. */
    private void posts(List<GateSubject> subjects, Footing left, Footing right) {
        for (GateSubject subject : subjects) {
            boolean isLeft = subject.leaf().hand().hinge() == Side.LEFT;
            post(
                    subject,
                    subject.hingePost(),
                    subject.parts().hingePost(),
                    subject.hingeFaceR(),
                    -1,
                    subject.hingePostTop(),
                    isLeft ? left : right);
            if (!subject.isPair())
                post(
                        subject,
                        subject.latchPost(),
                        subject.parts().latchPost(),
                        subject.latchFaceR(),
                        1,
                        subject.latchPostTop(),
                        isLeft ? right : left);
        }
    }

    private void post(
            GateSubject subject, String id, PostStock section, double faceR, int beyond, Offset top, Footing footing) {
        double r = faceR + beyond * section.width().inches() / 2;
        double grade = zOf(subject) + subject.groundZ(r);
        double x = xOf(subject, r);
        double high = zOf(subject) + top.inches();
        double low = grade - Math.max(footing.depth(), 0);
        if (high > low)
            standing.add(new Block(
                    id,
                    section.match(steel -> Stuff.STEEL, wood -> Stuff.WOOD),
                    section.isRound()
                            ? circle(x, section.depth().inches())
                            : box(x, section.width().inches(), section.depth().inches()),
                    low,
                    high));
        if (footing.diameter() > 0 && footing.depth() > 0)
            standing.add(new Block(id, Stuff.CONCRETE, circle(x, footing.diameter()), low, grade));
    }

    private void leaf(GateSubject subject) {
        Leaf leaf = subject.leaf();
        int along = subject.outside().rightward();
        int side = leaf.hand().swing() == SwingWay.IN ? 1 : -1;
        double off = subject.parts().hinge().pin().swingSide().inches();
        ClearanceMap map = subject.swing().map();
        double rise = subject.parts().hinge().risePerDegree().inches();
        leaves.add(new TurningLeaf(
                leaf.id(),
                xOf(subject, 0),
                side * off,
                zOf(subject),
                along,
                side,
                off,
                rise,
                subject.swing().opens().inDegrees(),
                subject.swing().maxAngle().inDegrees(),
                blocks(subject),
                map.angles().stream().map(angle -> angle.inDegrees()).toList(),
                map.radii().stream().map(radius -> radius.inches()).toList(),
                ground(map, leaf.outline(), rise),
                map.clear().stream()
                        .map(column -> column.stream().map(Offset::inches).toList())
                        .toList()));
    }

    /** The map holds the room under the frame's bottom; what is below that room is the ground. */
    private static List<List<Double>> ground(ClearanceMap map, Outline outline, double risePerDegree) {
        List<List<Double>> ground = new ArrayList<>();
        for (int a = 0; a < map.angles().size(); a++) {
            List<Double> column = new ArrayList<>();
            for (int r = 0; r < map.radii().size(); r++)
                column.add(outline.infillBottomIn(map.radii().get(r).inches())
                        + risePerDegree * map.angles().get(a).inDegrees()
                        - map.clear().get(a).get(r).inches());
            ground.add(column);
        }
        return ground;
    }

    private static List<Block> blocks(GateSubject subject) {
        Leaf leaf = subject.leaf();
        List<Block> blocks = new ArrayList<>();
        MemberShapes shapes = new MemberShapes(leaf, subject.parts().joint());
        for (Member member : leaf.members()) {
            double half = member.section().width().inches() / 2;
            double n = (member.from().n().inches() + member.to().n().inches()) / 2;
            blocks.add(new Block(member.id(), Stuff.STEEL, shapes.of(member), n - half, n + half));
        }
        double boards = subject.parts()
                .cladding()
                .match(
                        open -> 0.0,
                        wood -> wood.style().boardThickness().inches(),
                        pickets -> pickets.section().width().inches(),
                        mesh -> mesh.wire().inches(),
                        sheet -> sheet.thickness().inches());
        Stuff stuff = leaf.nailers().isEmpty() ? Stuff.STEEL : Stuff.WOOD;
        for (Picket picket : leaf.pickets()) {
            double n = picket.n().inches();
            blocks.add(new Block(
                    leaf.id(), stuff, PicketShape.of(picket, leaf.outline()), n - boards / 2, n + boards / 2));
        }
        for (Nailer nailer : leaf.nailers()) nailer(subject, nailer, blocks);
        for (LeafTrim trim : leaf.trim()) {
            double n = trim.middle().n().inches();
            Length across = trim.use().equals("cap")
                    ? trim.board().width()
                    : trim.board().thickness();
            List<Point> outline = trim.corners().stream()
                    .map(corner -> new Point(corner.r().inches(), corner.z().inches()))
                    .toList();
            blocks.add(new Block(leaf.id(), Stuff.WOOD, outline, n - across.inches() / 2, n + across.inches() / 2));
        }
        for (Panel panel : leaf.panels()) {
            List<Point> outline = panel.corners().stream()
                    .map(corner -> new Point(corner.r().inches(), corner.z().inches()))
                    .toList();
            double half = Math.max(boards, MESH_IN) / 2;
            blocks.add(new Block(panel.id(), Stuff.STEEL, outline, -half, half));
        }
        return blocks;
    }

    private static void nailer(GateSubject subject, Nailer nailer, List<Block> blocks) {
        subject.parts()
                .cladding()
                .match(
                        open -> false,
                        wood -> {
                            double high = wood.style().railWidth().inches() / 2;
                            double half = wood.style().railThickness().inches() / 2;
                            if (nailer.upright()) return blocks.add(upright(subject, nailer, high, half));
                            double reach = nailer.length().inches() / 2;
                            double grade = grade(subject.leaf(), nailer.rail());
                            double run = reach / Math.sqrt(1 + grade * grade);
                            double r = nailer.middle().r().inches();
                            double z = nailer.middle().z().inches();
                            double n = nailer.middle().n().inches();
                            List<Point> outline = List.of(
                                    new Point(r - run, z - run * grade - high),
                                    new Point(r + run, z + run * grade - high),
                                    new Point(r + run, z + run * grade + high),
                                    new Point(r - run, z - run * grade + high));
                            return blocks.add(new Block(subject.leaf().id(), Stuff.WOOD, outline, n - half, n + half));
                        },
                        pickets -> false,
                        mesh -> false,
                        sheet -> false);
    }

    private static Block upright(GateSubject subject, Nailer nailer, double half, double halfThick) {
        double r = nailer.middle().r().inches();
        double z = nailer.middle().z().inches();
        double n = nailer.middle().n().inches();
        double reach = nailer.length().inches() / 2;
        double rise = half * subject.leaf().outline().bottom().ratio();
        List<Point> outline = List.of(
                new Point(r - half, z - reach - rise),
                new Point(r + half, z - reach + rise),
                new Point(r + half, z + reach + rise),
                new Point(r - half, z + reach - rise));
        return new Block(subject.leaf().id(), Stuff.WOOD, outline, n - halfThick, n + halfThick);
    }

    private static double grade(Leaf leaf, String rail) {
        return leaf.member(rail)
                .map(member -> (member.to().z().inches() - member.from().z().inches())
                        / (member.to().r().inches() - member.from().r().inches()))
                .orElse(0.0);
    }

    /** From the face of the first leaf's hinge post, to the right. */
    private double xOf(GateSubject subject, double r) {
        boolean same = subject.leaf().hand().hinge() == first.leaf().hand().hinge();
        double fromFace = r - subject.hingeFaceR();
        double inFirst = same ? fromFace : first.plan().opening().clear().inches() - fromFace;
        return first.outside().rightward() * inFirst;
    }

    private double zOf(GateSubject subject) {
        return subject.pinElevation().inches() - first.pinElevation().inches();
    }

    private static List<Point> circle(double x, double diameter) {
        List<Point> circle = new ArrayList<>();
        for (int i = 0; i < ROUND_SIDES; i++) {
            double turn = 2 * Math.PI * i / ROUND_SIDES;
            circle.add(new Point(x + diameter / 2 * StrictMath.cos(turn), diameter / 2 * StrictMath.sin(turn)));
        }
        return circle;
    }

    private static List<Point> box(double x, double wide, double deep) {
        return List.of(
                new Point(x - wide / 2, -deep / 2),
                new Point(x + wide / 2, -deep / 2),
                new Point(x + wide / 2, deep / 2),
                new Point(x - wide / 2, deep / 2));
    }
}
