package plumbleaf.engine.wind;

import java.util.ArrayList;
import java.util.List;

/** Reads the tables of solid freestanding walls. Package-private: {@link WallWind} uses it. */
final class WallCoefficients {
    /** Standard: Case C is needed from here. */
    static final double CASE_C_FROM = 2;
    /** Standard: rows marked for the return corner. */
    private static final double RETURNS_FROM = 5;
    /** Standard: above this s/h the strips' values are reduced. */
    private static final double REDUCED_ABOVE = 0.8;

    private final WindTables tables;

    WallCoefficients(WindTables tables) {
        this.tables = tables;
    }

    /** Cf of Cases A and B: straight lines between the cells, held at the table's edges. */
    double uniform(double heightRatio, double aspect) {
        List<Double> heights = tables.wall().stream()
                .map(WallCell::heightRatio)
                .distinct()
                .sorted()
                .toList();
        double low = floor(heights, heightRatio);
        double high = ceiling(heights, heightRatio);
        double atLow = alongRow(low, aspect);
        if (low == high) return atLow;
        return atLow + (alongRow(high, aspect) - atLow) * (heightRatio - low) / (high - low);
    }

    private double alongRow(double heightRatio, double aspect) {
        List<Double> aspects = tables.wall().stream()
                .filter(cell -> cell.heightRatio() == heightRatio)
                .map(WallCell::aspect)
                .sorted()
                .toList();
        double low = floor(aspects, aspect);
        double high = ceiling(aspects, aspect);
        double atLow = cell(heightRatio, low);
        if (low == high) return atLow;
        return atLow + (cell(heightRatio, high) - atLow) * (aspect - low) / (high - low);
    }

    private double cell(double heightRatio, double aspect) {
        for (WallCell cell : tables.wall()) {
            if (cell.heightRatio() == heightRatio && cell.aspect() == aspect) return cell.coefficient();
        }
        throw new IllegalArgumentException("The wall table has a hole");
    }

    /** Strips of Case C for one aspect, in heights s from the windward end, with the clearance reduction and the return corner. */
    List<EndStrip> strips(double heightRatio, double aspect, double returnRatio) {
        List<Double> rows =
                tables.ends().stream().map(EndStrip::aspect).distinct().sorted().toList();
        List<EndStrip> low = row(floor(rows, aspect));
        List<EndStrip> high = row(ceiling(rows, aspect));
        double clearance = heightRatio > REDUCED_ABOVE ? 1.8 - heightRatio : 1;
        double corner = aspect >= RETURNS_FROM ? returnFactor(returnRatio) : 1;
        List<EndStrip> strips = new ArrayList<>();
        List<Double> bounds = bounds(low, high, aspect);
        for (int at = 1; at < bounds.size(); at++) {
            double from = bounds.get(at - 1);
            double to = bounds.get(at);
            double cf = between(low, high, aspect, (from + to) / 2) * clearance * (from < 1 ? corner : 1);
            strips.add(new EndStrip(aspect, from, to, cf));
        }
        return strips;
    }

    /**
     * Between two rows of the same split straight lines; where the split differs (10 to 13) the larger of the two at each place, a choice on the safe
     * side. Where only one row reaches so far, that one.
     */
    private static double between(List<EndStrip> low, List<EndStrip> high, double aspect, double place) {
        double atLow = at(low, place);
        double atHigh = at(high, place);
        if (Double.isNaN(atLow)) return atHigh;
        if (Double.isNaN(atHigh)) return atLow;
        double from = low.get(0).aspect();
        double to = high.get(0).aspect();
        if (from == to) return atLow;
        if (!sameSplit(low, high)) return Math.max(atLow, atHigh);
        return atLow + (atHigh - atLow) * (aspect - from) / (to - from);
    }

    private static boolean sameSplit(List<EndStrip> low, List<EndStrip> high) {
        for (int at = 0; at < Math.min(low.size(), high.size()); at++) {
            if (low.get(at).to() != high.get(at).to()) return false;
        }
        return true;
    }

    private static double at(List<EndStrip> row, double place) {
        for (EndStrip strip : row) {
            if (place >= strip.from() && place < strip.to()) return strip.coefficient();
        }
        return Double.NaN;
    }

    private static List<Double> bounds(List<EndStrip> low, List<EndStrip> high, double aspect) {
        List<Double> all = new ArrayList<>();
        all.add(0.0);
        all.add(aspect);
        for (EndStrip strip : low) all.add(Math.min(aspect, strip.to()));
        for (EndStrip strip : high) all.add(Math.min(aspect, strip.to()));
        return all.stream().distinct().sorted().toList();
    }

    private List<EndStrip> row(double aspect) {
        return tables.ends().stream().filter(strip -> strip.aspect() == aspect).toList();
    }

    private double returnFactor(double ratio) {
        List<ReturnRow> rows = tables.returns();
        if (ratio < rows.get(0).ratio()) return 1;
        for (int at = 1; at < rows.size(); at++) {
            ReturnRow before = rows.get(at - 1);
            ReturnRow after = rows.get(at);
            if (ratio <= after.ratio())
                return before.factor()
                        + (after.factor() - before.factor())
                                * (ratio - before.ratio())
                                / (after.ratio() - before.ratio());
        }
        return rows.get(rows.size() - 1).factor();
    }

    /** The greatest of a rising list that is not above the value, or its first. */
    private static double floor(List<Double> rising, double value) {
        double found = rising.get(0);
        for (double entry : rising) {
            if (entry <= value) found = entry;
        }
        return found;
    }

    /** The least of a rising list that is not below the value, or its last. */
    private static double ceiling(List<Double> rising, double value) {
        for (double entry : rising) {
            if (entry >= value) return entry;
        }
        return rising.get(rising.size() - 1);
    }
}
