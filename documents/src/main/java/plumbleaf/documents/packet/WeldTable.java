package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.view.JointNames;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Weld;

/** The welds of a leaf, those that are alike in one row. */
final class WeldTable {
    private WeldTable() {}

    static Table of(PacketSubject subject, Leaf leaf) {
        Table.Builder table = Table.with(
                Column.left("Weld"),
                Column.words("Where"),
                Column.right("Each"),
                Column.right("Places"),
                Column.words("Joints"),
                Column.right("Runs"),
                Column.left("Grind"),
                Column.right("In all"));
        for (List<Weld> same : alike(subject, leaf)) {
            Weld first = same.get(0);
            table.row(
                    first.kind().words(),
                    first.where(),
                    each(subject, first),
                    Integer.toString(same.size()),
                    JointNames.of(leaf.id(), same.stream().map(Weld::joint).toList()),
                    Integer.toString(same.stream().mapToInt(Weld::runs).sum()),
                    first.flush() ? "flush" : "no",
                    subject.length(same.stream()
                            .mapToDouble(weld -> weld.length().inches())
                            .sum()));
        }
        return table.table();
    }

    /** The same in a narrow column beside the joints' details. */
    static Table brief(PacketSubject subject, Leaf leaf) {
        Table.Builder table =
                Table.with(Column.left("Joints"), Column.words("Weld"), Column.right("Each"), Column.left("Grind"));
        for (List<Weld> same : alike(subject, leaf)) {
            Weld first = same.get(0);
            table.row(
                    JointNames.of(leaf.id(), same.stream().map(Weld::joint).toList()),
                    first.kind().words() + ": " + first.where(),
                    each(subject, first),
                    first.flush() ? "flush" : "no");
        }
        return table.table();
    }

    private static List<List<Weld>> alike(PacketSubject subject, Leaf leaf) {
        Map<String, List<Weld>> kinds = new LinkedHashMap<>();
        for (Weld weld : leaf.welds()) {
            String key = weld.kind().words() + "|" + weld.where() + "|" + each(subject, weld);
            kinds.computeIfAbsent(key, none -> new ArrayList<>()).add(weld);
        }
        return List.copyOf(kinds.values());
    }

    private static String each(PacketSubject subject, Weld weld) {
        return subject.inches(weld.length().inches());
    }
}
