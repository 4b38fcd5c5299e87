package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.line.Bay;

/**
 * Real ridges and hollows fenced across: every low point, every gap between shots and every shot off its neighbours that a plain reading of the numbers finds is among the findings, and no other; the
 * fence laid out over it keeps every limit or says where it does not.
 *
 * Source: elevation grid of the Jacksboro fault, Tennessee, as shipped in the package matplotlib 3.11.2 (mpl-data/sample_data/jacksboro_fault_dem.npz; Matplotlib licence); plane geometry.
 * Tolerance: findings exactly; lengths to 1e-6 in.
 */
@Tag("slow")
class RealTerrainCheck {
    private static final double INCHES_PER_METRE = 1 / 0.0254;

    /** East and elevation of each point, in metres. */
    private static List<double[]> terrain() throws IOException {
        List<double[]> points = new ArrayList<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(RealTerrainCheck.class.getResourceAsStream("/reference/terrain-jacksboro.csv")),
                StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.startsWith("#") || line.startsWith("east")) continue;
                String[] cells = line.split(",", -1);
                points.add(new double[] {Double.parseDouble(cells[0]), Double.parseDouble(cells[1])});
            }
        }
        return points;
    }

    private static LaidOut across(List<double[]> points) {
        StringBuilder shots = new StringBuilder();
        for (int i = 0; i < points.size(); i++)
            shots.append(i == 0 ? "" : ",")
                    .append("{ \"id\": \"S" + (i + 1) + "\", \"run\": \"R1\", \"station\": \"" + points.get(i)[0]
                            + " m\", \"elevation\": \"" + points.get(i)[1] + " m\" }");
        return LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"title\": \"Over the ridges\", \"date\": \"2027-05-03\", \"display\": \"metric\","
                        + "\"ground\": { \"shots\": [" + shots
                        + "] }, \"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"length\": \""
                        + points.get(points.size() - 1)[0]
                        + " m\" } ], \"style\": \"wood-side-by-side\", \"infill\": \"1.5 m\", \"bottomGap\": \"50 mm\", \"maxBay\": \"2.4 m\" } ] }");
    }

    private static Set<String> parts(List<Finding> findings, String id) {
        Set<String> parts = new TreeSet<>();
        for (Finding finding : findings) if (finding.id().equals(id)) parts.add(finding.message());
        return parts;
    }

    @Test
    void noFindingIsLost() throws IOException {
        List<double[]> points = terrain().subList(0, 61);
        LaidOut laid = across(points);
        List<Finding> findings = laid.ground().findings();
        int lows = 0;
        int blunders = 0;
        for (int i = 1; i + 1 < points.size(); i++) {
            double[] before = points.get(i - 1);
            double[] here = points.get(i);
            double[] after = points.get(i + 1);
            if (before[1] > here[1] && after[1] >= here[1] && isHollow(points, i)) lows++;
            double onLine = before[1] + (after[1] - before[1]) * (here[0] - before[0]) / (after[0] - before[0]);
            if (Math.abs(here[1] - onLine) > 0.6096) blunders++;
        }
        assertThat(lows).isGreaterThan(3);
        assertThat(parts(findings, "ground.low-point")).hasSize(lows);
        assertThat(parts(findings, "ground.gap")).hasSize(points.size() - 1);
        assertThat(parts(findings, "ground.blunder")).hasSize(blunders);
        assertThat(parts(findings, "ground.extrapolated")).isEmpty();
        assertThat(parts(findings, "ground.missing")).isEmpty();
    }

    /** Lower by more than two inches than the highest ground on either side. */
    private static boolean isHollow(List<double[]> points, int at) {
        double left = 0;
        double right = 0;
        for (int i = 0; i < points.size(); i++) {
            double over = points.get(i)[1] - points.get(at)[1];
            if (i < at) left = Math.max(left, over);
            if (i > at) right = Math.max(right, over);
        }
        return Math.min(left, right) * INCHES_PER_METRE > 2;
    }

    /** Every bay measured again on the numbers of the file. */
    @Test
    void everyBayKeepsItsLimitsOrIsTold() throws IOException {
        List<double[]> points = terrain().subList(0, 41);
        LaidOut laid = across(points);
        List<Bay> bays = laid.layout().runs().get(0).bays();
        List<Finding> findings = laid.layout().findings();
        assertThat(bays.get(bays.size() - 1).end().inches())
                .isCloseTo(points.get(40)[0] * INCHES_PER_METRE, within(1e-6));
        for (int i = 0; i < bays.size(); i++) {
            Bay bay = bays.get(i);
            if (i > 0)
                assertThat(bay.start().inches()).isCloseTo(bays.get(i - 1).end().inches(), within(1e-6));
            double level = bay.level().inches();
            double rise = ground(points, bay.end().inches())
                    - ground(points, bay.start().inches());
            assertThat(Math.sqrt(level * level + rise * rise)).isLessThanOrEqualTo(2.4 * INCHES_PER_METRE + 1e-4);
            double gap = bay.bottomFrom().inches() - ground(points, bay.start().inches());
            boolean kept = gap > 0.98 && gap < 4.0001;
            assertThat(kept
                            || findings.stream()
                                    .anyMatch(finding -> finding.id().equals("line.top")))
                    .isTrue();
        }
    }

    private static double ground(List<double[]> points, double stationIn) {
        double east = stationIn / INCHES_PER_METRE;
        int i = 0;
        while (i + 2 < points.size() && points.get(i + 1)[0] < east) i++;
        double[] from = points.get(i);
        double[] to = points.get(i + 1);
        return (from[1] + (to[1] - from[1]) * (east - from[0]) / (to[0] - from[0])) * INCHES_PER_METRE;
    }
}
