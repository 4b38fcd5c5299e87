package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Weld;

/** The welds of a slide leaf, those that are alike in one row. */
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
        Map<String, List<Weld>> kinds = new LinkedHashMap<>();
        for (Weld weld : leaf.welds()) {
            String key = weld.kind().words() + "|" + weld.where() + "|" + each(subject, weld);
            kinds.computeIfAbsent(key, none -> new ArrayList<>()).add(weld);
        }
        for (List<Weld> same : kinds.values()) {
            Weld first = same.get(0);
            table.row(
                    first.kind().words(),
                    first.where(),
                    each(subject, first),
                    Integer.toString(same.size()),
                    joints(leaf.id(), same),
                    Integer.toString(same.stream().mapToInt(Weld::runs).sum()),
                    first.flush() ? "flush" : "no",
                    subject.length(same.stream()
                            .mapToDouble(weld -> weld.length().inches())
                            .sum()));
        }
        return table.table();
    }

    private static String each(PacketSubject subject, Weld weld) {
        return subject.inches(weld.length().inches());
    }

    /** Joints by their short marks, a row of them by its first and last: {@code j1, j4 to j14}. */
    private static String joints(String leaf, List<Weld> welds) {
        TreeSet<Integer> numbers = new TreeSet<>();
        List<String> others = new ArrayList<>();
        for (Weld weld : welds) {
            String mark =
                    weld.joint().startsWith(leaf + ".") ? weld.joint().substring(leaf.length() + 1) : weld.joint();
            if (mark.matches("j[0-9]{1,6}")) numbers.add(Integer.valueOf(mark.substring(1)));
            else if (!others.contains(mark)) others.add(mark);
        }
        List<String> said = new ArrayList<>();
        List<Integer> all = List.copyOf(numbers);
        for (int from = 0; from < all.size(); ) {
            int to = from;
            while (to + 1 < all.size() && all.get(to + 1) == all.get(to) + 1) to++;
            if (to > from + 1) said.add("j" + all.get(from) + " to j" + all.get(to));
            else for (int i = from; i <= to; i++) said.add("j" + all.get(i));
            from = to + 1;
        }
        said.addAll(others);
        return String.join(", ", said);
    }
}
