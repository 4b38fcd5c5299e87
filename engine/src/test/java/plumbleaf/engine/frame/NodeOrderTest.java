package plumbleaf.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class NodeOrderTest {
    @Test
    void aChainNamedOutOfOrderIsWalkedFromEndToEnd() {
        List<SortedSet<Integer>> neighbours = new ArrayList<>();
        int[] chain = {4, 0, 3, 1, 2};
        for (int i = 0; i < 5; i++) neighbours.add(new TreeSet<>());
        for (int i = 0; i + 1 < 5; i++) {
            neighbours.get(chain[i]).add(chain[i + 1]);
            neighbours.get(chain[i + 1]).add(chain[i]);
        }
        assertThat(NodeOrder.narrow(neighbours)).containsExactly(4, 0, 3, 1, 2);
    }

    @Test
    void partsApartAreAllVisited() {
        List<SortedSet<Integer>> neighbours = new ArrayList<>();
        for (int i = 0; i < 4; i++) neighbours.add(new TreeSet<>());
        assertThat(NodeOrder.narrow(neighbours)).containsExactlyInAnyOrder(0, 1, 2, 3);
    }
}
