package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.BoltSize;
import plumbleaf.engine.catalogue.Fastening;
import plumbleaf.engine.catalogue.HingeFixing;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.engine.strength.Bolt;
import plumbleaf.engine.strength.BoltRow;
import plumbleaf.engine.strength.BoltStack;
import plumbleaf.engine.strength.LagScrew;
import plumbleaf.engine.strength.WoodFixing;
import plumbleaf.engine.strength.WoodFixingWorking;
import plumbleaf.engine.strength.WoodPostStrength;

/**
 * What carries a hinge in a wood post: bolts through it with a washer on the far side, or lag screws; and the post where it is drilled. The plate lies on the face
 * towards the opening, so what pulls the hinge along the run pulls the fixings out, and what pushes it across, or hangs on it, bears them on the wood.
 */
final class WoodPostJoints {
    /** KF of connections over the wind's CD: what they are expected to carry over their allowable. Source: NDS 2018 Appendix N, Table N1, from memory. */
    private static final double RESERVE = 3.32 / 1.6;

    /** KF of bending, likewise. */
    private static final double RESERVE_BENDING = 2.54 / 1.6;

    private static final String CLAUSE =
            "NDS 2018 12.3 yield modes, 11.3.3 wet 0.7, 12.5.1; 3.10.2 under the washer; AISC 360-22 J3.7; elastic vector method";
    private static final String LAG_CLAUSE =
            "NDS 2018 12.2.1 withdrawal, 12.3 yield modes, Equation 12.4-1, 11.3.3 wet 0.7; elastic vector method";

    private final HungGate gate;
    private final String post;
    private final int hinge;
    private final WoodPost wood;
    private final BoltSize size;
    private final HingeFixing fixing;

    private WoodPostJoints(HungGate gate, String post, int hinge, WoodPost wood, BoltSize size) {
        this.gate = gate;
        this.post = post;
        this.hinge = hinge;
        this.wood = wood;
        this.size = size;
        this.fixing = gate.hinge().fixing();
    }

    /** Nothing where the hinge is welded on, which {@link #findings} refuses. */
    static List<HingeJoint> of(HungGate gate, String post, int hinge, WoodPost wood, BoltSize size) {
        WoodPostJoints joints = new WoodPostJoints(gate, post, hinge, wood, size);
        return gate.hinge()
                .fixing()
                .toPost()
                .match(
                        welded -> List.of(),
                        bolted -> List.of(joints.bolts(bolted), joints.drilled(bolted.hole())),
                        lagged -> List.of(joints.lags(lagged), joints.drilled(lagged.diameter())));
    }

    private String id() {
        return gate.leaf().pins().get(hinge).id();
    }

    private Eccentric onPost(HingePull pull) {
        return Eccentric.onPost(pull, hinge, gate.hinge().pinOffset().inches());
    }

    private BoltRow row(int count, Length apart) {
        return new BoltRow(
                count, apart, wood.width().times(0.5), fixing.plateHeight().times(0.5));
    }

    /** From the uppermost fixing of this hinge to the post's top. */
    private Length toEnd(int count, Length apart) {
        double above = gate.hingePostHeight().inches()
                - gate.leaf().pins().get(hinge).z().inches()
                - apart.inches() * (count - 1) / 2;
        return Length.inches(Math.max(0, above));
    }

    private WoodFixing dowel(Fastening.Bolted bolted) {
        return new WoodFixing(
                wood,
                bolted.diameter(),
                bolted.diameter(),
                wood.depth(),
                fixing.plateThickness(),
                bolted.count() > 1 ? bolted.apart() : Length.ZERO,
                toEnd(bolted.count(), bolted.apart()));
    }

    private HingeJoint bolts(Fastening.Bolted bolted) {
        BoltStack stack = BoltStack.of(size, List.of(fixing.plateThickness(), wood.depth()));
        Bolt bolt = new Bolt(bolted.diameter(), Bolt.A307, !stack.threadClearOf(fixing.plateThickness()));
        BoltRow row = row(bolted.count(), bolted.apart());
        WoodFixing dowel = dowel(bolted);
        double washer = dowel.washer(size.woodWasherOver(), bolted.hole()).pounds();
        return new HingeJoint(
                "hinge.post-bolts",
                "bolts to post",
                id(),
                bolted.count() + " bolts of " + text(bolted.diameter()) + ", " + text(stack.order()) + " long, through "
                        + wood.name() + ",",
                pull -> {
                    BoltRow.Share share = onPost(pull).share(row);
                    double sideways =
                            dowel.sideways(share.toRowDeg(), pull.duration()).pounds();
                    return Math.max(
                            bolt.use(share.shear(), share.tension()),
                            Math.max(
                                    share.shear().pounds() / sideways,
                                    share.tension().pounds() / washer));
                },
                pull -> {
                    BoltRow.Share share = onPost(pull).share(row);
                    return sideways(share, dowel, pull.duration()) + "; "
                            + DecimalText.whole(share.tension().pounds()) + " lb pull, under its "
                            + text(size.woodWasherOver()) + " washer the wood bears " + DecimalText.whole(washer)
                            + " lb";
                },
                "s/Z', T/(Fc CM Cb A), AISC J3 for the steel; Z' = Z CD CM Cd",
                CLAUSE,
                RESERVE,
                pull -> WoodFixingWorking.bolts(
                        dowel,
                        row,
                        bolt,
                        size.woodWasherOver(),
                        bolted.hole(),
                        onPost(pull).carried(),
                        pull.duration()));
    }

    private static String sideways(BoltRow.Share share, WoodFixing dowel, double duration) {
        return DecimalText.whole(share.shear().pounds()) + " lb on one at "
                + DecimalText.whole(share.toRowDeg()) + " degrees to the grain, it may take "
                + DecimalText.whole(dowel.sideways(share.toRowDeg(), duration).pounds()) + " lb (mode "
                + dowel.mode(share.toRowDeg()) + ", CD " + DecimalText.upTo(duration, 2) + ", Cd "
                + DecimalText.fixed(dowel.geometry(), 2) + ")";
    }

    private LagScrew screw(Fastening.Lagged lagged) {
        return new LagScrew(size, lagged.length(), fixing.plateThickness());
    }

    private WoodFixing dowel(Fastening.Lagged lagged) {
        return screw(lagged)
                .dowel(wood, lagged.count() > 1 ? lagged.apart() : Length.ZERO, toEnd(lagged.count(), lagged.apart()));
    }

    private HingeJoint lags(Fastening.Lagged lagged) {
        LagScrew screw = screw(lagged);
        BoltRow row = row(lagged.count(), lagged.apart());
        WoodFixing dowel = dowel(lagged);
        return new HingeJoint(
                "hinge.post-lags",
                "lag screws to post",
                id(),
                lagged.count() + " lag screws of " + text(lagged.diameter()) + " x " + text(lagged.length()) + " in "
                        + wood.name() + ",",
                pull -> {
                    BoltRow.Share share = onPost(pull).share(row);
                    Force out = screw.pulled(wood, pull.duration());
                    return LagScrew.use(
                            share.shear(), share.tension(), dowel.sideways(share.toRowDeg(), pull.duration()), out);
                },
                pull -> {
                    BoltRow.Share share = onPost(pull).share(row);
                    return sideways(share, dowel, pull.duration()) + "; "
                            + DecimalText.whole(share.tension().pounds()) + " lb pull, "
                            + text(screw.thread()) + " of thread hold "
                            + DecimalText.whole(
                                    screw.pulled(wood, pull.duration()).pounds()) + " lb";
                },
                "sqrt(s2 + T2) / Za', Za' = Wp Z'/(Wp cos2 a + Z' sin2 a), W = 1800 G^1.5 D^0.75",
                LAG_CLAUSE,
                RESERVE,
                pull -> WoodFixingWorking.lags(screw, dowel, row, onPost(pull).carried(), pull.duration()));
    }

    private HingeJoint drilled(Length hole) {
        WoodPostStrength strength = WoodPostStrength.of(wood);
        return new HingeJoint(
                "post.net",
                "hinge post at its holes",
                post,
                "drilled " + text(hole) + " at hinge " + id() + ", its section",
                pull -> {
                    HingePull.Bent bent = bent(pull);
                    return strength.drilled(bent.along(), bent.across(), hole, pull.duration());
                },
                pull -> {
                    HingePull.Bent bent = bent(pull);
                    return DecimalText.whole(bent.along().inPoundFeet()) + " lb-ft along and "
                            + DecimalText.whole(bent.across().inPoundFeet())
                            + " lb-ft across on what the hole leaves, Fb' "
                            + DecimalText.whole(strength.bending().psi() * pull.duration()) + " psi";
                },
                "M1 c/(I - dh d3/12) + M2 c/(I - d dh3/12) <= Fb CD CM",
                "NDS 2018 3.1.2, 3.3; wet service",
                RESERVE_BENDING,
                pull -> {
                    HingePull.Bent bent = bent(pull);
                    return strength.drilledLines(bent.along(), bent.across(), hole, pull.duration());
                });
    }

    private HingePull.Bent bent(HingePull pull) {
        double toAxis =
                gate.hinge().pinOffset().inches() + gate.hingePostCentre().inches();
        return pull.bent(hinge, toAxis, gate.pinAcross().inches());
    }

    /** Where fixings may not stand, and what cannot be fixed to wood, or to steel, at all. */
    static List<Finding> findings(HungLeaf hung, DesignBasis basis, Sizes sizes) {
        List<Finding> findings = new ArrayList<>();
        HungGate gate = hung.gate();
        if (gate.isOnWall()) return findings;
        String part = hung.post();
        Fastening toPost = gate.hinge().fixing().toPost();
        Optional<WoodPost> wood = gate.hingePost().match(steel -> Optional.<WoodPost>empty(), Optional::of);
        boolean welds = toPost.match(weld -> true, bolts -> false, lags -> false);
        boolean lags = toPost.match(weld -> false, bolts -> false, is -> true);
        if (wood.isEmpty()) {
            if (lags)
                findings.add(refused(part, "its hinges go on with lag screws, which hold nothing in a steel post"));
            return findings;
        }
        if (welds) {
            findings.add(refused(part, "its hinges are welded on, and nothing is welded to wood"));
            return findings;
        }
        for (int hinge = 0; hinge < gate.leaf().pins().size(); hinge++)
            new WoodPostJoints(gate, part, hinge, wood.get(), sizes.of(toPost)).places(findings, basis, toPost);
        return findings;
    }

    /** The size that a fastening has in the catalogue. */
    interface Sizes {
        BoltSize of(Fastening fastening);
    }

    private static Finding refused(String part, String why) {
        return Checked.note(
                "hinge.post-fixing",
                Severity.MUST_FIX,
                part,
                "Post " + part + ": " + why
                        + ". Take a through-bolted or lag-screwed hinge for a wood post, a welded or bolted one for"
                        + " a steel post.",
                Basis.commonPractice("hinges by what the post is made of"));
    }

    private void places(List<Finding> findings, DesignBasis basis, Fastening toPost) {
        WoodFixing dowel = toPost.match(welded -> fault(), this::dowel, this::dowel);
        boolean shallow =
                toPost.match(weld -> false, bolts -> false, lags -> !screw(lags).isDeepEnough());
        if (dowel.isTooNear() || shallow)
            findings.add(Checked.note(
                    "hinge.post-place",
                    Severity.MUST_FIX,
                    id(),
                    id()
                            + ": its fixings stand too near to each other or to the top of the post, or do not go deep enough, for any strength to"
                            + " count: 3 diameters apart, 2 to the end, a lag 4 deep at the least. Let the post stand taller, or take another hinge.",
                    Basis.clause("NDS 2018 12.5.1, 12.1.4.6")));
        if (hinge > 0) return;
        findings.add(Checked.of(
                "hinge.post-edge",
                basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION,
                post,
                "Post " + post + ": from the hinge's fixings to its side are " + text(dowel.edge())
                        + ", 4 diameters are "
                        + text(dowel.edgeNeeded())
                        + "; nearer, a push across the grain may split it. A wider post or thinner bolts.",
                Basis.clause("NDS 2018 Table 12.5.1C, from memory"),
                Measure.provided(dowel.edge().inches(), dowel.edgeNeeded().inches(), "in")));
    }

    private static WoodFixing fault() {
        throw new IllegalStateException("Nothing is welded to wood");
    }

    private static String text(Length length) {
        return LengthText.feetAndInches(length.inches());
    }
}
