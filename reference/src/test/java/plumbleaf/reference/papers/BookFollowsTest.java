package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.packet.CalculationBook;
import plumbleaf.documents.packet.PacketSubject;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.typeset.HtmlPaper;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.quantity.WorkedLine;

/**
 * The calculation book can be followed with a pocket calculator: of every line {@code name = formula = numbers = value} in every example's book the printed
 * numbers give the printed value, within what rounding each to its sixth figure can do.
 */
@Tag("slow")
class BookFollowsTest {
    private static final Pattern LINE = Pattern.compile("<p>(.*?)(?: <span class=\"clause\">.*?</span>)?</p>");

    /** What is less prints as nothing. */
    private static final double NOTHING = 1e-7;

    static List<String> examples() throws IOException {
        return PaperTrial.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyLineGivesWhatItSays(String example) throws IOException {
        follows(PaperTrial.design(PaperTrial.example(example)));
    }

    /** What no example has: ice on a leaf, a rising hinge, a pair whose leaves differ. */
    @Test
    void soDoesWhatNoExampleHas() throws IOException {
        String nursery = PaperTrial.example("nursery-lane.json");
        String person = "\"person\": \"200 lb\"";
        String pins = "\"hole\": \"12\\\"\", \"depth\": \"36\\\"\"";
        assertThat(nursery).contains(person, pins, "HINGE-ADJ-0.625");
        follows(PaperTrial.design(nursery.replace(person, person + ", \"ice\": \"1/2\\\"\"")
                .replace("HINGE-ADJ-0.625", "HINGE-RISE-0.625")));
        follows(PaperTrial.design(nursery.replace("\"kind\": \"swing\"", "\"kind\": \"pair\", \"swing\": \"in\"")
                .replace(", \"hinge\": \"left\", \"swing\": \"in\", \"opens\": \"90 deg\"", "")
                .replace(pins, pins + ", \"rightLeaf\": { \"braces\": 0, \"hinge\": \"HINGE-BALL-0.75\" }")));
    }

    private static void follows(Design design) {
        PacketSubject subject =
                PacketSubjects.of(design.job(), design, PaperTrial.options(PaperSize.LETTER, PaperSize.TABLOID));
        Paper book = CalculationBook.of(subject);
        List<String> wrong = new ArrayList<>();
        int lines = 0;
        int shares = 0;
        for (Block block : book.blocks()) {
            if (block instanceof Block.Worked worked)
                for (String line : printed(book, worked)) {
                    lines++;
                    wrong.addAll(follow(line));
                }
            if (block instanceof Table table && isWeightList(table)) {
                shares += table.rows().size();
                table.rows().forEach(row -> wrong.addAll(weigh(row.cells())));
            }
        }
        assertThat(wrong).isEmpty();
        if (!subject.gates().isEmpty() || !subject.slides().isEmpty()) {
            assertThat(shares).as("pieces weighed").isGreaterThan(5);
            assertThat(lines).as("lines followed").isGreaterThan(40);
        }
    }

    /** The lines of a block as a reader has them before him. */
    private static List<String> printed(Paper book, Block.Worked block) {
        String html = HtmlPaper.of(new Paper(book.title(), book.running(), "", List.of(block)));
        List<String> lines = LINE.matcher(html)
                .results()
                .map(match -> match.group(1).replace("&quot;", "\""))
                .filter(line -> line.contains(" = ") && !line.startsWith("<strong>"))
                .collect(Collectors.toList());
        assertThat(lines).as(block.what()).hasSize(block.lines().size()).isNotEmpty();
        return lines;
    }

    static List<String> follow(String line) {
        String[] parts = line.split(" = ", -1);
        if (parts.length < 3) return List.of("says no formula and numbers: " + line);
        PocketCalculator.Answer numbers = PocketCalculator.workOut(parts[parts.length - 2]);
        double value = PocketCalculator.workOut(parts[parts.length - 1]).value();
        double off = numbers.off() + PocketCalculator.halfOfSixth(value) + NOTHING;
        List<String> wrong = new ArrayList<>();
        if (!(Math.abs(numbers.value() - value) <= off * 1.0001))
            wrong.add(line + " : but the numbers give " + numbers.value() + ", off by more than " + off);
        if (off > 1e-3 * Math.abs(value) && off > 2e-5) wrong.add(line + " : is rounded too far to be checked");
        return wrong;
    }

    private static boolean isWeightList(Table table) {
        return table.columns().stream().anyMatch(column -> column.title().equals("W x (lb-in)"));
    }

    /** Piece, how many, long, w, W, x, W x. */
    private static List<String> weigh(List<String> cells) {
        List<String> wrong = new ArrayList<>();
        wrong.addAll(follow("W x = W \u00d7 x = " + bracketed(cells.get(4)) + " \u00d7 " + bracketed(cells.get(5))
                + " = " + cells.get(6)));
        if (!cells.get(3).equals("\u2013"))
            wrong.addAll(
                    follow("W = w L / 12 = " + cells.get(3) + " \u00d7 " + cells.get(2) + " / 12 = " + cells.get(4)));
        return wrong;
    }

    private static String bracketed(String number) {
        return number.startsWith("-") ? "(" + number + ")" : number;
    }

    /** The lines of a link end in the very ratio that the load path shows. */
    @ParameterizedTest
    @MethodSource("examples")
    void theLinesOfALinkEndInItsRatio(String example) throws IOException {
        Design design = PaperTrial.design(PaperTrial.example(example));
        int links = 0;
        for (GateDesign gate : design.gates())
            for (LinkUse link : gate.loadPath()) {
                List<WorkedLine> lines = link.work().lines();
                if (lines.isEmpty()) continue;
                links++;
                assertThat(lines.get(lines.size() - 1).value())
                        .as(example + " " + link.link() + " " + link.part())
                        .isCloseTo(link.utilisation(), within(1e-9 * Math.max(1, link.utilisation())));
            }
        if (!design.gates().isEmpty()) assertThat(links).isGreaterThan(5);
    }

    /** The lines of a post at grade end in the share that its check shows; so do those of the links of a slide. */
    @ParameterizedTest
    @MethodSource("examples")
    void theLinesOfAPostEndInItsRatio(String example) throws IOException {
        Design design = PaperTrial.design(PaperTrial.example(example));
        int posts = 0;
        for (PostDesign post : design.posts()) {
            List<WorkedLine> lines = post.atGrade();
            if (lines.isEmpty()) continue;
            posts++;
            double share = post.check().utilisation();
            assertThat(lines.get(lines.size() - 1).value())
                    .as(example + " " + post.id())
                    .isCloseTo(share, within(1e-9 * Math.max(1, share)));
        }
        assertThat(posts).isPositive();
        for (GateDesign gate : design.gates())
            if (gate.slide().isPresent())
                assertThat(gate.loadPath())
                        .as(example + " " + gate.id())
                        .anySatisfy(link -> assertThat(link.work().lines()).isNotEmpty());
    }

    @Test
    void theCalculatorCounts() {
        assertThat(PocketCalculator.workOut("2 × (3 in. - 1,000.5 lb / 4)² + sqrt(9) × max(1; -2) / 0.5")
                        .value())
                .isCloseTo(2 * Math.pow(3 - 1000.5 / 4, 2) + 6, within(1e-9));
        assertThat(PocketCalculator.workOut("0.658^(36,000 psi / 72,000 psi) × π")
                        .value())
                .isCloseTo(Math.pow(0.658, 0.5) * Math.PI, within(1e-12));
        assertThat(follow("H = W × a / d = 210.3 lb × 24.125 in. / 40 in. = 126.837 lb"))
                .isEmpty();
        assertThat(follow("H = W × a / d = 210.3 lb × 24.125 in. / 40 in. = 126.85 lb"))
                .hasSize(1);
    }
}
