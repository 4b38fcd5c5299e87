package plumbleaf.jobfile.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumbleaf.jobfile.input.InputError;

/** What is wrong with a point file is said at once, each by its line, and nothing is turned round, dropped or smoothed in silence. */
class PointReviewTest {
    private static PointFile read(List<String> lines) {
        return PointFile.read("site.txt", String.join("\n", lines), PointFile.Said.NOTHING);
    }

    /** A slope of 1 in 10 to the east, 6 by 5 points, ten feet apart. */
    private static List<String> slope() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            int row = i / 6;
            double north = 4000 + 10.0 * row;
            double east = 900 + 10.0 * (i % 6);
            lines.add(String.format(Locale.ROOT, "%d,%.2f,%.2f,%.2f,g", i + 1, north, east, 500.0 + (i % 6)));
        }
        return lines;
    }

    @Test
    void aGoodFileHasNoDoubts() {
        PointFile file = read(slope());
        assertThat(file.errors()).isEmpty();
        assertThat(file.doubts()).isEmpty();
        assertThat(file.shots()).hasSize(30);
    }

    /** A height 40 ft off its neighbors is told beside a number that is there twice, not after that is mended. */
    @Test
    void aBlunderIsSaidBesideWhatIsWrong() {
        List<String> lines = slope();
        lines.set(8, "9,4010.00,920.00,542.00,g");
        lines.set(15, "3,4020.00,930.00,503.00,g");
        assertThat(read(lines).problems())
                .extracting(InputError::text)
                .containsExactly(
                        "site.txt:9: elevation: Shot S9 is 40' 0\" off the line of its neighbors. Read it again before"
                                + " relying on it; nothing is smoothed: the point is kept as it was read",
                        "site.txt:16: point \"3\": this point is there twice; keep one of the lines");
    }

    /** Points along one line of fence make no surface; they are held against those before and behind. */
    @Test
    void aBlunderInAStraightLineOfPointsIsSaid() {
        PointFile file = read(List.of(
                "1,5000,2000,100,g",
                "2,5000,2050,99.2,g",
                "3,5000.4,2100,98.5,g",
                "4,5000,2150,137.9,g",
                "5,5000,2200,97,g",
                "6,5000,2250,96.4,g"));
        assertThat(file.errors()).isEmpty();
        assertThat(file.shots()).hasSize(6);
        assertThat(file.doubts()).extracting(InputError::line).containsExactly(4);
    }

    @Test
    void everythingWrongIsSaidAtOnceByLine() {
        List<String> lines = slope();
        lines.set(3, "4,930.00,4000.00,503.00,g");
        lines.set(9, "10,4010.00,930.00,0.00,g");
        lines.set(12, "13,4020.00,900.00,,g");
        lines.set(15, "3,4020.00,930.00,503.00,g");
        lines.set(20, "21,500.00,920.00,4030.00,g");
        PointFile file = read(lines);
        assertThat(file.errors())
                .extracting(InputError::text)
                .containsExactly(
                        "site.txt:4: northing: northing and easting are swapped here: the other way round the point"
                                + " lies among the rest; write this line in the order of the others",
                        "site.txt:10: elevation \"0.00\": this stands where the elevation is missing; give the point its"
                                + " height, or strike the line",
                        "site.txt:13: elevation: the elevation is missing; write P,N,E,Z,D with plain numbers for N, E"
                                + " and Z",
                        "site.txt:16: point \"3\": this point is there twice; keep one of the lines",
                        "site.txt:21: northing: northing and elevation are swapped here: the other way round the point"
                                + " lies among the rest; write this line in the order of the others");
    }

    /** A foot of the old surveys is not today's: the heading is taken at its word. */
    @Test
    void theUnitIsTheOneThatTheHeadingNames() {
        Map<String, SurveyUnit> headings = new LinkedHashMap<>();
        headings.put("P,N,E,Z (ft)", SurveyUnit.FEET);
        headings.put("P,N,E,Z in US survey feet", SurveyUnit.US_SURVEY_FEET);
        headings.put("P,N,E,Z (mm)", SurveyUnit.MILLIMETRES);
        headings.put("P,N,E,Z (in)", SurveyUnit.INCHES);
        headings.forEach((heading, unit) -> assertThat(read(List.of(heading, "1,500,200,100", "2,500,215,99.8"))
                        .unit())
                .as(heading)
                .isEqualTo(unit));
    }

    @Test
    void aHeadingThatNamesUnitsTellsTheOrderToo() {
        PointFile file = read(List.of("P,E (m),N (m),Z (m)", "1,500,200,100", "2,515,200,99.8"));
        assertThat(file.found()).contains("order: P,E,N,Z, as the heading says");
    }

    /** A collector that took no height writes -9999, in meters as in feet. */
    @Test
    void aHeightOfNothingIsOneInMetersToo() {
        PointFile file = PointFile.read(
                "site.txt",
                "P,N(m),E(m),Z(m),D\n1,500,200,100,g\n2,500,215,99.8,g\n3,500,230,-9999,g\n4,500,245,99.3,g\n5,500,260,99,g\n",
                PointFile.Said.NOTHING);
        assertThat(file.unit()).isEqualTo(SurveyUnit.METRES);
        assertThat(file.errors())
                .extracting(InputError::text)
                .containsExactly(
                        "site.txt:4: elevation \"-9999\": this stands where the elevation is missing; give the point"
                                + " its height, or strike the line");
    }

    @Test
    void aBlunderIsNamedAloneAndKept() {
        List<String> lines = slope();
        lines.set(14, "15,4020.00,920.00,510.00,g");
        PointFile file = read(lines);
        assertThat(file.errors()).isEmpty();
        assertThat(file.shots()).hasSize(30);
        assertThat(file.doubts()).hasSize(1);
        assertThat(file.doubts().get(0).line()).isEqualTo(15);
        assertThat(file.doubts().get(0).problem()).startsWith("Shot S15 is 8' 0\" off");
    }

    @Test
    void heightsReadFromAPlanColumnAreRefused() {
        List<String> turned = new ArrayList<>();
        for (String line : slope()) {
            String[] cells = line.split(",", -1);
            turned.add(String.join(",", cells[0], cells[3], cells[2], cells[1], cells[4]));
        }
        PointFile file = read(turned);
        assertThat(file.errors()).hasSize(1);
        assertThat(file.errors().get(0).cure()).startsWith("write PZEND as the order of columns");
        PointFile said = PointFile.read(
                "site.txt",
                String.join("\n", turned),
                new PointFile.Said(Optional.empty(), ColumnOrder.of("PZEND"), Optional.empty()));
        assertThat(said.errors()).isEmpty();
    }

    @Test
    void decimalCommasBetweenSemicolonsAreRead() {
        PointFile file = read(List.of("name;north (m);east (m);elev (m)", "1;12,50;3,25;1,000", "2;14,50;3,25;1,100"));
        assertThat(file.errors()).isEmpty();
        assertThat(file.separator()).isEqualTo(Separator.SEMICOLON);
        assertThat(file.found()).contains("decimals: after a comma", "units: meters, as the heading says");
        assertThat(ShotNode.north(file.shots().get(0)).inches()).isEqualTo(12.5 / 0.0254);
    }
}
