package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;

/** All that parts of the job need. */
public record Needs(List<Need> loose, List<BarNeed> bars) {
    public Needs {
        loose = List.copyOf(loose);
        bars = List.copyOf(bars);
    }

    public static Needs none() {
        return new Needs(List.of(), List.of());
    }

    public Needs plus(Needs others) {
        List<Need> allLoose = new ArrayList<>(loose);
        allLoose.addAll(others.loose);
        List<BarNeed> allBars = new ArrayList<>(bars);
        allBars.addAll(others.bars);
        return new Needs(allLoose, allBars);
    }

    /** How much of an item is needed in all, before waste. */
    public double net(String item) {
        double sum = 0;
        for (Need need : loose) {
            if (need.item().equals(item)) sum += need.quantity();
        }
        return sum;
    }

    /** How many pieces of an item are cut. */
    public int pieces(String item) {
        return (int) bars.stream().filter(bar -> bar.item().equals(item)).count();
    }
}
