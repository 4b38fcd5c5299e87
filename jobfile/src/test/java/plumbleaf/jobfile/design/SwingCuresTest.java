package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.edit.JobEdit;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.json.Node;

/** Every cure of a leaf that strikes the ground, on jobs where it applies: it is offered with its price, its edit reads, and with it the gate strikes no more. */
@Tag("slow")
class SwingCuresTest {
    private static final String STRIKES = "swing.strikes";

    /** A narrow gate on the slope of the lane; what it clears with is as many things as there are ways. */
    private static Design onTheSlope() {
        return Yard.nursery().with("\"opening\": \"4'\"", "\"opening\": \"3'\"").design();
    }

    /** Level along the fence and rising inside it. */
    private static Design risingInside() {
        StringBuilder shots = new StringBuilder();
        for (int foot : new int[] {0, 10, 20, 30, 40, 56}) shots.append(shot("L" + foot, foot, "", 0));
        for (int foot : new int[] {10, 20, 30, 40}) {
            shots.append(shot("I" + foot, foot, "\"in\": \"6'\", ", 14));
            shots.append(shot("O" + foot, foot, "\"out\": \"10'\", ", 0));
        }
        String text = """
                { "format": "plumbleaf-job", "version": 1, "title": "Sorrel Bank", "date": "2027-04-19",
                  "site": { "wind": { "speed": "105 mph", "exposure": "B" }, "frost": { "depth": "30\\"", "source": "by phone" },
                    "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "shots": [ SHOTS ] },
                  "runs": [ { "id": "R1", "legs": [ { "length": "56'", "taped": "level" } ], "ends": [ "free", "free" ],
                    "style": "wood-side-by-side", "infill": "6'", "bottomGap": "2\\"", "fit": "racked", "maxBay": "8'" } ],
                  "gates": [ { "id": "G1", "kind": "swing", "run": "R1", "station": "26'", "opening": "4'", "hinge": "right", "swing": "in",
                    "opens": "90 deg", "leaf": { "shape": "square", "infill": "5' 11\\"", "bottomGap": "3\\"" } } ],
                  "builds": { "R1": { "post": "F1083-REG-2", "hole": "10\\"", "depth": "36\\"" },
                    "G1": { "frame": "TUBE-2x2x0.12", "braces": 1, "joint": "mitered", "hingePost": "F1083-REG-2.5",
                      "latchPost": "F1083-REG-2.5", "hole": "12\\"", "depth": "42\\"" } },
                  "money": { "priceBook": "example-2027" } }
                """.replace("SHOTS", shots.substring(0, shots.lastIndexOf(",")));
        return new Yard(text).design();
    }

    private static String shot(String id, int foot, String beside, int inches) {
        return "{ \"id\": \"" + id + "\", \"run\": \"R1\", \"station\": \"" + foot + "'\", " + beside
                + "\"elevation\": \"" + inches + "\\\"\" },\n";
    }

    @Test
    void eachIsOfferedWithItsPriceAndCures() {
        TreeSet<String> offered = new TreeSet<>();
        for (Design design : List.of(onTheSlope(), risingInside()))
            for (Remedy remedy : striking(design).remedies()) {
                offered.add(remedy.id());
                assertThat(remedy.priceChange()).as(remedy.id()).isPresent();
                assertThat(strikes(made(design.job(), remedy)))
                        .as(remedy.words())
                        .isFalse();
            }
        assertThat(offered)
                .contains(
                        "hinge-side",
                        "swing-side",
                        "raise-leaf",
                        "bottom-rail",
                        "square-bottom",
                        "rising-hinge",
                        "grade-arc",
                        "landing",
                        "hold-back",
                        "move",
                        "set-back",
                        "pair",
                        "unequal-pair",
                        "slide");
    }

    private static Finding striking(Design design) {
        return Yard.findings(design, STRIKES).get(0);
    }

    private static boolean strikes(Design design) {
        return Yard.findings(design, STRIKES).stream().anyMatch(found -> found.severity() == Severity.MUST_FIX);
    }

    private static Design made(Job job, Remedy remedy) {
        Node tree = JobFile.tree(job);
        List<JobEdit> edits = Arrays.stream(remedy.edit().orElseThrow().split(Remedy.AND_THEN, -1))
                .map(edit -> JobEdit.read(edit).value().orElseThrow())
                .toList();
        Node edited = JobEdit.all(tree, edits).value().orElseThrow();
        return Yard.nursery()
                .designOf(JobFile.read("job", edited, StandardCatalogue.load()).match(good -> good.is(), bad -> {
                    throw new IllegalArgumentException(remedy.words() + ": " + bad.all());
                }));
    }
}
