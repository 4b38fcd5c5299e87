package plumbleaf.jobfile.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.ground.ShotHeight;
import plumbleaf.engine.ground.ShotPlace;
import plumbleaf.engine.ground.TapeLay;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Heading;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Release;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.support.WallKind;
import plumbleaf.jobfile.input.InputError;

class JobFileTest {
    /** The least a file may say. */
    private static final String LEAST = """
            {
              "format": "plumbleaf-job",
              "version": 1,
              "runs": [
                { "legs": [{ "length": "40'" }], "style": "wood-side-by-side" }
              ],
              "gates": [
                { "kind": "swing", "run": "R1", "station": "10'", "opening": "4'" }
              ]
            }
            """;

    private static Job good(String text) {
        JobReading reading = JobFile.read("yard.json", text, Examples.CATALOGUE);
        assertThat(reading.errors()).extracting(InputError::text).isEmpty();
        return reading.job().orElseThrow();
    }

    private static List<String> errors(String text) {
        return JobFile.read("yard.json", text, Examples.CATALOGUE).errors().stream()
                .map(InputError::text)
                .toList();
    }

    @Test
    void readsTheNursery() {
        Job job = good(Examples.NURSERY);
        Gate gate = job.gates().get(0);
        assertThat(job.site().basis()).isEqualTo(DesignBasis.CUSTOMARY);
        assertThat(job.ground().shots()).hasSize(23);
        assertThat(gate.station()).isEqualTo(Length.feet(26));
        assertThat(gate.kind()).isInstanceOf(GateKind.Swing.class);
        GateKind.Swing swing = (GateKind.Swing) gate.kind();
        assertThat(swing.hinge().or(Side.RIGHT)).isEqualTo(Side.LEFT);
        assertThat(swing.swing().or(SwingWay.OUT)).isEqualTo(SwingWay.IN);
        assertThat(gate.release()).isEqualTo(new Release.Priced());
        assertThat(job.runs().get(0).last()).isEqualTo(new RunEnd.Wall(WallKind.MASONRY));
        assertThat(job.runs().get(0).legs().get(1).heading()).isEqualTo(new Heading.Turn(Angle.degrees(90)));
    }

    @Test
    void readsTheKilnYard() {
        Job job = good(Examples.KILN);
        assertThat(job.ground().shots().get(3).place())
                .isEqualTo(new ShotPlace.After("R1", "S3", Length.feet(12), TapeLay.UNSAID, Offset.ZERO));
        assertThat(job.ground().shots().get(3).height()).isEqualTo(new ShotHeight.Falls("S3", Offset.inches(10)));
        assertThat(job.ground().shots().get(5).place())
                .isEqualTo(new ShotPlace.OnRun("R1", Length.feet(18), Offset.inches(48)));
        assertThat(job.money().taxes().get(0).rate()).isEqualTo(0.0625);
    }

    @Test
    void listsEveryValueThatWasAssumed() {
        Job job = good(LEAST);
        assertThat(job.assumed())
                .anySatisfy(assumed -> {
                    assertThat(assumed.field()).isEqualTo("gates[0].leaf.infill");
                    assertThat(assumed.value()).isEqualTo("5' 11\"");
                    assertThat(assumed.why()).isEqualTo("so that its top carries on the fence's");
                })
                .anySatisfy(assumed -> {
                    assertThat(assumed.field()).isEqualTo("runs[0].bottomGap");
                    assertThat(assumed.value()).isEqualTo("2\"");
                    assertThat(assumed.why()).isEqualTo("common practice, no source");
                })
                .noneSatisfy(assumed -> assertThat(assumed.field()).startsWith("gates[0].hinge."))
                .noneSatisfy(assumed -> assertThat(assumed.field()).isIn("gates[0].hinge", "gates[0].swing"));
        assertThat(((GateKind.Swing) job.gates().get(0).kind()).hinge().isSaid())
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"nursery", "kiln", "least", "full"})
    void writesWhatReadsBackTheSame(String which) {
        String text = switch (which) {
            case "nursery" -> Examples.NURSERY;
            case "kiln" -> Examples.KILN;
            case "full" -> FullJob.TEXT;
            default -> LEAST;
        };
        Job job = good(text);
        String written = JobFile.write(job);
        Job again = good(written);
        assertThat(again.site()).isEqualTo(job.site());
        assertThat(again.ground()).isEqualTo(job.ground());
        assertThat(again.runs()).isEqualTo(job.runs());
        assertThat(again.gates()).isEqualTo(job.gates());
        assertThat(again.money()).isEqualTo(job.money());
        assertThat(again.assumed()).isEqualTo(job.assumed());
        assertThat(again.equals(job)).isTrue();
        assertThat(JobFile.write(good(written))).isEqualTo(written);
    }

    @Test
    void theLeastFileStaysSmallWhenWritten() {
        assertThat(JobFile.write(good(LEAST))).isEqualTo("""
                        {
                          "format": "plumbleaf-job",
                          "version": 1,
                          "runs": [{ "legs": [{ "length": "40'" }], "style": "wood-side-by-side" }],
                          "gates": [{ "kind": "swing", "run": "R1", "station": "10'", "opening": "4'" }]
                        }
                        """);
    }

    @Test
    void namesEveryErrorAtOnceInTheOrderOfItsLines() {
        String text = LEAST.replace("\"opening\": \"4'\"", "\"opening\": \"50\", \"sight\": 1")
                .replace("\"style\": \"wood-side-by-side\"", "\"style\": \"wood-side-by-sid\", \"infill\": \"0'\"")
                .replace("\"run\": \"R1\"", "\"run\": \"R7\"");
        assertThat(errors(text))
                .containsExactly(
                        "yard.json:5: runs[0].style \"wood-side-by-sid\": the catalogue has no such style; write wood-side-by-side",
                        "yard.json:5: runs[0].infill \"0'\": this must be more than zero; write a length above zero, or leave the key away",
                        "yard.json:8: gates[0].run \"R7\": there is no run R7; write R1",
                        "yard.json:8: gates[0].opening \"50\": a length needs its unit; write 50\" or 4' 2\"",
                        "yard.json:8: gates[0].sight: this key is not known here; leave it away; the keys here are id, kind, run,"
                                + " station, opening, hinge, swing, opens, holdOpen, leaf, hingePost, latchPost, hinges, latch,"
                                + " loads, asSet, release, obstacles, regrade, landing, setBack");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"station\": \"10'\"|\"station\": \"80'\"|yard.json:8: gates[0].station \"80'\": G1 reaches from 80' 0\" to 84' 0\","
                        + " and R1 ends at 40' 0\"; move the gate, or make the run longer",
                "\"opening\": \"4'\"|\"opening\": \"0\\\"\"|yard.json:8: gates[0].opening \"0\"\": this must be more than zero;"
                        + " write a length above zero, or leave the key away",
                "\"opening\": \"4'\"|\"opening\": \"1e9 ft\"|yard.json:8: gates[0].opening \"1e9 ft\": this is not a length;"
                        + " write 50\", 4' 2-1/2\" or 1270 mm",
                "\"opening\": \"4'\"|\"opening\": \"1000000000 ft\"|yard.json:8: gates[0].opening \"1000000000 ft\":"
                        + " this is longer than 157 miles; check the number and its unit",
                "\"opening\": \"4'\"|\"opening\": 48|yard.json:8: gates[0].opening \"48\": a length needs its unit, and quotes round"
                        + " both; write \"4' 2\\\"\"",
                "\"opening\": \"4'\"|\"opening\": null|yard.json:8: gates[0].opening \"null\": null says nothing; leave the key away",
                "\"opening\": \"4'\"|\"opnings\": \"4'\"|yard.json:8: gates[0].opening: this is needed and missing;"
                        + " write \"opening\": \"4' 2\\\"\"",
                "\"kind\": \"swing\"|\"kind\": \"swong\"|yard.json:8: gates[0].kind \"swong\": this is not a kind of gate; write swing",
                "\"version\": 1|\"version\": 2|yard.json:3: version \"2\": this file is of a later version; open it with the Plumbleaf"
                        + " that wrote it, or a later one",
                "\"version\": 1|\"version\": 1, \"version\": 1|yard.json:3: version: this key is there twice; keep one of them",
                "\"version\": 1|\"version\": 1, \"packet\": [\"order\", \"load-list\", \"order\"]|yard.json:3: packet: order is in it twice; name each paper once",
                "\"runs\": [|\"draft\": \"yes\", \"runs\": [|yard.json:4: draft \"yes\": this is a text; write true or false",
                "\"legs\": [{ \"length\": \"40'\" }]|\"legs\": []|yard.json:5: runs[0].legs: a run needs a leg;"
                        + " write \"legs\": [ { \"length\": \"40'\" } ]",
            })
    void saysWhatIsWrongAndHowToPutItRight(String from, String to, String error) {
        assertThat(LEAST).contains(from);
        assertThat(errors(LEAST.replace(from, to))).contains(error);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"after\": \"S7\"|\"after\": \"S70\"|there is no shot S70; write S7",
                "\"setup\": \"H2\", \"rod\": \"2' 3|\"setup\": \"H9\", \"rod\": \"2' 3|there is no setup H9; write H1",
                "\"station\": \"86'\"|\"station\": \"87'\"|R1 ends at 86' 0\"; write a station from 0' to 86' 0\", or lengthen the run",
                "\"id\": \"S8\"|\"id\": \"S7\"|S7 is the id of ground.shots[6] already; give this one another",
                "\"id\": \"G1\"|\"id\": \"R1\"|R1 is the id of runs[0] already; give this one another",
                "\"station\": \"26'\", \"opening\"|\"station\": \"54'\", \"opening\"|G1 reaches from 54' 0\" to 58' 0\", across the corner"
                        + " at 56' 0\"; move the gate into one leg",
                "TUBE-2x2x0.083|TUBE-2x2x0.08|the catalogue has no such section; write TUBE-2x2x0.083",
                "\"to\": \"39' 6|\"to\": \"36' 6|this is not beyond 37' 6\"; write the farther edge here",
                "\"elevation\": \"-48-1/2\\\"\"|\"setup\": \"H2\", \"rod\": \"3'\"|the height of S9 rests on itself or on a height that is not"
                        + " there; give one shot of the chain an elevation",
                "\"station\": \"24'\", \"setup\": \"H1\", \"rod\": \"6' 1-1/2\\\"\"|\"station\": \"24'\"|this shot has no height;"
                        + " give setup and rod, or elevation, or falls or rises",
                "\"release\": \"priced\"|\"release\": { \"kind\": \"released\", \"revision\": \"A\", \"date\": \"2027-05-20\", \"by\": \"N\" }|"
                        + "a gate is not released before its opening is measured between standing posts; write asSet,"
                        + " or \"beforePosts\": true when the customer signed for that",
                "\"share\": \"40%\"|\"share\": \"50%\"|the shares make 110%; let them make 100%",
                "\"state\": \"medium\"|\"state\": \"firm\"|sand is not firm; write one of loose, medium, dense",
                "\"speed\": \"105 mph\"|\"speed\": \"0 mph\"|no place is as calm as this;"
                        + " write the basic wind speed that the building office names, such as 105 mph",
                "\"turn\": \"90 deg left\"|\"turn\": \"90 deg\"|a turn needs its side; write 90 deg left or 90 deg right",
                "\"date\": \"2027-05-03\"|\"date\": \"2027-02-30\"|there is no such day; write year-month-day, such as 2027-04-19",
                "\"weightOn\": 1|\"weightOn\": 3|there is no hinge 3 of 2; count from the bottom, 1 the lowest",
            })
    void checksTheJobAsAWhole(String from, String to, String error) {
        assertThat(Examples.NURSERY).contains(from);
        assertThat(errors(Examples.NURSERY.replaceFirst(
                        java.util.regex.Pattern.quote(from), java.util.regex.Matcher.quoteReplacement(to))))
                .anySatisfy(text -> assertThat(text).endsWith(": " + error));
    }

    @Test
    void twoGatesNeedAPostBetween() {
        String two = LEAST.replace(
                "\"opening\": \"4'\" }",
                "\"opening\": \"4'\" },\n{ \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"14'\", \"opening\": \"4'\" }");
        assertThat(errors(two))
                .containsExactly(
                        "yard.json:9: gates[1].station \"14'\": G2 and G1 leave no room for a post between them; move one of them");
        assertThat(errors(two.replace("14'", "14' 2\\\""))).isEmpty();
    }

    @Test
    void aDraftMayLackWhatIsNeeded() {
        String draft = LEAST.replace("\"version\": 1,", "\"version\": 1, \"draft\": true,")
                .replace(", \"opening\": \"4'\"", "");
        JobReading reading = JobFile.read("yard.json", draft, Examples.CATALOGUE);
        assertThat(reading.errors()).isEmpty();
        List<Finding> gaps = reading.match(JobReading.Good::gaps, bad -> List.of());
        assertThat(gaps).hasSize(1);
        assertThat(gaps.get(0).severity()).isEqualTo(Severity.CANNOT_SAY);
        assertThat(gaps.get(0).message()).isEqualTo("gates[0].opening is not filled in yet: a length is needed.");
        assertThat(reading.job().orElseThrow().gates()).isEmpty();
        assertThat(reading.job().orElseThrow().draft()).isTrue();
    }

    @Test
    void aDraftMayBeEmpty() {
        assertThat(errors("{ \"format\": \"plumbleaf-job\", \"version\": 1, \"draft\": true }"))
                .isEmpty();
        assertThat(errors("{ \"format\": \"plumbleaf-job\", \"version\": 1 }"))
                .containsExactly(
                        "yard.json:1: runs: a job needs a run; write \"runs\": [ { ... } ], or \"draft\": true while you are at it");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "``|yard.json:1: the file is empty; start one with plumbleaf new",
                "`  `|yard.json:1: the file is empty; start one with plumbleaf new",
                "hello|yard.json:1: this is not JSON: expected value; check the comma, quote or bracket here or just before",
                "[]|yard.json:1: the file holds a list; a job is an object: { \"format\": \"plumbleaf-job\", ... }",
                "{|yard.json:1: this is not JSON: unexpected end of input; check the comma, quote or bracket here or just before",
            })
    void refusesWhatIsNoJob(String text, String error) {
        assertThat(errors(text)).containsExactly(error);
    }

    @Test
    void refusesWhatIsTooLargeOrTooDeep() {
        assertThat(JobFile.read("yard.json", new byte[50 * 1024 * 1024], Examples.CATALOGUE)
                        .errors())
                .extracting(InputError::text)
                .containsExactly("yard.json: the file is 50 MiB, and 32 MiB is the most; give a job file");
        assertThat(errors("[".repeat(5000)))
                .containsExactly("yard.json:1: values lie more than 64 deep here; a job never needs as many levels");
    }

    @Test
    void refusesBytesThatAreNoText() {
        byte[] bytes = LEAST.replace("wood-side", "\u00fcber").getBytes(StandardCharsets.ISO_8859_1);
        assertThat(JobFile.read("yard.json", bytes, Examples.CATALOGUE).errors())
                .extracting(InputError::text)
                .containsExactly("yard.json:5: this is not UTF-8 text; save the file as UTF-8");
    }

    @Test
    void anyHugeOrOddNumberIsAnErrorAndNeverAFault() {
        for (String odd : List.of(
                "\"9999999'\"",
                "\"800000'\"",
                "\"-5'\"",
                "1e400",
                "-0",
                "\"\"",
                "[]",
                "{}",
                "true",
                "\"1/0\\\"\"",
                "\"" + "9".repeat(5000) + "'\""))
            for (String key : List.of(
                    "station\": \"26'\"",
                    "rod\": \"4' 7-1/2\\\"\"",
                    "length\": \"56'\"",
                    "over\": \"8'\"",
                    "infill\": \"6'\"",
                    "from\": \"37' 6\\\"\"",
                    "speed\": \"105 mph\"",
                    "overhead\": \"12%\"",
                    "count\": 2")) {
                assertThat(Examples.NURSERY).contains(key);
                String text = Examples.NURSERY.replace(key, key.substring(0, key.indexOf(' ') + 1) + odd);
                assertThat(errors(text)).as(key + " as " + odd).isNotEmpty();
            }
    }
}
