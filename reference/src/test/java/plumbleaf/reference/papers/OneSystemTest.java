package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.Papers;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.packet.PacketSubject;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.takeoff.TakeoffLine;

/**
 * A metric job speaks metric and a US job feet and inches: on drawings, in papers and in findings alike. Left out are names by which
 * things are sold (a 2 x 2 tube, an 80 lb bag, a 1/2 in. bolt) and, in the calculation book, the formulas, which run in their clause's units.
 */
@Tag("slow")
class OneSystemTest {
    private static final Pattern US = Pattern.compile(
            "\\d ?(?:\"|'(?!\\w)|in\\.|inch|ft\\b|feet|foot\\b|lbs?\\b|lb-|psf|psi\\b|ksi|pcf|mph|\u00b0F|yd|gal|quart|ton\\b|tons\\b)"
                    + "|\\d in$|(?i)\\b(?:inch(?:es)?|feet)\\b|, (?:lb|ft|in\\.|lb-ft|ft\u00b3)$|\\(\\d+ lb\\)");
    private static final Pattern METRIC =
            Pattern.compile("\\d ?(?:mm|cm|m|kg|N|kN|kNm|Nm|MPa|kPa|m/s|m\u00b3|m\u00b2)(?![\\w-])");

    /** Sizes of the trade that stand alone, without the name of what is ordered. */
    private static final List<Pattern> TRADE = List.of(
            Pattern.compile("[\\d./-]+ in\\. OD"),
            Pattern.compile("NPS [\\d/-]+"),
            Pattern.compile("(?:[\\d./-]+\"? x )+[\\d./-]+(?:\"| in\\.)?(?= (?:hex|wedge|lag|deck|bracket)| x|\\b)"),
            Pattern.compile("[\\d./-]+(?:\"| in\\.)(?= (?:bolt|rod|cap nut|flat washer|washer|pin|post|hex|round))"));

    static List<String> us() throws IOException {
        return PaperTrial.examples().stream()
                .filter(name -> !name.equals("reed-lane.json"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("us")
    void aUsJobHasNoMillimeters(String name) throws IOException {
        assertThat(strays(PaperTrial.design(PaperTrial.example(name)), METRIC)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "reed-lane.json",
                "nursery-lane-settled.json",
                "gannet-spit.json",
                "fallow-gate.json",
                "pool-court.json",
                "heron-walk.json"
            })
    void aMetricJobHasNoFeet(String name) throws IOException {
        String text = PaperTrial.example(name).replaceAll("\"display\": ?\"us\"", "\"display\": \"metric\"");
        assertThat(strays(PaperTrial.design(text), US)).isEmpty();
    }

    private static List<String> strays(Design design, Pattern unit) {
        List<String> names = new ArrayList<>(design.job().notes());
        names.add(design.job().title());
        names.add("after Penner 1974, 65 kPa");
        for (TakeoffLine line : design.quote().takeoff().lines())
            names.add(line.sold().name());
        names.sort(Comparator.comparingInt(String::length).reversed());
        List<String> strays = new ArrayList<>();
        for (String said : said(design)) {
            String bare = said;
            for (String name : names) bare = bare.replace(name, "");
            for (Pattern size : TRADE) bare = size.matcher(bare).replaceAll("");
            if (unit.matcher(bare).find() && !strays.contains(said)) strays.add(said);
        }
        return strays;
    }

    /** All words of findings, of papers but for what stands in letters and numbers of a formula, and of the drawings. */
    private static List<String> said(Design design) {
        List<String> said = new ArrayList<>();
        for (Finding finding : design.findings()) said.add(finding.message());
        PacketSubject subject =
                PacketSubjects.of(design.job(), design, PaperTrial.options(PaperSize.LETTER, PaperSize.TABLOID));
        for (Paper paper : Papers.texts(subject)) for (Block block : paper.blocks()) block.match(new Words(said));
        for (Drawing page : Papers.pages(subject)) if (page.paperWidthIn() > page.paperHeightIn()) add(said, page);
        return said;
    }

    private static void add(List<String> said, Drawing drawing) {
        for (Primitive part : drawing.primitives()) if (part instanceof Text text) said.add(text.text());
    }

    private record Words(List<String> said) implements Block.Cases<Boolean> {
        @Override
        public Boolean heading(Block.Heading block) {
            return said.add(block.text());
        }

        @Override
        public Boolean paragraph(Block.Paragraph block) {
            return said.add(block.text());
        }

        @Override
        public Boolean table(Table block) {
            for (Table.Column column : block.columns()) said.add(column.title());
            boolean loadPath =
                    block.columns().stream().anyMatch(column -> column.title().startsWith("Formula"));
            for (Table.Row row : block.rows()) if (!loadPath) said.addAll(row.cells());
            return true;
        }

        @Override
        public Boolean note(Block.Note block) {
            return said.add(block.text());
        }

        @Override
        public Boolean caution(Block.Caution block) {
            return said.addAll(block.lines());
        }

        @Override
        public Boolean formula(Block.Formula block) {
            return said.add(block.what());
        }

        @Override
        public Boolean worked(Block.Worked block) {
            return said.add(block.what());
        }

        @Override
        public Boolean picture(Block.Picture block) {
            add(said, block.drawing());
            return said.add(block.caption());
        }

        @Override
        public Boolean pageBreak(Block.PageBreak block) {
            return true;
        }

        @Override
        public Boolean tickList(Block.TickList block) {
            return said.addAll(block.items());
        }

        @Override
        public Boolean blank(Block.Blank block) {
            return said.addAll(block.labels());
        }
    }
}
