package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.frame.Internal;
import plumbleaf.engine.frame.Stretch;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.DropShare;
import plumbleaf.engine.section.Section;

/** A leaf's own part of its drop by the unit load method, member by member, for the calculation book; the member that gives most is followed to its moments. */
public final class DropWorking {
    private static final double NOTHING_IN = 1e-9;

    private DropWorking() {}

    /**
     * @param name what the part is called in the line of the whole drop
     * @param wholeIn that part
     * @param corner whose drop it is, under a unit load there
     */
    public static Working of(List<DropShare> shares, String name, double wholeIn, String corner) {
        List<WorkedLine> lines = new ArrayList<>();
        List<WorkedLine> members = new ArrayList<>();
        double sum = 0;
        for (DropShare share : shares) {
            sum += share.totalIn();
            members.add(WorkedLine.of(mark(share), "a + b + c")
                    .put("a", share.axialIn(), "in.")
                    .put("b", share.inPlaneIn(), "in.")
                    .put("c", share.otherIn(), "in.")
                    .note(share.member().role().words())
                    .gives(share.totalIn(), "in."));
        }
        shares.stream()
                .max(Comparator.comparingDouble(share -> Math.abs(share.inPlaneIn())))
                .ifPresent(most -> lines.addAll(followed(most)));
        lines.addAll(members);
        double rest = wholeIn - sum;
        boolean more = Math.abs(rest) > NOTHING_IN;
        StringBuilder formula = new StringBuilder();
        for (WorkedLine each : members)
            formula.append(formula.isEmpty() ? "" : " + ").append(each.symbol());
        if (more) formula.append(" + joints");
        WorkedLine.Open whole = WorkedLine.of(name, formula.toString());
        for (WorkedLine each : members) whole.put(each);
        if (more) whole.put("joints", rest, "in.").note("its corner brackets and their play");
        lines.add(whole.gives(wholeIn, "in."));
        return new Working(
                "The leaf's own part of the drop, member by member",
                "unit load method: \u03a3 integral of (N n / EA + M m / EI + T t / GJ)",
                "a by N n / EA, b by M m / EI in the plane of the leaf, c by bending out of it and by twist; N and M by the stiffness of the whole, n and m of one pound down at "
                        + corner + "; Ma, Mm, Mb at the ends and the middle of a stretch between two loads or joints",
                lines);
    }

    /** {@code b} of one member: every stretch by Simpson's rule, which is exact for these. */
    private static List<WorkedLine> followed(DropShare share) {
        List<WorkedLine> lines = new ArrayList<>();
        StringBuilder formula = new StringBuilder("(");
        for (Stretch stretch : share.stretches()) {
            WorkedLine line = stretch(stretch, "S" + (lines.size() + 1), mark(share));
            formula.append(lines.isEmpty() ? "" : " + ").append(line.symbol());
            lines.add(line);
        }
        Section section = share.member().section();
        WorkedLine.Open bent = WorkedLine.of("b", formula + ") / (E \u00d7 I)")
                .put("E", section.elasticModulus().psi(), "psi")
                .put("I", section.ixIn4(), "in4")
                .note("of " + mark(share) + ", which gives most");
        for (WorkedLine each : lines) bent.put(each);
        lines.add(bent.gives(share.inPlaneIn(), "in."));
        return lines;
    }

    private static WorkedLine stretch(Stretch stretch, String symbol, String member) {
        List<Internal> m = stretch.loads();
        List<Internal> one = stretch.one();
        double gives = stretch.lengthIn()
                / 6
                * (m.get(0).mzLbIn() * one.get(0).mzLbIn()
                        + 4 * m.get(1).mzLbIn() * one.get(1).mzLbIn()
                        + m.get(2).mzLbIn() * one.get(2).mzLbIn());
        return WorkedLine.of(symbol, "L / 6 \u00d7 (Ma \u00d7 ma + 4 \u00d7 Mm \u00d7 mm + Mb \u00d7 mb)")
                .put("L", stretch.lengthIn(), "in.")
                .put("Ma", m.get(0).mzLbIn(), "lb-in")
                .put("ma", one.get(0).mzLbIn(), "in.")
                .put("Mm", m.get(1).mzLbIn(), "lb-in")
                .put("mm", one.get(1).mzLbIn(), "in.")
                .put("Mb", m.get(2).mzLbIn(), "lb-in")
                .put("mb", one.get(2).mzLbIn(), "in.")
                .note("along " + member)
                .gives(gives, "lb-in\u00b3");
    }

    private static String mark(DropShare share) {
        String id = share.member().id();
        return id.substring(id.indexOf('.') + 1);
    }
}
