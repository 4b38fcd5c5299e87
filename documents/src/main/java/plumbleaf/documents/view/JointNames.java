package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** Joints as the shop says them: {@code J4}, and a row of them by its first and last: {@code J1, J4 to J14}. */
public final class JointNames {
    private JointNames() {}

    /** One joint of a leaf; what is no frame joint keeps its own word: {@code G1a.pickets} is "pickets". */
    public static String of(String leaf, String joint) {
        String tail = joint.startsWith(leaf + ".") ? joint.substring(leaf.length() + 1) : joint;
        return tail.matches("j[0-9]{1,6}") ? "J" + tail.substring(1) : tail;
    }

    /** Many of them, each once, in order. */
    public static String of(String leaf, Collection<String> joints) {
        TreeSet<Integer> numbers = new TreeSet<>();
        List<String> others = new ArrayList<>();
        for (String joint : joints) {
            String name = of(leaf, joint);
            if (name.matches("J[0-9]{1,6}")) numbers.add(Integer.valueOf(name.substring(1)));
            else if (!others.contains(name)) others.add(name);
        }
        List<String> said = new ArrayList<>();
        List<Integer> all = List.copyOf(numbers);
        for (int from = 0; from < all.size(); ) {
            int to = from;
            while (to + 1 < all.size() && all.get(to + 1) == all.get(to) + 1) to++;
            if (to > from + 1) said.add("J" + all.get(from) + " to J" + all.get(to));
            else for (int i = from; i <= to; i++) said.add("J" + all.get(i));
            from = to + 1;
        }
        said.addAll(others);
        return String.join(", ", said);
    }
}
