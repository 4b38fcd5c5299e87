package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.engine.strength.TubeLines;

/** The sections of a job: what each is, and what one may carry, so that every Mc, Vc and Tc of later pages has its own. */
final class SectionCalculation {
    private SectionCalculation() {}

    static void add(Paper.Builder paper, PacketSubject subject) {
        Map<String, Section> steel = new LinkedHashMap<>();
        Map<String, WoodPost> wood = new LinkedHashMap<>();
        List<Leaf> leaves = new ArrayList<>();
        subject.gates().forEach(gate -> gate.subjects().forEach(each -> leaves.add(each.leaf())));
        subject.slides().forEach(gate -> leaves.add(gate.leaf()));
        for (Leaf leaf : leaves)
            for (Member member : leaf.members())
                if (member.role() != MemberRole.ROD)
                    steel.putIfAbsent(member.section().id(), member.section());
        for (PostDesign post : subject.checked())
            post.section().match(pipe -> steel.putIfAbsent(pipe.id(), pipe), timber -> {
                wood.putIfAbsent(timber.id(), timber);
                return steel.get(timber.id());
            });
        if (steel.isEmpty() && wood.isEmpty()) return;
        paper.heading("Sections");
        properties(paper, steel, wood);
        for (Section section : steel.values()) {
            List<WorkedLine> lines = new ArrayList<>(List.of(radius(
                    "rx", section.ixIn4(), section.areaIn2(), section.rx().inches())));
            if (section.ixIn4() != section.iyIn4())
                lines.add(radius(
                        "ry", section.iyIn4(), section.areaIn2(), section.ry().inches()));
            lines.addAll(TubeLines.of(section));
            paper.add(new Block.Worked(
                    section.name() + ", what it may carry",
                    "AISC 360-22 " + (section.isRound() ? "F8, G5, H3.1" : "F7, G4, H3.1") + ", ASD, omega 1.67",
                    "Fy " + DecimalText.whole(section.yieldStress().psi()) + " psi, " + section.yieldConfidence()
                            + "; " + (section.isRound() ? "D diameter" : "H depth, B width, b and h their flats")
                            + ", t wall used",
                    lines));
        }
    }

    private static WorkedLine radius(String name, double inertia, double area, double is) {
        return WorkedLine.of(name, "sqrt(I / A)")
                .put("I", inertia, "in4")
                .put("A", area, "in\u00b2")
                .gives(is, "in.");
    }

    private static void properties(Paper.Builder paper, Map<String, Section> steel, Map<String, WoodPost> wood) {
        Table.Builder table = Table.with(
                Column.words("Section"),
                Column.right("Wall sold"),
                Column.right("used"),
                Column.right("design"),
                Column.right("A"),
                Column.right("I"),
                Column.right("S"),
                Column.right("Z"),
                Column.right("J"));
        for (Section each : steel.values()) {
            boolean alike = each.ixIn4() == each.iyIn4();
            table.row(
                    each.name() + (alike ? "" : ", in its depth"),
                    bare(each.nominalWall().inches()),
                    bare(each.usedWall().inches()),
                    bare(each.designWall().inches()),
                    bare(each.areaIn2()),
                    bare(each.ixIn4()),
                    bare(each.sxIn3()),
                    bare(each.zxIn3()),
                    bare(each.jIn4()));
            if (!alike)
                table.row(
                        each.name() + ", across it",
                        "",
                        "",
                        "",
                        "",
                        bare(each.iyIn4()),
                        bare(each.syIn3()),
                        bare(each.zyIn3()),
                        "");
        }
        for (WoodPost each : wood.values())
            table.row(
                    each.name(),
                    "\u2013",
                    "\u2013",
                    "\u2013",
                    bare(each.areaIn2()),
                    bare(each.ixIn4()),
                    bare(each.sxIn3()),
                    "\u2013",
                    bare(each.jIn4()));
        paper.add(table.table());
        paper.note(
                "In the units of the formulas: walls in, A in\u00b2, S and Z in\u00b3, I and J in4. Weight goes by the wall sold, stiffness and bending by the wall used, formulas of a wall"
                        + " under a plate or a weld by the design wall.");
        for (Section each : steel.values())
            paper.note(each.name() + ": " + each.source() + " (" + each.confidence() + ").");
    }

    private static String bare(double value) {
        return DecimalText.figures(value, 6);
    }
}
