package plumbleaf.engine.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * One line of a calculation, to be followed with a pocket calculator: {@code H = W x a / d = 412.35 lb x 24.063 in. / 40 in. = 248.06 lb}. The numbers
 * take the places of the names in the formula, so that formula and numbers cannot part; the result comes from the engine and not from the line, so that the
 * line is a check of it.
 *
 * <p>A formula is written with plus, minus, the multiplication cross, a stroke, raised 2 and 3, {@code ^}, brackets, {@code sqrt max min sin cos tan} of radians, pi, names and
 * numbers. Check: BookFollowsTest works every line of every example's book out again, within the last figure printed.
 *
 * @param symbol of what is worked out: {@code H}
 * @param formula in names
 * @param numbers the formula with numbers for names
 * @param value as the engine has it
 * @param unit of the value, empty for a ratio
 * @param note its clause, or what it is, in a few words; empty for none
 */
public record WorkedLine(String symbol, String formula, String numbers, double value, String unit, String note) {
    /** Figures of what is put in and of what comes out: so the fifth of the result stands, however long the chain. */
    private static final int FIGURES = 6;

    /** In any unit here, less than rounding leaves. */
    private static final double NOTHING = 1e-7;

    private static final String POWERS = "\u00b2\u00b3^";
    private static final Set<String> WORDS =
            new TreeSet<>(List.of("sqrt", "max", "min", "sin", "cos", "tan", "\u03c0"));

    /** Of {@code symbol}, by a formula in names. */
    public static Open of(String symbol, String formula) {
        return new Open(symbol, formula);
    }

    /** As it is printed. */
    public String text() {
        return symbol + " = " + (formula.equals(numbers) ? "" : formula + " = ") + numbers + " = " + result();
    }

    /** {@code 248.06 lb}. */
    public String result() {
        return number(value, unit);
    }

    /** A number as lines print it; what is left of a difference of equal numbers is nothing. */
    public static String number(double value) {
        if (Math.abs(value) < NOTHING) return "0";
        return DecimalText.figures(value, FIGURES);
    }

    private static String number(double value, String unit) {
        return unit.isEmpty() ? number(value) : number(value) + " " + unit;
    }

    /** A line whose names still wait for their numbers. */
    public static final class Open {
        private final String symbol;
        private final String formula;
        private final Map<String, String> put = new LinkedHashMap<>();
        private String note = "";

        private Open(String symbol, String formula) {
            this.symbol = symbol;
            this.formula = formula;
        }

        public Open put(String name, double value, String unit) {
            put.put(name, number(value, unit));
            return this;
        }

        /** A bare number. */
        public Open put(String name, double value) {
            return put(name, value, "");
        }

        /** A bare number of a term that is not always there. */
        public Open putWhere(boolean there, String name, double value) {
            return there ? put(name, value) : this;
        }

        public Open put(String name, Length length) {
            return put(name, length.inches(), "in.");
        }

        public Open put(String name, Force force) {
            return put(name, force.pounds(), "lb");
        }

        /** The result of a line above. */
        public Open put(WorkedLine line) {
            return put(line.symbol(), line.value(), line.unit());
        }

        /** Clause, or what it is. */
        public Open note(String words) {
            note = words;
            return this;
        }

        public WorkedLine gives(double value, String unit) {
            return new WorkedLine(symbol, formula, numbers(), value, unit, note);
        }

        public WorkedLine gives(Length value) {
            return gives(value.inches(), "in.");
        }

        public WorkedLine gives(Force value) {
            return gives(value.pounds(), "lb");
        }

        /** A ratio or another bare number. */
        public WorkedLine gives(double value) {
            return gives(value, "");
        }

        private String numbers() {
            StringBuilder out = new StringBuilder();
            Set<String> used = new TreeSet<>();
            int at = 0;
            while (at < formula.length()) {
                if (!Character.isLetter(formula.charAt(at))) {
                    out.append(formula.charAt(at++));
                    continue;
                }
                int end = at + 1;
                while (end < formula.length() && isOfName(formula.charAt(end))) end++;
                String name = formula.substring(at, end);
                out.append(WORDS.contains(name) ? name : inPlaceOf(name, end));
                used.add(name);
                at = end;
            }
            for (String name : put.keySet())
                if (!used.contains(name)) throw new IllegalArgumentException(name + " is not in " + formula);
            return out.toString();
        }

        /** In brackets where a power follows or the number is below zero, that nobody misreads it. */
        private String inPlaceOf(String name, int end) {
            String number = put.get(name);
            if (number == null) throw new IllegalArgumentException("No number for " + name + " in " + formula);
            boolean power = end < formula.length() && POWERS.indexOf(formula.charAt(end)) >= 0;
            return number.startsWith("-") || (power && number.contains(" ")) ? "(" + number + ")" : number;
        }

        private static boolean isOfName(char c) {
            return c == '\'' || (Character.isLetterOrDigit(c) && POWERS.indexOf(c) < 0);
        }
    }
}
