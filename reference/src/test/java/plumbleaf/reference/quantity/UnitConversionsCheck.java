package plumbleaf.reference.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.QuantityText;
import plumbleaf.engine.quantity.Speed;

/**
 * Every unit that is read, turned into the SI, against the printed conversion factor.
 *
 * <p>Source: NIST Special Publication 811 (2008), Guide for the Use of the International System of Units, Appendix B.8; rows marked
 * memory in unit-conversions.csv are from memory.
 *
 * <p>Tolerance: half of the last printed digit; exact factors to 1e-15 of the value.
 */
class UnitConversionsCheck {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "/plumbleaf/reference/quantity/unit-conversions.csv",
            numLinesToSkip = 4,
            useHeadersInDisplayName = false)
    void oneUnitInTheSi(String from, String read, String to, String factor, String exact, String confidence) {
        double printed = Double.parseDouble(factor);
        double ours = inSi(read, to);
        double halfDigit = 0.5 * Math.pow(10, -new BigDecimal(factor).scale());
        double tolerance = exact.equals("yes") ? 1e-15 * printed : Math.min(halfDigit, printed * 0.5e-6);
        assertThat(ours).as(from + ", " + confidence).isCloseTo(printed, Offset.offset(tolerance));
    }

    /** What one of the unit is in the SI, by way of the text that a user would write and the working unit it is held in. */
    private static double inSi(String read, String to) {
        return switch (to) {
            case "metre" -> LengthText.length(read).value().orElseThrow().nanometres() / 1e9;
            case "newton" ->
                QuantityText.force(read).value().orElseThrow().pounds()
                        / QuantityText.force("1 N").value().orElseThrow().pounds();
            case "pascal" ->
                read.endsWith("psf")
                        ? QuantityText.pressure(read).value().orElseThrow().psf()
                                / QuantityText.pressure("1 kPa")
                                        .value()
                                        .orElseThrow()
                                        .psf()
                                * 1000
                        : QuantityText.stress(read).value().orElseThrow().psi()
                                / QuantityText.stress("1 MPa")
                                        .value()
                                        .orElseThrow()
                                        .psi()
                                * 1e6;
            case "metre per second" -> speed(read).mph() / speed("1 m/s").mph();
            case "kilogram per cubic metre" ->
                density(read).pcf() / density("1 kg/m3").pcf();
            case "pound" -> QuantityText.force(read).value().orElseThrow().pounds();
            case "radian" -> QuantityText.angle(read).value().orElseThrow().radians();
            default -> throw new IllegalArgumentException("No way to " + to);
        };
    }

    private static Speed speed(String text) {
        return QuantityText.speed(text).value().orElseThrow();
    }

    private static Density density(String text) {
        return QuantityText.density(text).value().orElseThrow();
    }
}
