package plumbleaf.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "4' 2-1/2\"|1282700000",
                "4' 2 1/2\"|1282700000",
                "4' 2 1/2|1282700000",
                "4'2-1/2\"|1282700000",
                "4 ft 2-1/2 in|1282700000",
                "4 feet 2.5 inches|1282700000",
                "4\u2032 2\u00bd\u2033|1282700000",
                "50-1/2\"|1282700000",
                "1282.7 mm|1282700000",
                "128.27 cm|1282700000",
                "1.2827m|1282700000",
                "1/64\"|396875",
                "6'|1828800000",
                "6.5'|1981200000",
                "0\"|0",
                ".5\"|12700000",
                "1 mm|1000000",
                "  10-1/2 \"|266700000",
            })
    void readsToWholeNanometres(String text, long nanometres) {
        assertThat(LengthText.length(text).value().map(Length::nanometres)).contains(nanometres);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "50|a length needs its unit; write 50\" or 4' 2\"",
                "50-1/2|a length needs its unit; write 50-1/2\" or 4' 2-1/2\"",
                "6|a length needs its unit; write 6\" or 6 mm",
                "``|a length is missing; write 50\", 4' 2-1/2\" or 1270 mm",
                "long|this is not a length; write 50\", 4' 2-1/2\" or 1270 mm",
                "4' 13\"|there are 12 inches or more after the feet; carry them into the feet",
                "1/3\"|a fraction of an inch has 2, 4, 8, 16, 32 or 64 below; write it as a decimal or to the nearest 1/64",
                "1/128\"|a fraction of an inch has 2, 4, 8, 16, 32 or 64 below; write it as a decimal or to the nearest 1/64",
                "1/0\"|a fraction of an inch has 2, 4, 8, 16, 32 or 64 below; write it as a decimal or to the nearest 1/64",
                "5/4\"|the fraction is a whole inch or more; write the whole inches before it: 1-1/4\"",
                "-3\"|a length is never negative; leave the minus sign away",
                "0.0000001 mm|this is finer than a millionth of a millimeter; write fewer decimals",
                "1000000 ft|this is longer than 157 miles; check the number and its unit",
                "1e9 ft|this is not a length; write 50\", 4' 2-1/2\" or 1270 mm",
                "4' 2\" x|this is not a length; write 50\", 4' 2-1/2\" or 1270 mm",
            })
    void refusesWithACure(String text, String words) {
        String said =
                LengthText.length(text).match(read -> "read", refused -> refused.problem() + "; " + refused.cure());
        assertThat(said).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "50.5|4' 2-1/2\"|50-1/2\"|1283 mm",
                "10.5|10-1/2\"|10-1/2\"|267 mm",
                "12|1' 0\"|12\"|305 mm",
                "0|0\"|0\"|0 mm",
                "0.03125|1/16\"|1/16\"|1 mm",
                "0.031|0\"|0\"|1 mm",
                "11.97|1' 0\"|12\"|304 mm",
                "-50.5|-4' 2-1/2\"|-50-1/2\"|-1283 mm",
                "-0.03|0\"|0\"|-1 mm",
            })
    void printsAsTheTradeWrites(double inches, String feet, String plain, String metric) {
        assertThat(LengthText.feetAndInches(inches)).isEqualTo(feet);
        assertThat(LengthText.inchesOnly(inches)).isEqualTo(plain);
        assertThat(LengthText.millimetres(inches)).isEqualTo(metric);
    }

    @Test
    void signedDistancesKeepTheirSign() {
        assertThat(LengthText.offset("-7-1/2\"").value()).contains(Offset.inches(-7.5));
        assertThat(LengthText.offset("+3 mm").value().map(Offset::inches)).contains(3_000_000 / 25_400_000.0);
    }

    @Test
    void aBareNumberTakesTheUnitShown() {
        assertThat(LengthText.lengthOnScreen("50-1/2", DisplayUnits.US).value()).contains(Length.inches(50.5));
        assertThat(LengthText.lengthOnScreen("1270", DisplayUnits.METRIC).value())
                .contains(Length.inches(50));
        assertThat(LengthText.lengthOnScreen("4'", DisplayUnits.METRIC).value()).contains(Length.feet(4));
    }

    @Test
    void whateverIsReadIsWrittenSoThatItReadsBackTheSame() {
        Random random = new Random(20270419);
        for (int i = 0; i < 20_000; i++) {
            long nanometres = i % 2 == 0
                    ? random.nextInt(1_000_000) * 396_875L
                    : random.nextLong(4_000_000_000_000L) / (i % 3 == 0 ? 1_000 : 1);
            Length length = Length.nanometres(nanometres);
            String text = LengthText.exact(length.inches());
            assertThat(LengthText.length(text).value()).as(text).contains(length);
            assertThat(length.nanometres()).isEqualTo(nanometres);
        }
    }

    @Test
    void printedLengthsAreNeverFurtherOffThanHalfASixteenth() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            double inches = random.nextDouble() * 1000;
            double printed = LengthText.length(LengthText.feetAndInches(inches))
                    .value()
                    .orElseThrow()
                    .inches();
            assertThat(Math.abs(printed - inches)).isLessThanOrEqualTo(1 / 32.0 + 1e-12);
        }
    }

    /** Second method: decimal arithmetic, which holds every double exactly. */
    @Test
    void halvesOfASixteenthGoAwayFromZeroAndNothingElseDoes() {
        SplittableRandom random = new SplittableRandom(16);
        for (int i = 0; i < 20_000; i++) {
            double half = random.nextInt(-40_000, 40_000) / 32.0;
            for (double inches :
                    new double[] {half, Math.nextUp(half), Math.nextDown(half), random.nextDouble(-900, 900)}) {
                BigDecimal sixteenths =
                        new BigDecimal(inches).multiply(BigDecimal.valueOf(16)).setScale(0, RoundingMode.HALF_UP);
                assertThat(LengthText.offset(LengthText.feetAndInches(inches))
                                        .value()
                                        .orElseThrow()
                                        .inches()
                                * 16)
                        .as("%s", inches)
                        .isEqualTo(sixteenths.doubleValue());
            }
        }
    }

    @Test
    void anyWhiteSpaceBetweenPartsIsOneBlank() {
        assertThat(LengthText.length("4' \t 2 1/2\"")).isEqualTo(LengthText.length("4' 2 1/2\""));
        assertThat(LengthText.length("4 feet\n2  1/2 inches")).isEqualTo(LengthText.length("4' 2 1/2\""));
    }
}
