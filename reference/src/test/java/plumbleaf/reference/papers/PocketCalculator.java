package plumbleaf.reference.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Works out a printed line such as {@code 412.35 lb / (40 in. - 2 in.)²}, as somebody would who types it in. Knows nothing of what made the line. */
final class PocketCalculator {
    /** A number and the unit behind it, which a calculator has no key for. */
    private static final Pattern NUMBER = Pattern.compile(
            "((?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?)"
                    + "(?: (?:lb-in-s²|lb-in²|lb-in³|lb-in/rad|lb-in|lb-ft|lb/in\\.|lb/in³|lb/in²|lb/ft|lb|in\\./s²|in\\./s|in\\.|in²|in³|in4|in\\^6|ft²|ft³|ft|psi|ksi|psf|pcf|mph|rad|Hz)(?![A-Za-z²³⁴]))?");

    private final String text;
    private final List<Double> numbers;
    private final boolean reads;
    private int at;
    private int next;

    private PocketCalculator(String text, List<Double> numbers, boolean reads) {
        this.text = text;
        this.numbers = numbers;
        this.reads = reads;
    }

    /**
     * @param off by how much the result may be off when each number is rounded to its sixth figure
     */
    record Answer(double value, double off) {}

    static Answer workOut(String text) {
        List<Double> numbers = new ArrayList<>();
        double value = new PocketCalculator(text, numbers, true).whole();
        double off = 0;
        for (int i = 0; i < numbers.size(); i++) {
            double half = halfOfSixth(numbers.get(i));
            List<Double> moved = new ArrayList<>(numbers);
            moved.set(i, numbers.get(i) + half);
            off += Math.abs(new PocketCalculator(text, moved, false).whole() - value);
        }
        return new Answer(value, off);
    }

    /** Half of what a figure more or less in the sixth place is. */
    static double halfOfSixth(double value) {
        return value == 0 ? 0 : 0.5 * Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 5);
    }

    private double whole() {
        double value = sum();
        if (at != text.length()) throw new IllegalArgumentException("Cannot read on from: " + text.substring(at));
        return value;
    }

    private double sum() {
        double value = eat("-") ? -product() : product();
        while (true) {
            if (eat(" + ")) value += product();
            else if (eat(" - ")) value -= product();
            else return value;
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (eat(" × ")) value *= power();
            else if (eat(" / ")) value /= power();
            else return value;
        }
    }

    private double power() {
        double value = one();
        if (eat("²")) return value * value;
        if (eat("³")) return value * value * value;
        if (eat("^")) return Math.pow(value, one());
        return value;
    }

    private double one() {
        if (eat("-")) return -one();
        if (eat("π")) return Math.PI;
        if (eat("sqrt(")) return Math.sqrt(within());
        if (eat("sin(")) return Math.sin(within());
        if (eat("cos(")) return Math.cos(within());
        if (eat("tan(")) return Math.tan(within());
        if (eat("max(")) return most(1);
        if (eat("min(")) return -most(-1);
        if (eat("(")) return within();
        Matcher matcher = NUMBER.matcher(text).region(at, text.length());
        if (!matcher.lookingAt())
            throw new IllegalArgumentException("No number at: " + text.substring(at) + " of " + text);
        at = matcher.end();
        if (reads) numbers.add(Double.parseDouble(matcher.group(1).replace(",", "")));
        return numbers.get(next++);
    }

    private double within() {
        double value = sum();
        if (!eat(")"))
            throw new IllegalArgumentException("No closing bracket at: " + text.substring(at) + " of " + text);
        return value;
    }

    private double most(int sign) {
        double most = sign * sum();
        while (eat("; ")) most = Math.max(most, sign * sum());
        if (!eat(")"))
            throw new IllegalArgumentException("No closing bracket at: " + text.substring(at) + " of " + text);
        return most;
    }

    private boolean eat(String token) {
        if (!text.startsWith(token, at)) return false;
        at += token.length();
        return true;
    }
}
