package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.MemberForce;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.WeldBox;
import plumbleaf.engine.strength.WeldLines;
import plumbleaf.engine.strength.WeldWorking;

/**
 * Welds at the ends of a leaf's members. A miter is welded all round. A square tube that
 * butts against one of its own width has fillets above and below; the flare between the round corners counts only from a radius of 3/8 in. up.
 */
public final class FrameWelds {
    /** Least fillet that is laid on thin tube. Source: AISC 360-22 Table J2.4. */
    private static final double LEAST_LEG_IN = 0.125;

    /** Below this outside corner radius no throat of a flare bevel counts. Source: AISC 360-22 Table J2.2. */
    private static final double FLARE_FROM_IN = 0.375;

    private static final Stress ELECTRODE = Stress.ksi(70);

    private FrameWelds() {}

    static final String CLAUSE = "AISC 360-22 J2.4, Table J2.2, J4.2(b); elastic vector method";
    static final String FORMULA = "f = N/A + M/S + T c/J as vectors; fa = min(0.60 Fexx 0.707 w, 0.60 Fu t) / 2";

    /** Of a member's welded ends; nothing where they are bolted, or of a rod, whose thread gives way before its tab. */
    static double use(Member member, MemberForce force, Joint joint) {
        if (joint == Joint.BRACKETED) return 0;
        return perInch(member, force, joint) / allowable(member.section());
    }

    /** The greater of its two ends. */
    static double perInch(Member member, MemberForce force, Joint joint) {
        double most = 0;
        for (MemberForce.End end : force.ends()) most = Math.max(most, perInch(member, end, joint));
        return most;
    }

    private static double perInch(Member member, MemberForce.End end, Joint joint) {
        Section tube = member.section();
        double n = end.axial().pounds();
        double v = end.shear().pounds();
        double in = end.inPlane().poundInches();
        double out = end.outOfPlane().poundInches();
        double twist = end.torsion().poundInches();
        if (goesRound(member, joint))
            return new WeldBox(tube.depth(), tube.width())
                    .perInch(n, v, in, out, twist)
                    .pounds();
        return new WeldLines(tube.width(), tube.depth())
                .perInch(n, v, 0, twist, out, in)
                .pounds();
    }

    /** {@link #use} line by line at the worse end; nothing where the ends are bolted. */
    static List<WorkedLine> lines(Member member, MemberForce force, Joint joint) {
        if (joint == Joint.BRACKETED) return List.of();
        MemberForce.End worst = force.ends().get(0);
        for (MemberForce.End end : force.ends())
            if (perInch(member, end, joint) > perInch(member, worst, joint)) worst = end;
        Section tube = member.section();
        double n = worst.axial().pounds();
        double v = worst.shear().pounds();
        double in = worst.inPlane().poundInches();
        double out = worst.outOfPlane().poundInches();
        double twist = worst.torsion().poundInches();
        List<WorkedLine> lines = new ArrayList<>(
                goesRound(member, joint)
                        ? WeldWorking.of(new WeldBox(tube.depth(), tube.width()), n, v, in, out, twist)
                        : WeldWorking.of(new WeldLines(tube.width(), tube.depth()), n, v, 0, twist, out, in));
        WorkedLine f = lines.get(lines.size() - 1);
        WorkedLine allowed =
                WallWeld.of(leg(tube), ELECTRODE, tube, tube.width()).line();
        lines.add(allowed);
        lines.add(WorkedLine.of("ratio", "f / fa").put(f).put(allowed).gives(use(member, force, joint)));
        return List.copyOf(lines);
    }

    private static boolean goesRound(Member member, Joint joint) {
        if (member.section().isRound()) return true;
        boolean corner = member.role() != MemberRole.MID_RAIL && member.role() != MemberRole.BRACE;
        boolean flareCounts = 2 * member.section().designWall().inches() >= FLARE_FROM_IN;
        return flareCounts || (corner && joint == Joint.MITERED);
    }

    /** Leg of the fillets that the strength is worked out with, and that the shop lays: the wall to the nearest 1/16 in., 1/8 in. at least. */
    public static Length leg(Section tube) {
        return Length.inches(
                Math.max(LEAST_LEG_IN, Math.round(tube.nominalWall().inches() * 16) / 16.0));
    }

    static double allowable(Section tube) {
        return WallWeld.allowablePerInch(leg(tube), ELECTRODE, tube, tube.width())
                .pounds();
    }
}
