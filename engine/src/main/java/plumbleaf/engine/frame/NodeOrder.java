package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;

/**
 * An order of nodes that keeps neighbours near each other, so that the matrix stays narrow: breadth first from an outlying node, nodes with
 * few neighbours first, then turned round (Cuthill and McKee 1969, reversed after George 1971). Ties fall to the model's own order.
 */
final class NodeOrder {
    private NodeOrder() {}

    /** @param neighbours for each node, those it shares a member or link with */
    static List<Integer> narrow(List<SortedSet<Integer>> neighbours) {
        List<Integer> order = new ArrayList<>();
        boolean[] taken = new boolean[neighbours.size()];
        for (int node = 0; node < neighbours.size(); node++) {
            if (taken[node]) continue;
            List<Integer> reach = breadthFirst(neighbours, node);
            int outlying = reach.get(reach.size() - 1);
            for (int reached : breadthFirst(neighbours, outlying)) {
                taken[reached] = true;
                order.add(reached);
            }
        }
        List<Integer> turned = new ArrayList<>();
        for (int i = order.size() - 1; i >= 0; i--) turned.add(order.get(i));
        return turned;
    }

    private static List<Integer> breadthFirst(List<SortedSet<Integer>> neighbours, int from) {
        List<Integer> reached = new ArrayList<>();
        boolean[] seen = new boolean[neighbours.size()];
        reached.add(from);
        seen[from] = true;
        for (int next = 0; next < reached.size(); next++) {
            List<Integer> fresh = new ArrayList<>();
            for (int neighbour : neighbours.get(reached.get(next))) if (!seen[neighbour]) fresh.add(neighbour);
            fresh.sort(Comparator.comparingInt(
                            (Integer node) -> neighbours.get(node).size())
                    .thenComparingInt(node -> node));
            for (int node : fresh) seen[node] = true;
            reached.addAll(fresh);
        }
        return reached;
    }
}
