package plumbleaf.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;

/** Jobs to measure with: the examples, and perimeters of any length over rolling ground. */
public final class Yards {
    static final Catalogue CATALOGUE = StandardCatalogue.load();

    private static final int FEET_A_MILE = 5280;
    private static final int GATE_EVERY_FT = 500;
    private static final int SHOT_EVERY_FT = 50;
    private static final int GATE_AT_FT = 240;

    /** Grade breaks every 50 ft, in inches of rise, over and over: gentle enough to rack, uneven enough to be faired. */
    private static final int[] ROLL_IN = {6, 10, -4, -9, 3, 12, 0, -11, -6, 4};

    private Yards() {}

    /** An example by its file name, read from the folder the program is started in. */
    static Job example(String name) {
        Path file = Path.of("examples", name);
        try {
            return read(file.toString(), Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException("Start it from the project's folder: " + file, e);
        }
    }

    /** A fence round a square of this length all told, with a walk gate every 500 ft. */
    static Job perimeter(double miles) {
        return read("perimeter", perimeterText(miles).getBytes(StandardCharsets.UTF_8));
    }

    /** A tenth of a mile with one gate, of which nothing is pinned: the search chooses it. */
    static Job openYard() {
        String text = perimeterText(0.1);
        int from = text.indexOf(",\"G1\":{\"frame\"");
        int to = text.indexOf("}", from) + 1;
        return read("open", (text.substring(0, from) + text.substring(to)).getBytes(StandardCharsets.UTF_8));
    }

    static String perimeterText(double miles) {
        int feet = (int) Math.round(miles * FEET_A_MILE);
        int side = feet / 4;
        StringBuilder shots = new StringBuilder();
        int elevationIn = 0;
        int number = 0;
        for (int ft = 0; ft <= 4 * side; ft += SHOT_EVERY_FT) {
            if (number > 0) shots.append(",\n");
            shots.append("{\"id\":\"S")
                    .append(++number)
                    .append("\",\"run\":\"R1\",\"station\":\"")
                    .append(ft);
            shots.append("'\",\"elevation\":\"").append(elevationIn).append("\\\"\"}");
            elevationIn += ROLL_IN[number % ROLL_IN.length];
        }
        StringBuilder gates = new StringBuilder();
        int gate = 0;
        for (int ft = GATE_AT_FT; ft + 20 < 4 * side; ft += GATE_EVERY_FT) {
            int inLeg = ft % side;
            if (inLeg < 20 || inLeg > side - 20) continue;
            if (gate > 0) gates.append(",\n");
            gates.append("{\"id\":\"G").append(++gate).append("\",\"kind\":\"swing\",\"run\":\"R1\",\"station\":\"");
            gates.append(ft).append("'\",\"opening\":\"4'\",\"hinge\":\"left\",\"swing\":\"in\",\"opens\":\"90 deg\",");
            gates.append("\"leaf\":{\"shape\":\"square\",\"infill\":\"5' 6\\\"\",\"bottomGap\":\"6\\\"\"}}");
        }
        return "{\"format\":\"plumbleaf-job\",\"version\":1,\"title\":\"Perimeter\",\"date\":\"2027-04-19\",\"display\":\"us\","
                + "\"site\":{\"basis\":\"customary\",\"wind\":{\"speed\":\"105 mph\",\"exposure\":\"B\"},"
                + "\"frost\":{\"depth\":\"24\\\"\",\"source\":\"building office\"},\"soil\":{\"kind\":\"sand\",\"state\":\"medium\",\"class\":4}},"
                + "\"ground\":{\"shots\":[" + shots + "]},"
                + "\"runs\":[{\"id\":\"R1\",\"outside\":\"right\",\"start\":{\"east\":\"0'\",\"north\":\"0'\"},\"legs\":["
                + leg(side, "\"bearing\":\"90 deg\"") + "," + leg(side, "\"turn\":\"90 deg left\"") + ","
                + leg(side, "\"turn\":\"90 deg left\"") + "," + leg(side, "\"turn\":\"90 deg left\"")
                + "],\"ends\":[{\"kind\":\"free\"},{\"kind\":\"free\"}],\"style\":\"wood-side-by-side\",\"infill\":\"6'\","
                + "\"bottomGap\":\"2\\\"\",\"fit\":\"racked\",\"maxBay\":\"8'\"}],"
                + "\"gates\":[" + gates + "],"
                + "\"builds\":{\"R1\":{\"post\":\"F1083-REG-2\"}" + builds(gate) + "},"
                + "\"money\":{\"priceBook\":\"example-2027\",\"overhead\":\"12%\",\"margin\":\"18%\",\"tax\":\"6.25%\"}}";
    }

    private static String leg(int feet, String way) {
        return "{\"length\":\"" + feet + "'\"," + way + ",\"taped\":\"level\"}";
    }

    private static String builds(int gates) {
        StringBuilder all = new StringBuilder();
        for (int g = 1; g <= gates; g++)
            all.append(",\"G")
                    .append(g)
                    .append(
                            "\":{\"frame\":\"TUBE-2x2x0.083\",\"braces\":1,\"hingePost\":\"F1083-REG-2.5\",\"hole\":\"12\\\"\",\"depth\":\"36\\\"\"}");
        return all.toString();
    }

    static Job read(String name, byte[] bytes) {
        return JobFile.read(name, bytes, CATALOGUE).match(JobReading.Good::is, bad -> {
            throw new IllegalStateException("The job to measure with does not read: " + bad.all());
        });
    }
}
