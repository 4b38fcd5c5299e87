package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.quantity.WorkedLine;

/** The weight of the ice on a leaf, line by line for the calculation book: members and pickets by their circle, plates by their face. */
final class IceLines {
    private IceLines() {}

    static List<WorkedLine> of(Leaf leaf, IceCoat coat) {
        double t = coat.thickness().inches();
        Map<Double, Double> longIn = new LinkedHashMap<>();
        double plateIn2 = 0;
        for (Member member : leaf.members())
            longIn.merge(IceCoat.circleIn(member.section()), member.cutLength().inches(), Double::sum);
        boolean boards = !leaf.nailers().isEmpty();
        for (Picket picket : leaf.pickets()) {
            double wide = picket.width().inches();
            double tall = picket.length().inches();
            if (boards) plateIn2 += wide * tall;
            else longIn.merge(wide * Math.sqrt(2), tall, Double::sum);
        }
        for (Panel panel : leaf.panels()) plateIn2 += panel.area().squareInches();
        List<WorkedLine> parts = new ArrayList<>();
        for (Map.Entry<Double, Double> each : longIn.entrySet()) {
            int number = parts.size() + 1;
            parts.add(WorkedLine.of("I" + number, "56 \u00d7 \u03c0 \u00d7 t \u00d7 (D + t) \u00d7 L / 1728")
                    .put("t", coat.thickness())
                    .put("D", each.getKey(), "in.")
                    .put("L", each.getValue(), "in.")
                    .note("members and steel pickets of circle D, L of all together")
                    .gives(IceCoat.roundLb(each.getKey(), t) * each.getValue(), "lb"));
        }
        if (plateIn2 > 0)
            parts.add(WorkedLine.of("Ip", "56 \u00d7 0.8 \u00d7 \u03c0 \u00d7 t \u00d7 A / 1728")
                    .put("t", coat.thickness())
                    .put("A", plateIn2, "in\u00b2")
                    .note("boards, mesh or sheet by one face")
                    .gives(IceCoat.plateLb(plateIn2, t), "lb"));
        StringBuilder sum = new StringBuilder();
        for (WorkedLine part : parts) sum.append(sum.length() == 0 ? "" : " + ").append(part.symbol());
        WorkedLine.Open all = WorkedLine.of("Di", sum.toString());
        for (WorkedLine part : parts) all.put(part);
        List<WorkedLine> lines = new ArrayList<>(parts);
        lines.add(all.note("56 pcf of ice").gives(coat.weight()));
        return lines;
    }
}
