package plumbleaf.reference.connection;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.strength.Withdrawal;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Withdrawal of nails, screws and lags from side grain.
 * Source: American Wood Council worked examples (MX17, MX18); a permit printout (MX19); NDS 2018 Table 12.2A (MX20); an engineering reference page (MX21);
 * NDS 2018 Equation 12.2-3 with wind and wet service (MX22).
 * Tolerance: 0.2 %; MX20 0.5 lb, the printed digit.
 */
class WithdrawalCheck {
    @ParameterizedTest
    @ValueSource(strings = {"MX17", "MX18", "MX19", "MX20", "MX21", "MX22"})
    void perInchAndWhole(String id) {
        Vector vector = Vectors.one("connection", id);
        Length diameter = Length.inches(vector.in("D_in"));
        Force perInch = switch (vector.text("kind")) {
            case "nail" -> Withdrawal.nailPerInch(vector.in("G"), diameter);
            case "screw" -> Withdrawal.screwPerInch(vector.in("G"), diameter);
            default -> Withdrawal.lagPerInch(vector.in("G"), diameter);
        };
        vector.check("W_lb_in", perInch.pounds());
        if (!vector.expected().containsKey("W_lb")) return;
        double duration = vector.inputs().containsKey("CD") ? vector.in("CD") : 1;
        double wet = vector.inputs().containsKey("CM") ? vector.in("CM") : 1;
        vector.check(
                "W_lb",
                Withdrawal.allowed(perInch, Length.inches(vector.in("p_in")), duration, wet)
                        .pounds());
    }
}
