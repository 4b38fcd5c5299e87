package plumbleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class VerbsTest {
    private static final String NURSERY =
            Path.of("..", "examples", "nursery-lane.json").toString();

    @TempDir
    private Path folder = Path.of("");

    @Test
    void checkSaysWhatTheFileHoldsAndWhatIsAssumed() {
        Terminal run = Terminal.run("check", NURSERY);
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .startsWith(NURSERY + " is a good job file: Nursery on Kettle Lane\n"
                        + "  1 run of 86' 0\" in all, 1 gate, 23 shots\n"
                        + "Not said, so assumed:\n")
                .contains("  gates[0].loads.serviceGust      40 mph       judgement\n");
    }

    @Test
    void newWritesAFileThatChecksAndNeverWritesOverOne() {
        String file = folder.resolve("yard.json").toString();
        assertThat(Terminal.run("new", file, "--title", "North side").code()).isZero();
        assertThat(Terminal.run("check", file).out()).startsWith(file + " is a good job file: North side\n");
        Terminal again = Terminal.run("new", file);
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.errorLines())
                .containsExactly(file + ": this file is there already; name another, or add --over to write over it");
        assertThat(Terminal.run("new", file, "--over").code()).isZero();
        String nowhere = folder.resolve("no/where.json").toString();
        assertThat(Terminal.run("new", nowhere).errorLines())
                .containsExactly(nowhere + ": there is no such folder; make it first");
    }

    @Test
    void shotsTellHowAPointFileWasRead() throws IOException {
        Path points = Files.writeString(
                folder.resolve("points.txt"),
                "1,250000.5,750000.25,101.5,lane corner\n2,250010.5,750010.25,100.9,\"post, old\"\n");
        Terminal run = Terminal.run("shots", points.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .isEqualTo(points + ": 2 points\n"
                        + "  separator: comma, as most lines have it\n"
                        + "  order: P,N,E,Z,D, the usual one; where easting comes first write PENZD as the order of columns\n"
                        + "  units: feet, taken for granted; where they are not say m, us-ft, in or mm\n"
                        + "  origin: 250000 ft taken off every northing and 750000 ft off every easting; only differences count\n"
                        + "  --separator, --order and --units say otherwise\n"
                        + "  shot    east   north       elevation  note\n"
                        + "  S1        3\"      6\"         101' 6\"  lane corner\n"
                        + "  S2    10' 3\"  10' 6\"  100' 10-13/16\"  post, old\n");
    }

    @Test
    void everyBadLineOfAPointFileIsNamed() throws IOException {
        Path points = Files.writeString(folder.resolve("points.txt"), "# remark\n1 10 20 1.5\n2 x 20 1.5\n\n1 11 20\n");
        Terminal run = Terminal.run("shots", points.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.errorLines())
                .containsExactly(
                        points
                                + ":3: northing \"x\": this is not a number; write P,N,E,Z with plain numbers for N, E and Z",
                        points
                                + ":5: elevation: the elevation is missing; write P,N,E,Z with plain numbers for N, E and Z",
                        points + ":5: point \"1\": this point is there twice; keep one of the lines");
    }

    @Test
    void shotsGoIntoAJob() throws IOException {
        Path points = Files.writeString(
                folder.resolve("points.txt"), "point\tnorthing\teasting\telev (m)\tcode\nA1\t1.5\t2\t0.25\tcurb\n");
        Path out = folder.resolve("with.json");
        Terminal run = Terminal.run("shots", points.toString(), "--into", NURSERY, "--out", out.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(Files.readString(out))
                .contains(
                        "{ \"id\": \"A1\", \"east\": \"2000 mm\", \"north\": \"1500 mm\", \"elevation\": \"250 mm\", \"note\": \"curb\" }");
        assertThat(Terminal.run("check", out.toString()).out()).contains("24 shots");
        assertThat(Terminal.run("shots", points.toString(), "--into", NURSERY).errorLines())
                .containsExactly("plumbleaf shots: --into and --out go together; give both, or neither to look only");
        assertThat(Terminal.run("shots", points.toString(), "--units", "yd").errorLines())
                .containsExactly("plumbleaf shots: --units yd is not known; write one of ft, us-ft, in, m, mm");
    }

    @Test
    void aVerbAloneIsTheVerbAmongAll() {
        Set<String> tellsOfOthers = Set.of("help", "generate-completion");
        Plumbleaf.commandLine().getSubcommands().forEach((verb, among) -> {
            Optional<CommandLine> alone = Plumbleaf.ofVerb(List.of(verb, "--help"));
            assertThat(alone.isEmpty()).as(verb).isEqualTo(tellsOfOthers.contains(verb));
            for (CommandLine line : alone.stream().toList()) {
                assertThat(line.getSubcommands()).containsOnlyKeys(verb);
                for (CommandLine only : line.getSubcommands().values())
                    assertThat(only.getUsageMessage()).as(verb).isEqualTo(among.getUsageMessage());
            }
        });
        assertThat(Plumbleaf.ofVerb(List.of("desing"))).isEmpty();
        assertThat(Plumbleaf.ofVerb(List.of())).isEmpty();
    }

    @Test
    void everyVerbHasHelpAndSpeaksJson() {
        CommandLine line = Plumbleaf.commandLine();
        line.getSubcommands().forEach((verb, command) -> {
            Terminal help = Terminal.run(verb, "--help");
            assertThat(help.code()).as(verb).isZero();
            assertThat(help.out()).as(verb).contains("plumbleaf " + verb);
            boolean ours = command.getCommand().getClass().getPackageName().equals("plumbleaf.cli");
            boolean parent = !command.getSubcommands().isEmpty();
            if (ours && !parent) assertThat(help.out()).as(verb).contains("--json");
            for (String inner : command.getSubcommands().keySet())
                assertThat(Terminal.run(verb, inner, "--help").out())
                        .as(verb + " " + inner)
                        .contains("--json");
        });
    }

    @Test
    void saysItsVersionAndMakesCompletion() {
        assertThat(Terminal.run("version").out()).startsWith("Plumbleaf 0.1").endsWith(", job files of version 1\n");
        assertThat(Terminal.run("--version").out()).startsWith("Plumbleaf 0.1");
        assertThat(Terminal.run("generate-completion").out())
                .contains("_complete_plumbleaf")
                .contains("shots");
        assertThat(Terminal.run("help", "shots").out()).contains("--units");
    }
}
