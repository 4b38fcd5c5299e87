package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Fastening;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Draws a leaf out: frame, hinge pins, holes, infill, weight. */
public final class LeafMaker {
    /** Hinge and nailer bolts, drilled a sixteenth over. Common practice, no source. */
    static final Length NAILER_BOLT = Length.inches(0.375);

    private static final Length NAILER_BOLT_HOLE = Length.inches(0.4375);

    /** First and last nailer bolt from the inner face of the stile, and the most between two. Common practice, no source. */
    private static final double BOLT_FROM_STILE_IN = 3;

    private static final double BOLT_SPACING_IN = 24;

    private LeafMaker() {}

    /**
     * @param id {@code G1a}
     * @param midRails rails between the bottom and the top one
     * @param latchZ height of the latch from grade at the pin axis
     */
    public static Leaf make(
            String id, Hand hand, Outline outline, GateParts parts, int midRails, HingeSpec hinges, Offset latchZ) {
        return make(id, hand, outline, parts, midRails, List.of(), hinges, latchZ);
    }

    /** @param midRailsAt heights of the mid rails above the outline's bottom at the hinge edge; empty where they stand evenly */
    public static Leaf make(
            String id,
            Hand hand,
            Outline outline,
            GateParts parts,
            int midRails,
            List<Length> midRailsAt,
            HingeSpec hinges,
            Offset latchZ) {
        Place latch = Place.at(outline.latchEdge().inches(), 0, latchZ.inches());
        Fitting fitting = new Fitting("latch", latch, parts.latch().weight());
        return make(id, hand, outline, parts, midRails, midRailsAt, hinges, latchZ, List.of(fitting));
    }

    /** @param atLatchEdge what hangs at the latch edge: the latch, or rod and stop strip of a pair's leaf */
    static Leaf make(
            String id,
            Hand hand,
            Outline outline,
            GateParts parts,
            int midRails,
            List<Length> midRailsAt,
            HingeSpec hinges,
            Offset latchZ,
            List<Fitting> atLatchEdge) {
        FrameLines lines = FrameLines.of(outline, parts.frame(), midRails, midRailsAt);
        LeafMembers frame = LeafMembers.cut(id, lines, parts.frame(), parts.joint(), parts.bracing());
        List<HingePin> pins = pins(id, outline, hinges);
        Infill infill = parts.cladding()
                .match(
                        open -> Infill.none(),
                        wood -> Infill.of(outline, lines, frame.members(), wood, bolts(lines)),
                        pickets -> SteelPickets.in(id, outline, lines, frame.members(), pickets),
                        mesh -> Panels.of(id, lines, frame.members(), mesh),
                        sheet -> Panels.of(id, lines, frame.members(), sheet));
        List<Member> members =
                drilled(frame.members(), pins, parts.hinge().fixing().toLeaf(), infill, parts.cladding());
        List<Weld> welds = new ArrayList<>(frame.welds());
        welds.addAll(infill.welds());
        List<Fitting> fittings = fittings(pins, parts, atLatchEdge, infill, frame);
        LeafWeight weight = LeafWeights.of(members, infill, fittings);
        return new Leaf(
                id,
                hand,
                outline,
                new LeafMake(parts.frame(), parts.bracing(), parts.joint(), parts.bracket()),
                members,
                frame.joints(),
                pins,
                Place.at(outline.latchEdge().inches(), 0, latchZ.inches()),
                outline.corners().get(1),
                welds,
                infill.nailers(),
                infill.pickets(),
                infill.trim(),
                infill.gap(),
                infill.panels(),
                infill.loads(),
                fittings,
                weight);
    }

    private static List<HingePin> pins(String id, Outline outline, HingeSpec hinges) {
        double edge = outline.hingeEdge().inches();
        double low = outline.bottomIn(edge) + hinges.fromBottom().inches();
        double high = outline.topIn(edge) - hinges.fromTop().inches();
        if (!(high > low)) throw new IllegalArgumentException("The hinges overlap: the leaf is too low for them");
        List<HingePin> pins = new ArrayList<>();
        for (int i = 0; i < hinges.count(); i++) {
            double z = low + (high - low) * i / (hinges.count() - 1);
            pins.add(new HingePin(id + ".h" + (i + 1), Offset.inches(z), i == hinges.weightOn()));
        }
        return pins;
    }

    /** Where the nailers are bolted to the rails, from stile to stile. */
    static List<Offset> bolts(FrameLines lines) {
        double from = lines.hingeFaceIn() + BOLT_FROM_STILE_IN;
        double to = lines.latchFaceIn() - BOLT_FROM_STILE_IN;
        if (to <= from) return List.of(Offset.inches((from + to) / 2));
        int spaces = Math.max(1, (int) Math.ceil((to - from) / BOLT_SPACING_IN - 1e-9));
        List<Offset> bolts = new ArrayList<>();
        for (int i = 0; i <= spaces; i++) bolts.add(Offset.inches(from + (to - from) * i / spaces));
        return List.copyOf(bolts);
    }

    static List<Member> drilled(
            List<Member> members, List<HingePin> pins, Fastening hinge, Infill infill, Cladding cladding) {
        List<Nailer> nailers = infill.nailers();
        List<Member> drilled = new ArrayList<>();
        for (Member member : members) {
            List<Hole> holes = new ArrayList<>();
            double before = LeafMembers.datumBeforeIn(member);
            if (member.role() == MemberRole.HINGE_STILE) {
                for (int i = 0; i < pins.size(); i++) {
                    double at = pins.get(i).z().inches() - member.from().z().inches() + before;
                    holes.addAll(hingeHoles("hinge " + (i + 1), at, hinge));
                }
            }
            for (Nailer nailer : nailers) {
                if (nailer.upright()) {
                    upright(nailer, member, before, members).ifPresent(holes::addAll);
                    continue;
                }
                boolean other = !nailer.rail().equals(member.id());
                boolean back = nailer.middle().n().inches()
                                * nailers.get(0).middle().n().inches()
                        < 0;
                if (other || back) continue;
                double perR = member.cutLength().inches()
                        / (member.to().r().inches() - member.from().r().inches());
                for (Offset bolt : nailer.bolts()) {
                    double at = (bolt.inches() - member.from().r().inches()) * perR + before;
                    holes.add(new Hole("nailer bolt", Length.inches(at), Stated.of(NAILER_BOLT_HOLE)));
                }
            }
            if (member.role().isRail())
                cladding.match(
                                open -> List.<Hole>of(),
                                wood -> List.<Hole>of(),
                                pickets -> SteelPickets.punched(member, infill.pickets(), pickets),
                                mesh -> List.<Hole>of(),
                                sheet -> List.<Hole>of())
                        .forEach(holes::add);
            drilled.add(member.drilled(holes));
        }
        return drilled;
    }

    /** Holes for an upright nailer: up its stile, or one in every rail where it stands between them. */
    private static Optional<List<Hole>> upright(Nailer nailer, Member member, double before, List<Member> all) {
        boolean onStile = all.stream()
                .anyMatch(
                        each -> each.id().equals(nailer.rail()) && !each.role().isRail());
        List<Hole> holes = new ArrayList<>();
        if (onStile && nailer.rail().equals(member.id()))
            for (Offset bolt : nailer.bolts())
                holes.add(nailerHole(bolt.inches() - member.from().z().inches() + before));
        if (!onStile && member.role().isRail()) {
            double perR = member.cutLength().inches()
                    / (member.to().r().inches() - member.from().r().inches());
            holes.add(
                    nailerHole((nailer.middle().r().inches() - member.from().r().inches()) * perR + before));
        }
        return holes.isEmpty() ? Optional.empty() : Optional.of(holes);
    }

    private static Hole nailerHole(double atIn) {
        return new Hole("nailer bolt", Length.inches(atIn), Stated.of(NAILER_BOLT_HOLE));
    }

    /** A bolted hinge is drilled evenly about its pin; a welded one is not. */
    private static List<Hole> hingeHoles(String what, double atIn, Fastening hinge) {
        List<Hole> holes = new ArrayList<>();
        return hinge.match(
                welded -> holes,
                bolted -> {
                    double first = atIn - bolted.apart().inches() * (bolted.count() - 1) / 2;
                    for (int i = 0; i < bolted.count(); i++) {
                        double at = first + bolted.apart().inches() * i;
                        if (at > 0) holes.add(new Hole(what, Length.inches(at), Stated.of(bolted.hole())));
                    }
                    return holes;
                },
                lagged -> holes);
    }

    private static List<Fitting> fittings(
            List<HingePin> pins, GateParts parts, List<Fitting> atLatchEdge, Infill infill, LeafMembers made) {
        List<Fitting> fittings = new ArrayList<>();
        for (HingePin pin : pins) {
            fittings.add(new Fitting(
                    "hinge", Place.at(0, 0, pin.z().inches()), parts.hinge().weight()));
        }
        fittings.addAll(atLatchEdge);
        fittings.addAll(infill.bolts());
        fittings.addAll(made.fittings());
        return fittings;
    }
}
