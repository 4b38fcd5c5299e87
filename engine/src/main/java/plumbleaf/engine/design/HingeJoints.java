package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.BoltSize;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.Fastening;
import plumbleaf.engine.catalogue.HingeFixing;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.Bolt;
import plumbleaf.engine.strength.BoltRow;
import plumbleaf.engine.strength.BoltStack;
import plumbleaf.engine.strength.BoltWorking;
import plumbleaf.engine.strength.HingePlate;
import plumbleaf.engine.strength.NetSection;
import plumbleaf.engine.strength.PlateWorking;
import plumbleaf.engine.strength.TubeStrength;
import plumbleaf.engine.strength.WasherPull;
import plumbleaf.engine.strength.WeldLines;

/**
 * What carries a leaf from its stile into its post at every hinge: the fixing on the leaf, the fixing on the post, the post's wall under the plate, and the post
 * where it is drilled. The hinge itself is its maker's. The plate on the post stands in line with the pin; the one on the leaf lies on the stile's face towards
 * the swing, or on its edge where the pin is in the leaf's plane.
 */
final class HingeJoints {
    private static final String WELD_CLAUSE = "AISC 360-22 J2.4, J4.2(b); elastic vector method";
    private static final String BOLT_CLAUSE =
            "AISC 360-22 J3.7, J3.8, J7(a); AISI S100-16 J4.4.2; AISC 360-22 Table K2.1 or 360-10 K1-12; elastic"
                    + " vector method";
    private static final Stress ELECTRODE = Stress.ksi(70);

    private final HungGate gate;
    private final Leaf leaf;
    private final String post;
    private final HingeFixing fixing;
    private final Section stile;
    private final Catalogue catalogue;

    private HingeJoints(HungLeaf hung, Catalogue catalogue) {
        this.gate = hung.gate();
        this.leaf = gate.leaf();
        this.post = hung.post();
        this.fixing = gate.hinge().fixing();
        this.stile = leaf.of(MemberRole.HINGE_STILE).get(0).section();
        this.catalogue = catalogue;
    }

    static List<HingeJoint> of(HungLeaf hung, Catalogue catalogue) {
        HingeJoints joints = new HingeJoints(hung, catalogue);
        List<HingeJoint> all = new ArrayList<>();
        for (int hinge = 0; hinge < hung.gate().leaf().pins().size(); hinge++) joints.at(hinge, all);
        return List.copyOf(all);
    }

    private void at(int hinge, List<HingeJoint> all) {
        all.add(onLeaf(hinge));
        if (gate.isOnWall()) return;
        all.addAll(gate.hingePost()
                .match(
                        steel -> onSteel(hinge, steel),
                        wood -> WoodPostJoints.of(gate, post, hinge, wood, size(fixing.toPost()))));
    }

    /** What carries a hinge in a steel post; lag screws hold nothing there, which its findings say. */
    private List<HingeJoint> onSteel(int hinge, Section steel) {
        List<HingeJoint> joints = new ArrayList<>();
        fixing.toPost()
                .match(
                        welded -> joints.add(weld(
                                "hinge.post-weld",
                                "weld to post",
                                id(hinge),
                                welded,
                                steel,
                                pull -> postSide(pull, hinge))),
                        bolted -> joints.add(bolts(
                                "hinge.post-bolts",
                                "bolts to post",
                                id(hinge),
                                bolted,
                                steel,
                                topOver(hinge),
                                pull -> postSide(pull, hinge))),
                        lagged -> false);
        joints.add(wall(hinge, steel));
        fixing.toPost().match(welded -> false, bolted -> joints.add(drilled(hinge, bolted, steel)), lagged -> false);
        return joints;
    }

    private double topOver(int hinge) {
        return gate.hingePostHeight().inches() - leaf.pins().get(hinge).z().inches();
    }

    private String id(int hinge) {
        return leaf.pins().get(hinge).id();
    }

    private Eccentric leafSide(HingePull pull, int hinge) {
        double cos = StrictMath.cos(pull.open().radians());
        double sin = StrictMath.sin(pull.open().radians()) * (leaf.hand().swing() == SwingWay.OUT ? 1 : -1);
        double r = pull.alongLb(hinge) * cos + pull.acrossLb(hinge) * sin;
        double n = -pull.alongLb(hinge) * sin + pull.acrossLb(hinge) * cos;
        double down = pull.downLb(hinge);
        double edge = leaf.outline().hingeEdge().inches();
        double off = gate.hinge().swingOffset().inches();
        double face = off - thicknessIn() / 2;
        if (face < 0) return new Eccentric(r, n, down, down * off, down * edge, n * edge - r * off);
        double toMiddle = edge + stile.depth().inches() / 2;
        return new Eccentric(n, r, down, down * toMiddle, down * face, r * face + n * toMiddle);
    }

    private double thicknessIn() {
        return (stile.isRound() ? stile.depth() : stile.width()).inches();
    }

    private Eccentric postSide(HingePull pull, int hinge) {
        return Eccentric.onPost(pull, hinge, gate.hinge().pinOffset().inches());
    }

    private HingeJoint onLeaf(int hinge) {
        String part = id(hinge);
        return fixing.toLeaf()
                .match(
                        welded -> weld(
                                "hinge.leaf-weld", "weld to leaf", part, welded, stile, pull -> leafSide(pull, hinge)),
                        bolted -> bolts(
                                "hinge.leaf-bolts",
                                "bolts to leaf",
                                part,
                                bolted,
                                stile,
                                stile.depth().inches(),
                                pull -> leafSide(pull, hinge)),
                        lagged -> {
                            throw new IllegalStateException("A leaf of steel takes no lag screws");
                        });
    }

    private interface Arms {
        Eccentric of(HingePull pull);
    }

    /** Fillets down both sides of the plate, capped by the thinner wall. */
    private HingeJoint weld(String id, String link, String part, Fastening.Welded welded, Section tube, Arms arms) {
        WeldLines lines = new WeldLines(fixing.plateHeight(), fixing.plateThickness());
        WallWeld.Governing inch = WallWeld.of(welded.leg(), ELECTRODE, tube, fixing.plateHeight());
        double allowed = inch.perInch().pounds();
        return new HingeJoint(
                id,
                link,
                part,
                "its weld, two fillets of " + text(welded.leg()) + " along " + text(fixing.plateHeight()) + ",",
                pull -> arms.of(pull).perInch(lines).pounds() / allowed,
                pull -> DecimalText.whole(arms.of(pull).perInch(lines).pounds()) + " lb an inch of "
                        + DecimalText.whole(allowed) + " (" + inch.limit() + " governs)",
                "f = N/A + M c/I + T c/J as vectors; fa = " + inch.formula(),
                inch.clause().startsWith("J") ? WELD_CLAUSE : WELD_CLAUSE + "; " + inch.clause(),
                Bolt.SAFETY,
                pull -> welded(arms.of(pull), lines, inch));
    }

    private static List<WorkedLine> welded(Eccentric forces, WeldLines weld, WallWeld.Governing inch) {
        List<WorkedLine> lines = new ArrayList<>(forces.lines(weld));
        WorkedLine f = lines.get(lines.size() - 1);
        WorkedLine allowed = inch.line();
        lines.add(allowed);
        lines.add(WorkedLine.of("ratio", "f / fa")
                .put(f)
                .put(allowed)
                .gives(forces.perInch(weld).pounds() / inch.perInch().pounds()));
        return lines;
    }

    /** @param topOver from the hinge to the tube's open top */
    private HingeJoint bolts(
            String id, String link, String part, Fastening.Bolted bolted, Section tube, double topOver, Arms arms) {
        BoltSize size = size(bolted);
        BoltStack stack = BoltStack.of(size, List.of(fixing.plateThickness(), tube.width()));
        Bolt bolt = new Bolt(bolted.diameter(), Bolt.A307, !stack.threadClearOf(fixing.plateThickness()));
        BoltRow row = new BoltRow(
                bolted.count(),
                bolted.apart(),
                tube.depth().times(0.5),
                fixing.plateHeight().times(0.5));
        double bearing = HingePlate.boltBearing(tube.yieldStress(), bolted.diameter(), tube.designWall())
                        .pounds()
                / Bolt.SAFETY;
        double under = underWasher(size, tube, topOver);
        return new HingeJoint(
                id,
                link,
                part,
                bolted.count() + " bolts of " + text(bolted.diameter()) + ", " + text(stack.order()) + " long, in "
                        + tube.name() + ",",
                pull -> {
                    BoltRow.Share share = arms.of(pull).share(row);
                    return Math.max(
                            bolt.use(share.shear(), share.tension()),
                            Math.max(
                                    share.shear().pounds() / bearing,
                                    share.tension().pounds() / under));
                },
                pull -> {
                    BoltRow.Share share = arms.of(pull).share(row);
                    return DecimalText.whole(share.shear().pounds()) + " lb shear and "
                            + DecimalText.whole(share.tension().pounds()) + " lb pull on a bolt, the wall bears "
                            + DecimalText.whole(bearing) + " lb, under the washer " + DecimalText.whole(under) + " lb";
                },
                "frv <= Fnv/2, T <= F'nt Ab/2, F'nt = 1.3 Fnt - 2 Fnt frv/Fnv; wall 1.8 Fy d t / 2; under the washer"
                        + " the lesser of 1.5 t dw Fu / 3 and of the wall under a pad as wide as the washer",
                BOLT_CLAUSE,
                Bolt.SAFETY,
                pull -> arms.of(pull)
                        .lines(new BoltWorking(
                                row, bolt, tube, size.washerOver(), pad(size, topOver), Force.pounds(under))));
    }

    /** What a wall may be pulled with under a nut's washer: not pulled over it, and not pushed in. */
    private static double underWasher(BoltSize size, Section tube, double topOver) {
        return Math.min(
                WasherPull.allowable(tube, size.washerOver()).pounds(),
                pad(size, topOver).allowable(tube, 1).pounds());
    }

    private static HingePlate pad(BoltSize size, double topOver) {
        Length over = size.washerOver();
        return new HingePlate(over, over, Length.inches(Math.max(0, topOver - over.inches() / 2)));
    }

    private BoltSize size(Fastening fastening) {
        return size(fastening, catalogue);
    }

    static BoltSize size(Fastening fastening, Catalogue catalogue) {
        return fastening.match(
                welded -> size(welded.leg(), welded.leg(), catalogue),
                bolted -> size(bolted.diameter(), bolted.hole(), catalogue),
                lagged -> size(lagged.diameter(), lagged.diameter(), catalogue));
    }

    private static BoltSize size(Length diameter, Length hole, Catalogue catalogue) {
        return catalogue.bolt(diameter).orElseGet(() -> BoltSize.ofNoTable(diameter, 8, Length.inches(0.165), hole));
    }

    /** The wall under the plate: pulled and tilted; pressed by the post's own bending below its top hinge. */
    private HingeJoint wall(int hinge, Section postSection) {
        double toTop = gate.hingePostHeight().inches()
                - leaf.pins().get(hinge).z().inches()
                - fixing.plateHeight().inches() / 2;
        HingePlate plate =
                new HingePlate(fixing.plateHeight(), fixing.plateThickness(), Length.inches(Math.max(0, toTop)));
        PostWall wall = new PostWall(plate, postSection);
        String near = plate.isNearOpenEnd(postSection) ? ", halved near the open top" : "";
        return new HingeJoint(
                "post.wall",
                "hinge post wall",
                post,
                "its wall, " + postSection.name() + ", at hinge " + id(hinge) + near + ",",
                pull -> wall.use(pull, hinge, pressed(pull, hinge, postSection), tilt(pull, hinge)),
                pull -> wall.numbers(pull, hinge, pressed(pull, hinge, postSection), tilt(pull, hinge)),
                postSection.isRound()
                        ? "P/(5.5 Fy t2 (1 + 0.25 lb/D) Qf / 1.67) + M/(0.8 lb Rn / 1.67)"
                        : "P/(Fy t2/(1 - b) (2 lb/B + 4 sqrt(1 - b) Qf) / 1.5) + M/(Mn / 1.5)",
                postSection.isRound()
                        ? "AISC 360-22 Table K2.1, K1.3, K1.4"
                        : "AISC 360-10 K1-12, 360-16 K3-6, 360-22 K1.4",
                postSection.isRound() ? 1.67 : 1.5,
                pull -> PlateWorking.of(
                        plate,
                        postSection,
                        pull.alongLb(hinge),
                        pull.acrossLb(hinge),
                        pull.downLb(hinge),
                        gate.hinge().pinOffset().inches(),
                        pressed(pull, hinge, postSection)));
    }

    private double tilt(HingePull pull, int hinge) {
        return Math.abs(pull.downLb(hinge)) * gate.hinge().pinOffset().inches();
    }

    /** U: the post's bending stress at the plate over 0.6 Fy; nothing bends it above its top hinge. */
    private double pressed(HingePull pull, int hinge, Section postSection) {
        if (hinge == leaf.pins().size() - 1) return 0;
        double stress = momentLbIn(pull, hinge) / Math.min(postSection.sxIn3(), postSection.syIn3());
        return Math.min(1, stress / (0.6 * postSection.yieldStress().psi()));
    }

    private double momentLbIn(HingePull pull, int hinge) {
        double toAxis =
                gate.hinge().pinOffset().inches() + gate.hingePostCentre().inches();
        return pull.bent(hinge, toAxis, gate.pinAcross().inches()).sizeLbIn();
    }

    private HingeJoint drilled(int hinge, Fastening.Bolted bolted, Section postSection) {
        double allowed = NetSection.allowable(postSection, bolted.hole()).poundInches();
        return new HingeJoint(
                "post.net",
                "hinge post at its holes",
                post,
                "drilled " + text(bolted.hole()) + " at hinge " + id(hinge) + ", its section",
                pull -> momentLbIn(pull, hinge) / allowed,
                pull -> DecimalText.whole(momentLbIn(pull, hinge) / 12) + " lb-ft of "
                        + DecimalText.whole(allowed / 12),
                "M <= Fy (Z - t dh (D - t)) / 1.67, dh = hole + 1/16 in.",
                "AISC 360-22 B4.3b, F1",
                1.67,
                pull -> drilled(postSection, bolted.hole(), momentLbIn(pull, hinge), allowed));
    }

    private static List<WorkedLine> drilled(Section post, Length hole, double momentLbIn, double allowedLbIn) {
        double wide = hole.inches() + 1 / 16.0;
        double t = post.usedWall().inches();
        WorkedLine dh = WorkedLine.of("dh", "hole + 1 / 16").put("hole", hole).gives(wide, "in.");
        WorkedLine gone = WorkedLine.of("dZ", "t \u00d7 dh \u00d7 (D - t)")
                .put("t", post.usedWall())
                .put(dh)
                .put("D", post.depth())
                .gives(t * wide * (post.depth().inches() - t), "in\u00b3");
        WorkedLine may = WorkedLine.of("Ma", "Mc \u00d7 max(0; Z - dZ) / Z")
                .put("Mc", TubeStrength.of(post).allowableX().poundInches(), "lb-in")
                .put("Z", post.zxIn3(), "in\u00b3")
                .put(gone)
                .gives(allowedLbIn, "lb-in");
        return List.of(
                dh,
                gone,
                may,
                WorkedLine.of("ratio", "M / Ma")
                        .put("M", momentLbIn, "lb-in")
                        .put(may)
                        .note("M of the post at this hinge")
                        .gives(momentLbIn / allowedLbIn));
    }

    private static String text(Length length) {
        return LengthText.feetAndInches(length.inches());
    }
}
