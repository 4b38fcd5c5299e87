package plumbleaf.jobfile.survey;

import java.math.BigDecimal;
import java.util.Optional;

/** A number as point files write it: digits, a sign before them, one point or, where commas do not separate, one comma. */
final class PlainNumber {
    private static final int LONGEST = 30;

    private PlainNumber() {}

    static Optional<BigDecimal> of(String cell, boolean decimalComma) {
        if (cell.isEmpty() || cell.length() > LONGEST) return Optional.empty();
        boolean digit = false;
        boolean point = false;
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            boolean sign = i == 0 && (c == '-' || c == '+');
            boolean dot = (c == '.' || (decimalComma && c == ',')) && !point;
            if (!sign && !dot && (c < '0' || c > '9')) return Optional.empty();
            digit |= c >= '0' && c <= '9';
            point |= dot;
        }
        return digit ? Optional.of(new BigDecimal(cell.replace(',', '.'))) : Optional.empty();
    }
}
