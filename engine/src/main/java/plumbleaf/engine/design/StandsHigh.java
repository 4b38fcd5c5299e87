package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RunLayout;

/** Where along a run its fence stands taller or higher up than the run asks, and how high. */
final class StandsHigh {
    /** Posts of two layouts that lie this near are the same. Far above rounding, far below a board. */
    private static final double ON = 1;

    private final AsBuilt asked;
    private final List<Part> parts;

    /** A bay at its tallest. */
    private record Part(double fromIn, double toIn, AsBuilt built) {}

    private StandsHigh(AsBuilt asked, List<Part> parts) {
        this.asked = asked;
        this.parts = List.copyOf(parts);
    }

    static StandsHigh asAsked(Run run) {
        return new StandsHigh(AsBuilt.asked(run), List.of());
    }

    static StandsHigh of(Run run, RunLayout layout) {
        List<Part> parts = layout.bays().stream()
                .map(bay -> part(run, bay))
                .filter(part -> !part.built().isAsked(run))
                .toList();
        return new StandsHigh(AsBuilt.asked(run), parts);
    }

    private static Part part(Run run, Bay bay) {
        return new Part(bay.start().inches(), bay.end().inches(), AsBuilt.tallestOf(run, bay));
    }

    boolean isAsAsked() {
        return parts.isEmpty();
    }

    /** The tallest and the highest anywhere between two stations. */
    AsBuilt between(double fromIn, double toIn) {
        AsBuilt most = asked;
        for (int i = firstEndingAt(fromIn - ON);
                i < parts.size() && parts.get(i).fromIn() <= toIn + ON;
                i++) most = most.most(parts.get(i).built());
        return most;
    }

    /** Bays follow each other along the run, so their ends rise: halved until found, since a mile asks some thousand times for each of its posts. */
    private int firstEndingAt(double stationIn) {
        int low = 0;
        int high = parts.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (parts.get(middle).toIn() < stationIn) low = middle + 1;
            else high = middle;
        }
        return low;
    }
}
