package plumbleaf.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MetricWordsTest {
    private static final MetricWords WORDS =
            MetricWords.keeping(List.of("concrete mix, 80 lb bag", "2 x 2 x 14 ga tube, 24 ft", "cedar rail, 10 ft"));

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "footing 39-3/8\" deep, 4' 2-1/2\" needed | footing 1000 mm deep, 1283 mm needed",
                "falls 7-1/2\" over 10' | falls 190 mm over 3.05 m",
                "at -7-1/2\" | at -190 mm",
                "within 1/16\" | within 1.6 mm",
                "drops 0.157 in. in soft soil | drops 3.99 mm in soft soil",
                "18 to 24 in. of a mark | 457 to 610 mm of a mark",
                "The leaf weighs 107 lb wet | The leaf weighs 49 kg wet",
                "pull 50 to 100 lb by hand scale | pull 222 to 445 N by hand scale",
                "a person pushes with 200 lb; it takes 300 lb | a person pushes with 890 N; it takes 1.33 kN",
                "1,203 lb-ft at grade | 1.63 kNm at grade",
                "a gust of 105 mph | a gust of 47 m/s",
                "16.2 psf on the face | 0.776 kPa on the face",
                "2,400 psi, 36 ksi | 16.5 MPa, 248 MPa",
                "3 days above 50\u00b0F | 3 days above 10\u00b0C",
                "31.3 ft\u00b3, 1.16 yd\u00b3 | 0.886 m\u00b3, 0.887 m\u00b3",
                "a hole 13-3/4\" x 47-1/4\" | a hole 350 mm x 1200 mm",
                "a quarter inch in ten feet, half an inch over | 6 mm in 3 m, 13 mm over",
                "two people above 50 lb | two people above 23 kg",
                "8 ft, 30 ft | 2.44 m, 9.1 m",
                "258 lb of 3,240 (D+L) | 1.15 kN of 14.41 (D+L)",
                "200 lb of 600 in all | 890 N of 2.67 kN in all",
                "the weld carries 445 lb an inch of 1,343. | the weld carries 77.9 N a millimeter of 235.",
                "f = 445 lb/in. | f = 77.9 N/mm",
                "k = 10,000 lb/in., at its top | k = 1,751 N/mm, at its top",
                "the spring of 10,000 lb/in holds | the spring of 1,751 N/mm holds",
            })
    void restatesQuantities(String us, String metric) {
        assertThat(WORDS.of(us)).isEqualTo(metric);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "2.875 in. OD schedule 40 fence pipe (NPS 2-1/2)",
                "4 pieces of 1/2\" x 3-1/2\" hex bolt",
                "concrete mix, 80 lb bag",
                "post 2x4, 5/8 x 5-1/2 cedar picket",
                "ASCE 7-16, IBC 2021 1807.3.2, P7 in clay, 1 in 12",
                "posts 3 in all, G1 in the fence",
                "1283 mm, 49 kg, 890 N",
            })
    void leavesNamesClausesAndMetricAlone(String text) {
        assertThat(WORDS.of(text)).isEqualTo(text);
        assertThat(WORDS.hasUs(text)).isFalse();
    }

    @Test
    void restatesAroundNames() {
        assertThat(WORDS.of("53 bags (concrete mix, 80 lb bag) in a hole 12\" wide"))
                .isEqualTo("53 bags (concrete mix, 80 lb bag) in a hole 305 mm wide");
    }

    @Test
    void whatWasEnteredInRoundMillimetresComesBackRound() {
        for (int mm = 50; mm <= 3000; mm += 5)
            assertThat(WORDS.of("at " + LengthText.feetAndInches(mm / 25.4))).isEqualTo("at " + mm + " mm");
    }

    @Test
    void isItsOwnFixedPoint() {
        String once = WORDS.of("12\" wide, 3' 0\" deep, 250 lb, 40\u00b0F");
        assertThat(WORDS.of(once)).isEqualTo(once);
    }
}
