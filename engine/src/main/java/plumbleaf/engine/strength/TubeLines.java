package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.Section;

/** What a pipe or tube may carry, line by line for the calculation book: the branch of each clause that holds, with its numbers put in. */
public final class TubeLines {
    private static final double E_PSI = Steel.ELASTIC_MODULUS.psi();

    private TubeLines() {}

    /** Bending, shear and torsion, which are the section's own. {@code Mcx} in its depth and {@code Mcy} across it, {@code Mc} where both are one. */
    public static List<WorkedLine> of(Section section) {
        TubeStrength strength = TubeStrength.of(section);
        List<WorkedLine> lines = new ArrayList<>();
        if (section.isRound()) {
            lines.add(roundBending(section, strength));
            lines.addAll(roundShear(section, strength));
            lines.addAll(roundTorsion(section, strength));
            return List.copyOf(lines);
        }
        if (strength.bendsAlike())
            lines.addAll(bending(section, "Mc", strength.allowableX().poundInches()));
        else {
            lines.addAll(bending(section, "Mcx", strength.allowableX().poundInches()));
            lines.addAll(bending(section.turned(), "Mcy", strength.allowableY().poundInches()));
        }
        lines.addAll(tubeShear(section, strength));
        lines.addAll(tubeTorsion(section, strength));
        return List.copyOf(lines);
    }

    private static WorkedLine.Open steel(WorkedLine.Open line, Section section) {
        return line.put("Fy", section.yieldStress().psi(), "psi");
    }

    private static WorkedLine.Open elastic(WorkedLine.Open line) {
        return line.put("E", E_PSI, "psi");
    }

    private static WorkedLine roundBending(Section section, TubeStrength strength) {
        RoundWall wall = RoundWall.of(section);
        double allowed = strength.allowableX().poundInches();
        if (wall.isCompact())
            return steel(WorkedLine.of("Mc", "Fy \u00d7 Z / 1.67"), section)
                    .put("Z", section.zxIn3(), "in\u00b3")
                    .note("F8-1, wall compact")
                    .gives(allowed, "lb-in");
        boolean noncompact = wall.isNoncompact();
        WorkedLine.Open line = noncompact
                ? steel(WorkedLine.of("Mc", "(0.021 \u00d7 E / (D / t) + Fy) \u00d7 S / 1.67"), section)
                : WorkedLine.of("Mc", "0.33 \u00d7 E / (D / t) \u00d7 S / 1.67");
        return elastic(line)
                .put("D", section.depth())
                .put("t", section.usedWall())
                .put("S", section.sxIn3(), "in\u00b3")
                .note(noncompact ? "F8-2, wall noncompact" : "F8-3, wall slender")
                .gives(allowed, "lb-in");
    }

    /** Bent in its depth: whole, or less what a thin flange or web loses. */
    private static List<WorkedLine> bending(Section section, String name, double allowedLbIn) {
        FlatWalls walls = FlatWalls.of(section);
        List<WorkedLine> lines = new ArrayList<>();
        WorkedLine whole = steel(WorkedLine.of("Mp", "Fy \u00d7 Z"), section)
                .put("Z", section.zxIn3(), "in\u00b3")
                .note("F7-1")
                .gives(walls.plasticLbIn(), "lb-in");
        lines.add(whole);
        List<String> least = new ArrayList<>(List.of("Mp"));
        List<WorkedLine> parts = new ArrayList<>(List.of(whole));
        if (!walls.isCompact())
            lines.add(
                    elastic(steel(WorkedLine.of("k", "sqrt(E / Fy)"), section)).gives(walls.root()));
        if (walls.flangeIsSlender()) {
            lines.addAll(slenderFlange(section, walls, parts));
            least.set(0, "Me");
            parts.remove(whole);
        } else if (walls.flangeIsNoncompact()) {
            WorkedLine less = thin(
                            section, "Mf", "(3.57 \u00d7 b / t / k - 4)", "b", walls.flangeFlatIn(), walls.root())
                    .put(whole)
                    .note("F7-2, flange noncompact")
                    .gives(walls.byFlangeLbIn(), "lb-in");
            lines.add(less);
            parts.add(less);
            least.add("Mf");
        }
        if (walls.webIsNoncompact()) {
            WorkedLine less = thin(
                            section, "Mw", "(0.305 \u00d7 h / t / k - 0.738)", "h", walls.webFlatIn(), walls.root())
                    .put(whole)
                    .note("F7-6, web noncompact")
                    .gives(walls.byWebLbIn(), "lb-in");
            lines.add(less);
            parts.add(less);
            least.add("Mw");
        }
        String formula = least.size() == 1 ? least.get(0) : "min(" + String.join("; ", least) + ")";
        WorkedLine.Open allowed = WorkedLine.of(name, formula + " / 1.67");
        for (WorkedLine part : parts) allowed.put(part);
        lines.add(allowed.gives(allowedLbIn, "lb-in"));
        return lines;
    }

    private static WorkedLine.Open thin(
            Section section, String symbol, String loss, String flat, double flatIn, double root) {
        return steel(WorkedLine.of(symbol, "Mp - (Mp - Fy \u00d7 S) \u00d7 " + loss), section)
                .put("S", section.sxIn3(), "in\u00b3")
                .put(flat, flatIn, "in.")
                .put("t", section.usedWall())
                .put("k", root);
    }

    private static List<WorkedLine> slenderFlange(Section section, FlatWalls walls, List<WorkedLine> parts) {
        WorkedLine be = WorkedLine.of("be", "min(b; 1.92 \u00d7 t \u00d7 k \u00d7 (1 - 0.38 / (b / t) \u00d7 k))")
                .put("b", walls.flangeFlatIn(), "in.")
                .put("t", section.usedWall())
                .put("k", walls.root())
                .note("F7-4, flange slender")
                .gives(walls.effectiveIn(), "in.");
        WorkedLine ie = WorkedLine.of("Ie", "I - 2 \u00d7 (b - be) \u00d7 t \u00d7 ((H - t) / 2)\u00b2")
                .put("I", section.ixIn4(), "in4")
                .put("b", walls.flangeFlatIn(), "in.")
                .put(be)
                .put("t", section.usedWall())
                .put("H", section.depth())
                .gives(walls.effectiveInertiaIn4(), "in4");
        WorkedLine me = steel(WorkedLine.of("Me", "Fy \u00d7 2 \u00d7 Ie / H"), section)
                .put(ie)
                .put("H", section.depth())
                .note("F7-3")
                .gives(walls.byEffectiveLbIn(), "lb-in");
        parts.add(me);
        return List.of(be, ie, me);
    }

    private static WorkedLine roundStress(Section section, String factor, double psi) {
        return elastic(steel(
                        WorkedLine.of("Fcr", "min(0.6 \u00d7 Fy; " + factor + " \u00d7 E / (D / t)^1.5)"), section))
                .put("D", section.depth())
                .put("t", section.usedWall())
                .gives(psi, "psi");
    }

    private static List<WorkedLine> roundShear(Section section, TubeStrength strength) {
        WorkedLine stress = roundStress(section, "0.78", RoundWall.of(section).shearPsi());
        return List.of(
                stress,
                WorkedLine.of("Vc", "Fcr \u00d7 A / 2 / 1.67")
                        .put(stress)
                        .put("A", section.areaIn2(), "in\u00b2")
                        .note("G5-1")
                        .gives(strength.allowableShear()));
    }

    private static List<WorkedLine> roundTorsion(Section section, TubeStrength strength) {
        WorkedLine stress = roundStress(section, "0.60", RoundWall.of(section).torsionPsi());
        return List.of(
                stress,
                WorkedLine.of("Tc", "Fcr \u00d7 \u03c0 \u00d7 (D - t)\u00b2 \u00d7 t / 2 / 1.67")
                        .put(stress)
                        .put("D", section.depth())
                        .put("t", section.usedWall())
                        .note("H3-1")
                        .gives(strength.allowableTorsion().poundInches(), "lb-in"));
    }

    private static List<WorkedLine> tubeShear(Section section, TubeStrength strength) {
        FlatWalls walls = FlatWalls.of(section);
        WorkedLine h = WorkedLine.of("h", "H - 3 \u00d7 t")
                .put("H", section.depth())
                .put("t", section.usedWall())
                .gives(walls.webFlatIn(), "in.");
        WorkedLine cv = buckling(section, walls, h);
        return List.of(
                h,
                cv,
                steel(WorkedLine.of("Vc", "0.6 \u00d7 Fy \u00d7 2 \u00d7 h \u00d7 t \u00d7 Cv / 1.67"), section)
                        .put(h)
                        .put("t", section.usedWall())
                        .put(cv)
                        .note("G4-1")
                        .gives(strength.allowableShear()));
    }

    private static List<WorkedLine> tubeTorsion(Section section, TubeStrength strength) {
        double constant = TubeStrength.torsionConstantIn3(section.depth(), section.width(), section.usedWall());
        WorkedLine c = WorkedLine.of(
                        "C", "2 \u00d7 (B - t) \u00d7 (H - t) \u00d7 t - 4.5 \u00d7 (4 - \u03c0) \u00d7 t\u00b3")
                .put("B", section.width())
                .put("H", section.depth())
                .put("t", section.usedWall())
                .gives(constant, "in\u00b3");
        WorkedLine stress = torsionStress(section);
        return List.of(
                c,
                stress,
                WorkedLine.of("Tc", "Fcr \u00d7 C / 1.67")
                        .put(stress)
                        .put(c)
                        .note("H3-1")
                        .gives(strength.allowableTorsion().poundInches(), "lb-in"));
    }

    /** Cv of the webs. */
    private static WorkedLine buckling(Section section, FlatWalls walls, WorkedLine h) {
        if (walls.webShearsWhole())
            return WorkedLine.of("Cv", "1")
                    .note("G2-9, h / t within 1.10 sqrt(kv E / Fy), kv 5")
                    .gives(walls.webBuckling());
        WorkedLine.Open line = walls.webShearsNearlyWhole()
                ? WorkedLine.of("Cv", "1.10 \u00d7 sqrt(5 \u00d7 E / Fy) / (h / t)")
                        .note("G2-10, kv 5")
                : WorkedLine.of("Cv", "1.51 \u00d7 5 \u00d7 E / ((h / t)\u00b2 \u00d7 Fy)")
                        .note("G2-11, kv 5");
        return elastic(steel(line, section)).put(h).put("t", section.usedWall()).gives(walls.webBuckling());
    }

    private static WorkedLine torsionStress(Section section) {
        FlatWalls walls = FlatWalls.of(section);
        if (walls.twistsWhole())
            return steel(WorkedLine.of("Fcr", "0.6 \u00d7 Fy"), section)
                    .note("H3-3")
                    .gives(walls.torsionPsi(), "psi");
        WorkedLine.Open line = walls.twistsNearlyWhole()
                ? steel(WorkedLine.of("Fcr", "0.6 \u00d7 Fy \u00d7 2.45 \u00d7 sqrt(E / Fy) / (h / t)"), section)
                        .note("H3-4, wall thin, h the longer flat side")
                : WorkedLine.of("Fcr", "0.458 \u00d7 \u03c0\u00b2 \u00d7 E / (h / t)\u00b2")
                        .note("H3-5, wall thin, h the longer flat side");
        return elastic(line)
                .put("h", walls.longerFlatIn(), "in.")
                .put("t", section.usedWall())
                .gives(walls.torsionPsi(), "psi");
    }

    /**
     * Compression over a free length, E3.
     *
     * @param factor K
     * @param length L
     */
    static List<WorkedLine> compression(Section section, double factor, Length length) {
        Length least = section.rx().compareTo(section.ry()) < 0 ? section.rx() : section.ry();
        double slender = factor * length.inches() / least.inches();
        double fy = section.yieldStress().psi();
        double euler = Math.PI * Math.PI * E_PSI / (slender * slender);
        double critical = TubeStrength.criticalPsi(fy, slender);
        WorkedLine fe = elastic(WorkedLine.of("Fe", "\u03c0\u00b2 \u00d7 E / (K \u00d7 L / r)\u00b2"))
                .put("K", factor)
                .put("L", length)
                .put("r", least)
                .note("E3-4")
                .gives(euler, "psi");
        WorkedLine fcr = (fy / euler <= 2.25
                        ? steel(WorkedLine.of("Fcr", "0.658^(Fy / Fe) \u00d7 Fy"), section)
                                .note("E3-2")
                        : WorkedLine.of("Fcr", "0.877 \u00d7 Fe").note("E3-3"))
                .put(fe)
                .gives(critical, "psi");
        return List.of(
                fe,
                fcr,
                WorkedLine.of("Pc", "Fcr \u00d7 A / 1.67")
                        .put(fcr)
                        .put("A", section.areaIn2(), "in\u00b2")
                        .note("E3-1")
                        .gives(critical * section.areaIn2() / TubeStrength.SAFETY, "lb"));
    }
}
