package plumbleaf.reference.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A job file made up from a seed: other lengths, corners, curves, slopes, styles, gates and units each time, the same for the same seed. */
final class RandomJob {
    private static final List<String> STYLES = List.of(
            "wood-side-by-side",
            "wood-spaced-picket",
            "wood-gothic-picket",
            "wood-board-on-board",
            "wood-shadowbox",
            "wood-horizontal",
            "chain-link",
            "chain-link-slats",
            "metal-panel",
            "pipe-and-mesh");
    private static final List<String> WORDS = List.of(
            "old pear", "septic lid, do not drive on it", "rose bed", "boulder that nobody could move", "dog wire");

    private final Random seeded;

    private RandomJob(int seed) {
        this.seeded = new Random(seed * 7919L + 17);
    }

    static String of(int seed) {
        return new RandomJob(seed).written(seed);
    }

    private int between(int least, int most) {
        return least + seeded.nextInt(most - least + 1);
    }

    private String one(List<String> of) {
        return of.get(seeded.nextInt(of.size()));
    }

    private String written(int seed) {
        String style = one(STYLES);
        boolean gate = seeded.nextInt(5) > 0;
        boolean pair = gate && seeded.nextInt(4) == 0;
        int first = between(26, 90);
        int opening = pair ? between(8, 16) : between(3, 8);
        int station = between(8, Math.max(9, first - opening - 9));
        int corners = seeded.nextInt(3);
        List<String> legs = new ArrayList<>();
        legs.add("{ \"length\": \"" + first + "'\", \"bearing\": \"" + between(0, 23) * 15 + " deg\" }");
        for (int i = 0; i < corners; i++) {
            int length = between(9, 60);
            legs.add(
                    seeded.nextInt(4) == 0
                            ? "{ \"arc\": { \"radius\": \"" + between(20, 40) + "'\", \"turn\": \"" + between(20, 80)
                                    + " deg left\" } }"
                            : "{ \"length\": \"" + length + "'\", \"turn\": \"" + between(20, 100)
                                    + (seeded.nextInt(5) == 0 ? " deg right" : " deg left") + "\" }");
        }
        StringBuilder shots = new StringBuilder();
        int height = 0;
        int at = 0;
        for (int number = 1; at <= first; number++) {
            if (number > 1) shots.append(",\n      ");
            shots.append("{ \"id\": \"S")
                    .append(number)
                    .append("\", \"run\": \"R1\", \"station\": \"")
                    .append(at)
                    .append("'\", \"elevation\": \"")
                    .append(height)
                    .append("\\\"\" }");
            at += between(7, 14);
            height += between(-9, 5);
        }
        String keepOff = seeded.nextInt(2) == 0
                ? ", \"noDig\": [{ \"from\": \"2'\", \"to\": \"3' 6\\\"\", \"why\": \"" + one(WORDS) + "\" }]"
                : "";
        String lines = seeded.nextInt(2) == 0
                ? "{ \"kind\": \"" + one(List.of("water", "drip line", "electric to the shed", "gas"))
                        + "\", \"run\": \"R1\", \"station\": \"" + between(1, first - 1)
                        + "'\", \"tolerance\": \"18\\\"\" }"
                : "";
        String fences = seeded.nextInt(2) == 0
                ? "{ \"kind\": \"leaning pickets\", \"length\": \"" + between(10, 80)
                        + "'\", \"pitch\": \"8'\", \"concrete\": true }"
                : "";
        return """
                { "format": "plumbleaf-job", "version": 1, "title": "Trial yard SEED", "date": "2027-04-19", "display": "DISPLAY",
                  "site": { "customer": "Odalys Venn and the owners' association of Lower Quill", "address": "SEED Tarn Steps",
                    "basis": "customary", "uses": ["walk"], "wind": { "speed": "105 mph", "exposure": "B" },
                    "frost": { "depth": "24\\"", "source": "building office" }, "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "benchmark": { "mark": "nail in the stump", "elevation": "0\\"" },
                    "shots": [ SHOTS ] },
                  "runs": [ { "id": "R1", "outside": "OUTSIDE", "start": { "east": "0'", "north": "0'" }, "legs": [ LEGS ],
                      "style": "STYLE", "infill": "INFILL'", "bottomGap": "2\\"", "fit": "FIT", "maxBay": "8'"KEEPOFF } ],
                  "gates": [ GATES ],
                  "builds": { "R1": { "post": "F1083-REG-2", "hole": "10\\"", "depth": "36\\"" } BUILD },
                  "existing": { "lines": [ LINES ], "fences": [ FENCES ] },
                  "money": { "priceBook": "example-2027", "overhead": "12%", "margin": "18%" } }
                """.replace("SEED", Integer.toString(seed))
                .replace("DISPLAY", one(List.of("us", "us", "metric")))
                .replace("SHOTS", shots)
                .replace("OUTSIDE", one(List.of("left", "right")))
                .replace("LEGS", String.join(", ", legs))
                .replace("STYLE", style)
                .replace("INFILL", Integer.toString(between(4, 6)))
                .replace(
                        "FIT",
                        style.equals("wood-horizontal") ? "stepped" : one(List.of("racked", "stepped", "level-top")))
                .replace("KEEPOFF", keepOff)
                .replace("GATES", gate ? (pair ? pair(station, opening) : single(station, opening)) : "")
                .replace("BUILD", gate ? build(pair) : "")
                .replace("LINES", lines)
                .replace("FENCES", fences);
    }

    private String single(int station, int opening) {
        return "{ \"id\": \"G1\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"" + station
                + "'\", \"opening\": \""
                + opening + "'\", \"hinge\": \"" + one(List.of("left", "right")) + "\", \"swing\": \""
                + one(List.of("in", "out")) + "\", \"opens\": \"90 deg\", \"leaf\": { \"shape\": \""
                + one(List.of("raked", "square")) + "\", \"infill\": \"" + between(3, 6) + "'\", \"bottomGap\": \""
                + between(2, 6) + "\\\"\" } }";
    }

    /** Named, so that no search for the cheapest is made: what it would pick is tested elsewhere. */
    private String build(boolean pair) {
        String post = pair ? "F1083-REG-3" : "F1083-REG-2.5";
        return ", \"G1\": { \"frame\": \"" + one(List.of("TUBE-2x2x0.083", "TUBE-1.5x1.5x0.083")) + "\", \"braces\": "
                + between(0, 2) + ", \"joint\": \""
                + one(List.of("mitered", "mitered", "butted", "butted-rails-through")) + "\", \"hingePost\": \"" + post
                + "\", \"latchPost\": \"" + post + "\", \"hole\": \"12\\\"\", \"depth\": \"" + between(30, 48)
                + "\\\"\" }";
    }

    private String pair(int station, int opening) {
        return "{ \"id\": \"G1\", \"kind\": \"pair\", \"run\": \"R1\", \"station\": \"" + station
                + "'\", \"opening\": \""
                + opening + "'\", \"split\": \"" + one(List.of("50%", "40%", "65%")) + "\", \"active\": \""
                + one(List.of("left", "right")) + "\", \"swing\": \"" + one(List.of("in", "out"))
                + "\", \"opens\": \"90 deg\", \"leaf\": { \"infill\": \"" + between(4, 6)
                + "'\", \"bottomGap\": \"4\\\"\" } }";
    }
}
