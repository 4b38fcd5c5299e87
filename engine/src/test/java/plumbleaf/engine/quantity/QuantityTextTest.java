package plumbleaf.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {
    private static <T> double read(Parsed<T> parsed, Function<T, Double> number) {
        return parsed.value().map(number).orElseThrow();
    }

    private static String refused(Parsed<?> parsed) {
        return parsed.match(read -> "read", no -> no.problem() + "; " + no.cure());
    }

    @Test
    void readsEachKindInItsWorkingUnit() {
        assertThat(read(QuantityText.slope("8%"), Slope::ratio)).isEqualTo(0.08);
        assertThat(read(QuantityText.slope("-1 in 12"), Slope::ratio)).isEqualTo(-1 / 12.0);
        assertThat(read(QuantityText.share("12%"), share -> share)).isEqualTo(0.12);
        assertThat(read(QuantityText.angle("90 deg"), Angle::radians)).isCloseTo(Math.PI / 2, within(1e-15));
        assertThat(read(QuantityText.angle("90\u00b0"), Angle::radians)).isCloseTo(Math.PI / 2, within(1e-15));
        assertThat(read(QuantityText.speed("115 mph"), Speed::mph)).isEqualTo(115);
        assertThat(read(QuantityText.speed("10 m/s"), Speed::mph)).isCloseTo(22.3693629, within(5e-8));
        assertThat(read(QuantityText.force("60 lb"), Force::pounds)).isEqualTo(60);
        assertThat(read(QuantityText.force("1 kN"), Force::pounds)).isCloseTo(224.808943, within(5e-7));
        assertThat(read(QuantityText.force("100 kg"), Force::pounds)).isCloseTo(220.462262, within(5e-7));
        assertThat(read(QuantityText.pressure("1 kPa"), Pressure::psf)).isCloseTo(20.8854342, within(5e-8));
        assertThat(read(QuantityText.stress("46 ksi"), Stress::psi)).isEqualTo(46_000);
        assertThat(read(QuantityText.density("35 pcf"), Density::pcf)).isEqualTo(35);
        assertThat(read(QuantityText.soilRate("24.3 lb/in3"), SoilRate::poundsPerCubicInch))
                .isEqualTo(24.3);
        assertThat(read(QuantityText.soilRate("6.6 MN/m3"), SoilRate::poundsPerCubicInch))
                .isCloseTo(24.3141, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "115|a wind speed needs its unit; write 115 mph or 51 m/s",
                "115 knots|\"knots\" is no unit for a wind speed; write 115 mph or 51 m/s",
                "fast|this is not a wind speed; write 115 mph or 51 m/s",
                "500 mph|a wind speed is 0 to 400 mph; check the number and its unit",
                "-5 mph|a wind speed is 0 to 400 mph; check the number and its unit",
            })
    void refusesWithACure(String text, String words) {
        assertThat(refused(QuantityText.speed(text))).isEqualTo(words);
    }

    @Test
    void refusalsNameTheirOwnKind() {
        assertThat(refused(QuantityText.slope("8"))).isEqualTo("a grade needs its unit; write 8% or 1 in 12");
        assertThat(refused(QuantityText.slope("1 in 0")))
                .isEqualTo("a grade needs a run above zero; write 8% or 1 in 12");
        assertThat(refused(QuantityText.force("10 stone")))
                .isEqualTo("\"stone\" is no unit for a force or weight; write 60 lb or 270 N");
        assertThat(refused(QuantityText.angle("100000 deg")))
                .isEqualTo("an angle is within 3600 deg; check the number and its unit");
    }

    @Test
    void numbersPrintWithoutExponentOrMinusZeroAndReadBackTheSame() {
        assertThat(DecimalText.shortest(0.1)).isEqualTo("0.1");
        assertThat(DecimalText.shortest(-0.0)).isEqualTo("0");
        assertThat(DecimalText.shortest(1e15)).isEqualTo("1000000000000000");
        assertThat(DecimalText.shortest(1e-7)).isEqualTo("0.0000001");
        assertThat(DecimalText.fixed(-0.125, 2)).isEqualTo("-0.13");
        assertThat(DecimalText.fixed(-0.001, 2)).isEqualTo("0.00");
        assertThat(DecimalText.fixed(1.005, 2)).isEqualTo("1.00");
        assertThat(DecimalText.upTo(2.50, 2)).isEqualTo("2.5");
        assertThat(DecimalText.whole(1239.5)).isEqualTo("1,240");
        assertThat(DecimalText.whole(-1234567)).isEqualTo("-1,234,567");
        Random random = new Random(11);
        for (int i = 0; i < 50_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isNaN(value) || Double.isInfinite(value)) continue;
            String text = DecimalText.shortest(value);
            assertThat(Double.parseDouble(text)).isEqualTo(value);
            assertThat(text).doesNotContain("E").doesNotContain("e");
        }
    }
}
