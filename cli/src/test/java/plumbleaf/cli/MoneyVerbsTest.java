package plumbleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;

/** The verbs about money and days, on the example that passes. */
@Tag("slow")
class MoneyVerbsTest {
    private static final Path SETTLED = Path.of("..", "examples", "nursery-lane-settled.json");

    @TempDir
    private Path folder = Path.of("");

    private Path job(String name, String money) throws IOException {
        String text = Files.readString(SETTLED);
        int at = text.lastIndexOf("\"money\"");
        int brace = text.indexOf('{', at);
        return Files.writeString(
                folder.resolve(name), text.substring(0, brace + 1) + money + text.substring(brace + 1));
    }

    @Test
    void eachOptionIsDesignedAndPricedBesideTheJob() throws IOException {
        Path job = job(
                "job.json",
                "\"options\": [{\"id\": \"deep\", \"name\": \"six inches more footing\", \"kind\": \"build\","
                        + "\"edits\": [\"builds.G1.depth=54\\\"\"]}],");
        Terminal run = Terminal.run("price", job.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("Options, each designed and checked:")
                .containsPattern("deep +six inches more footing +\\+?-?\\$");
    }

    @Test
    void optionsTickedTogetherAreOneDesignAndReconcileToTheCent() throws IOException {
        Path job = job(
                "job.json",
                "\"options\": [{\"id\": \"deep\", \"name\": \"deeper footings\", \"edits\": [\"builds.G1.depth=54\\\"\"]},"
                        + "{\"id\": \"deeper\", \"name\": \"deeper still\", \"edits\": [\"builds.G1.depth=60\\\"\"]},"
                        + "{\"id\": \"book\", \"name\": \"no contingency\", \"edits\": [\"money.contingency=0%\"]}],");
        Terminal both = Terminal.run("price", job.toString(), "--with", "deep,book", "--json");
        Node together = JsonReader.read(both.out()).match(tree -> tree.root(), broken -> {
            throw new AssertionError(both.out());
        });
        BigDecimal sum = amount(together, "together.base")
                .add(amount(together, "together.alone[0]"))
                .add(amount(together, "together.alone[1]"))
                .add(amount(together, "together.together"));
        assertThat(sum).isEqualByComparingTo(amount(together, "together.total"));
        assertThat(amount(together, "together.together").signum())
                .as("the deeper hole has no contingency either")
                .isNotZero();
        assertThat(Terminal.run("price", job.toString(), "--with", "deep,deeper")
                        .out())
                .contains("Not together: deeper footings and deeper still both change builds.G1.depth");
        assertThat(Terminal.run("price", job.toString(), "--with", "none")
                        .errorLines()
                        .toString())
                .contains("no option has the id none");
    }

    private static BigDecimal amount(Node root, String path) {
        return new BigDecimal(NodePath.of(path).find(root).flatMap(Node::asText).orElseThrow());
    }

    @Test
    void theHouseFileSaysWhoWorksAndEveryBadRowIsNamed() throws IOException {
        Path house = Files.writeString(folder.resolve("days.csv"), """
                kind,name,count,for,from,through,why
                house,crews,1,,,,
                house,rain pct,20,,,,
                machine,auger,1,set,,,
                off,everyone,,,2027-05-10,2027-05-11,fair
                """);
        Terminal run =
                Terminal.run("calendar", SETTLED.toString(), "--from", "2027-05-10", "--house", house.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("2027-05-12", "auger", "kept for rain", "Locate ticket KR-0417 holds");
        Files.writeString(house, "kind,name,count,for,from,through,why\noff,crew 4,,,2027-06-01,,\n");
        assertThat(Terminal.run("calendar", SETTLED.toString(), "--from", "2027-06-01", "--house", house.toString())
                        .errorLines()
                        .toString())
                .contains("crew 4");
    }

    @Test
    void anOptionForAPartThatIsNotThereIsAnErrorWithItsName() throws IOException {
        Path job = job(
                "job.json", "\"options\": [{\"id\": \"x\", \"name\": \"y\", \"edits\": [\"gates[G9].hinge=left\"]}],");
        Terminal run = Terminal.run("price", job.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.errorLines())
                .containsExactly(
                        job
                                + ": money.options[0] x: there is no gates[G9].hinge in this job; name a thing by its id in the file");
    }

    @Test
    void keptPricesHoldUntilTheNewOnesAreAskedFor() throws IOException {
        assertThat(Terminal.run("book", "new", folder.resolve("own").toString()).code())
                .isZero();
        String text = Files.readString(SETTLED).replace("example-2027", "own");
        Path job = Files.writeString(folder.resolve("job.json"), text);
        Path kept = folder.resolve("kept.json");
        String before =
                Terminal.run("price", job.toString(), "--keep", kept.toString()).out();
        Terminal raised = Terminal.run(
                "book",
                "raise",
                folder.resolve("own").toString(),
                "--by",
                "10%",
                "--date",
                "2027-06-01",
                "--why",
                "letter");
        assertThat(raised.code()).isZero();
        assertThat(Files.readString(folder.resolve("own").resolve("history.csv")))
                .startsWith("date,item,supplier,unit,contents,was,now,why\n2027-06-01,");
        assertThat(Terminal.run("book", "check", folder.resolve("own").toString())
                        .code())
                .isZero();
        String after = Terminal.run("price", kept.toString()).out();
        assertThat(total(after)).isEqualTo(total(before));
        assertThat(after)
                .contains("The book has moved since this job was quoted:", "--today --keep takes the new prices.");
        assertThat(total(Terminal.run("price", kept.toString(), "--today").out()))
                .isNotEqualTo(total(before));
        assertThat(total(Terminal.run("price", job.toString()).out())).isNotEqualTo(total(before));
    }

    @Test
    void aBookThatIsNowhereIsSaidWithTheCure() throws IOException {
        Path job = Files.writeString(
                folder.resolve("job.json"), Files.readString(SETTLED).replace("example-2027", "nowhere"));
        assertThat(Terminal.run("price", job.toString()).errorLines())
                .containsExactly(
                        job + ": there is no price book nowhere; write example-2027, or lay a folder nowhere with its"
                                + " tables beside the job (plumbleaf book new nowhere)");
    }

    @Test
    void aChangeIsTheDifferenceOfTwoDesigns() throws IOException {
        Path changed = Files.writeString(
                folder.resolve("changed.json"),
                Files.readString(SETTLED).replaceFirst("\"margin\": \"[^\"]*\"", "\"margin\": \"25%\""));
        assertThat(Terminal.run("change", SETTLED.toString(), changed.toString())
                        .out())
                .startsWith("Price with tax: +$");
        assertThat(Terminal.run("change", SETTLED.toString(), SETTLED.toString())
                        .out())
                .isEqualTo("The two come to the same.\n");
    }

    @Test
    void billsSayWhatIsDue() throws IOException {
        Path job = job(
                "job.json",
                "\"billing\": {\"retainage\": \"10%\", \"bills\": [{\"date\": \"2027-05-03\", \"what\": \"on signing\","
                        + "\"amount\": \"$1,000.00\"}], \"paid\": [{\"date\": \"2027-05-09\", \"how\": \"check\", \"amount\": \"$400.00\"}]},");
        assertThat(Terminal.run("bill", job.toString()).out())
                .containsPattern("Kept back until the end +\\$100.00\n")
                .containsPattern("Due now +\\$500.00\n");
    }

    @Test
    void aBillByProgressSaysWhatIsInstalledAndWhatIsStored() throws IOException {
        String billing = """
                "billing": {"retainage": "10%", "bills": [{"date": "2027-05-03", "what": "first", "amount": "$500.00"}],
                  "measured": [{"what": "posts", "unit": "each", "quantity": 20, "each": "$85.00", "installed": 8, "stored": 6}],
                  "submittals": [{"what": "stain sample", "sent": "2027-04-20"}]},""";
        // 8 x 85 = 680 in, 6 x 85 = 510 stored, 1190 in all; less 500 billed; a tenth of 1190 kept back.
        assertThat(Terminal.run("bill", job("job.json", billing).toString()).out())
                .containsPattern("8 in and 6 stored of 20 each +\\$1,700.00 +\\$680.00 +\\$510.00\n")
                .containsPattern("Installed and stored +\\$1,190.00 *\n")
                .containsPattern("Kept back of that +\\$119.00 *\n")
                .containsPattern("To bill next +\\$690.00 *\n")
                .contains("Submittal stain sample: sent on 2027-04-20, not back yet");
        Path much = job("much.json", billing.replace("\"stored\": 6", "\"stored\": 13"));
        assertThat(Terminal.run("bill", much.toString()).errorLines().toString())
                .contains("measured[0].stored", "more is installed and stored than the contract holds");
    }

    @Test
    void jobsSideBySideAreLaidInDaysAndWrittenAsACalendar() throws IOException {
        Path out = folder.resolve("days.ics");
        Terminal run = Terminal.run(
                "calendar", SETTLED.toString(), SETTLED.toString(), "--from", "2027-05-03", "--out", out.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("concrete cures").contains("crew 1");
        assertThat(Files.readString(out)).startsWith("BEGIN:VCALENDAR\r\n").endsWith("END:VCALENDAR\r\n");
    }

    @Test
    void fiveDaysThatAgreePutARateInQuestion() throws IOException {
        StringBuilder days = new StringBuilder();
        for (int day = 1; day <= 5; day++)
            days.append(day == 1 ? "" : ",")
                    .append("{\"date\": \"2027-05-0")
                    .append(day)
                    .append("\", \"task\": \"stake-out\", \"quantity\": 10, \"hours\": ")
                    .append(30 + day)
                    .append("}");
        String text = Files.readString(SETTLED);
        text = text.replaceFirst("\"actuals\": \\[\\s*\\],?", "");
        int end = text.lastIndexOf('}');
        Path job = Files.writeString(
                folder.resolve("job.json"), text.substring(0, end) + ", \"actuals\": [" + days + "] }");
        assertThat(Terminal.run("learn", job.toString()).out()).contains("the book is off: 3.3?");
        assertThat(Terminal.run("hours", job.toString()).out()).contains("stake");
    }

    private static String total(String out) {
        return out.lines().filter(line -> line.startsWith("Total ")).findFirst().orElse("no total");
    }
}
