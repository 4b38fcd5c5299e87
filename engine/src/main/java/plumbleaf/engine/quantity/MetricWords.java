package plumbleaf.engine.quantity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences that were made in feet, inches and pounds, said in metric: the one door through which what a metric job says goes, so
 * that a check written in US units needs no second wording. A number is converted from what is printed, to a length no finer than
 * the print was: of all millimetres that round to the printed sixteenth the roundest is said, {@code 39-3/8"} for 1000 mm.
 * Names of things as the trade sells them, such as {@code 2 x 2 x 14 ga tube} or {@code 80 lb bag}, stay as they are.
 */
public final class MetricWords {
    private static final String NUMBER =
            "(?:(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?(?:-\\d+/\\d+)?|\\d+/\\d+|\\.\\d+)";

    private static final String UNITS =
            "lb-ft|lb-in|ft-lb|lb an inch(?: of [a-z]+)?|lb a foot|lb/in[3\u00b3]|lb/in\\.|lb/in|lb/ft"
                    + "|lbs?|psf|psi|ksi|pcf|plf|mph|in[2-4\u00b2-\u00b3\u2074]|in\\.|inch(?:es)?|in(?=$|[,;:)\\]/])"
                    + "|ft[2-3\u00b2-\u00b3]|square feet|cubic feet|cubic yards?|yd[3\u00b3]|ft|feet|foot|\u00b0F|gallons?|quarts?|kips?|tons?"
                    + "|\"|'(?!\\w)";
    private static final Pattern QUANTITY = Pattern.compile("(?<![\\w./'-])(-|\u2212)?(?:(\\d+)' (" + NUMBER
            + ")\"|(?:(" + NUMBER + ")( to | or | and | x | / |\u2013))?("
            + NUMBER + ")[ \u00a0-]?(" + UNITS + ")(?![\\w\u00b2\u00b3\u2074])"
            + "(?: of (" + NUMBER + ")(?=[,;.)]? |[;:.,)]?$)(?! (?:" + UNITS + "|%)))?)");
    /** Sizes by which things are sold: nominal dimensions, diameters of pipe, sizes of bolts and what goes with them. */
    private static final Pattern TRADE_SIZE = Pattern.compile("(?:" + NUMBER + "\"? x )+" + NUMBER
            + "(?![\\d/.])(?!-\\d)(?:(?:\"| in\\.)? (?:hex|lag|bolt|wedge|screw|bracket|deck|carriage)|(?! ?(?:\"|mm|in\\.|ft)))| x "
            + NUMBER
            + " ga\\b|" + NUMBER
            + "(?:\"| in\\.|-inch) (?:OD|bolt|hex|rod|cap nut|flat washer|washer|lag|wedge|anchor|pin on|post\\b|round|diamond|mesh)"
            + "|NPS " + NUMBER + "|\\b" + NUMBER + " ga\\b");

    private static final Pattern WEIGHS = Pattern.compile(
            "weigh|two people|heav|load|truck|trailer|haul|bags?\\b|lift|carr(?:y|ies) the|ordered|zinc-coated|plugs?\\b|wet\\b|dry\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PULLS = Pattern.compile(
            "pull|push|press|hinge|anchor|force|gust|rod|roller|person|bolt|stop", Pattern.CASE_INSENSITIVE);

    private final List<String> names;

    private MetricWords(List<String> names) {
        this.names = names;
    }

    /**
     * @param names as things are sold, which are never restated
     */
    public static MetricWords keeping(Collection<String> names) {
        List<String> all = new ArrayList<>();
        for (String name : names) if (QUANTITY.matcher(name).find()) all.add(name);
        all.sort(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()));
        return new MetricWords(all.stream().distinct().toList());
    }

    /** The same text with its quantities in metric. */
    public String of(String text) {
        if (text.isEmpty()) return text;
        return restated(text, 0);
    }

    /** Around the first name that is kept, then around sizes of the trade, then the quantities. */
    private String restated(String text, int from) {
        for (int i = from; i < names.size(); i++) {
            String name = names.get(i);
            int at = text.indexOf(name);
            if (at >= 0)
                return restated(text.substring(0, at), i) + name + restated(text.substring(at + name.length()), i);
        }
        StringBuilder said = new StringBuilder();
        Matcher size = TRADE_SIZE.matcher(text);
        int done = 0;
        while (size.find()) {
            said.append(quantities(text.substring(done, size.start()), text)).append(size.group());
            done = size.end();
        }
        return said.append(quantities(text.substring(done), text)).toString();
    }

    private static String quantities(String text, String within) {
        String plain = inFigures(text);
        Matcher found = QUANTITY.matcher(plain);
        StringBuilder said = new StringBuilder();
        int done = 0;
        while (found.find()) {
            said.append(plain, done, found.start());
            String sign = found.group(1) == null ? "" : found.group(1);
            if (found.group(2) != null) {
                double feet = Double.parseDouble(found.group(2));
                said.append(sign)
                        .append(roundest(feet * 12 + number(found.group(3)), 1.0 / 32))
                        .append(" mm");
            } else {
                boolean weight = isWeight(within, plain, found.start());
                String last = converted(found.group(6), found.group(7), weight);
                said.append(sign);
                if (found.group(4) != null) {
                    String first = converted(found.group(4), found.group(7), weight);
                    said.append(sameUnit(first, last) ? bare(first) : first).append(found.group(5));
                }
                said.append(last);
                if (found.group(8) != null) {
                    String limit = converted(found.group(8), found.group(7), weight);
                    said.append(" of ").append(sameUnit(limit, last) ? bare(limit) : limit);
                }
            }
            done = found.end();
        }
        return said.append(plain.substring(done)).toString();
    }

    /** Lengths that are written out. */
    private static String inFigures(String text) {
        if (!text.contains("inch") && !text.contains("foot of ") && !text.contains("feet")) return text;
        return text.replaceAll("\\b[Aa] foot of ", "305 mm of ")
                .replaceAll("\\b(?:half an|a half) inch\\b", "13 mm")
                .replaceAll("\\ba quarter (?:of an )?inch\\b", "6 mm")
                .replaceAll("\\ban eighth of an inch\\b", "3 mm")
                .replaceAll("\\ba sixteenth of an inch\\b", "1.6 mm")
                .replaceAll("\\bten feet\\b", "3 m")
                .replaceAll("(?<!lb )\\ban inch of ", "25 mm of ");
    }

    private static boolean sameUnit(String one, String other) {
        return unitOf(one).equals(unitOf(other));
    }

    private static String unitOf(String said) {
        return said.substring(said.indexOf(' ') + 1);
    }

    private static String bare(String said) {
        return said.substring(0, said.indexOf(' '));
    }

    /** Whether pounds are said of what something weighs rather than of a force: by the words next to the number. */
    private static boolean isWeight(String all, String plain, int at) {
        String near = plain.substring(Math.max(0, at - 44), Math.min(plain.length(), at + 44));
        if (plain.substring(Math.max(0, at - 24), at).contains("weigh")) return true;
        if (near.length() < 20 && all.length() < 90) near = all;
        return WEIGHS.matcher(near).find() && !PULLS.matcher(near).find();
    }

    private static double number(String text) {
        String plain = text.replace(",", "");
        int slash = plain.indexOf('/');
        if (slash < 0) return Double.parseDouble(plain);
        int dash = plain.indexOf('-');
        double whole = dash < 0 ? 0 : Double.parseDouble(plain.substring(0, dash));
        return whole
                + Double.parseDouble(plain.substring(dash + 1, slash)) / Double.parseDouble(plain.substring(slash + 1));
    }

    private static int places(String text) {
        int dot = text.indexOf('.');
        return dot < 0 ? 0 : text.length() - dot - 1;
    }

    private static String converted(String text, String unit, boolean weight) {
        double value = number(text);
        int places = places(text);
        return switch (unit) {
            case "\"", "in.", "in", "inch", "inches" ->
                (places == 0 ? roundest(value, 1.0 / 32) : decimalMm(value, places)) + " mm";
            case "'", "ft", "feet", "foot" -> metres(value, places) + " m";
            case "lb", "lbs" -> weight ? DisplayUnits.METRIC.weight(value) : DisplayUnits.METRIC.force(value);
            case "kip", "kips" -> DisplayUnits.METRIC.force(value * 1000);
            case "ton", "tons" -> DecimalText.fixed(value * 0.90718474, Math.max(1, places)) + " t";
            case "lb-ft", "ft-lb" -> DisplayUnits.METRIC.moment(value * 12);
            case "lb-in" -> DisplayUnits.METRIC.moment(value);
            case "psf" -> digits(value * MetricFactor.KPA_PER_PSF) + " kPa";
            case "psi" -> digits(value * MetricFactor.MPA_PER_PSI) + " MPa";
            case "ksi" -> digits(value * 1000 * MetricFactor.MPA_PER_PSI) + " MPa";
            case "pcf" -> DecimalText.whole(value * 16.018463) + " kg/m\u00b3";
            case "plf", "lb/ft", "lb a foot" -> digits(value * 0.01459390) + " kN/m";
            case "lb/in", "lb/in." -> digits(value * 0.1751268) + " N/mm";
            case "lb/in3", "lb/in\u00b3" -> digits(value * MetricFactor.MN_M3_PER_LB_IN3) + " MN/m\u00b3";
            case "mph" -> DecimalText.upTo(value * MetricFactor.METRES_A_SECOND_PER_MPH, places) + " m/s";
            case "in2", "in\u00b2" -> digits(value * 645.16) + " mm\u00b2";
            case "in3", "in\u00b3" -> digits(value * 16.387064) + " cm\u00b3";
            case "in4", "in\u2074" -> digits(value * 41.6231426) + " cm\u2074";
            case "ft2", "ft\u00b2", "square feet" -> digits(value * 0.09290304) + " m\u00b2";
            case "ft3", "ft\u00b3", "cubic feet" -> digits(value * 0.028316847) + " m\u00b3";
            case "yd3", "yd\u00b3", "cubic yard", "cubic yards" -> digits(value * 0.76455486) + " m\u00b3";
            case "\u00b0F" -> DecimalText.fixed((value - 32) / 1.8, 0) + "\u00b0C";
            case "gallon", "gallons" -> DecimalText.whole(value * 3.785411784) + " liters";
            case "quart", "quarts" -> DecimalText.upTo(value * 0.946352946, 1) + " liters";
            default -> perInch(value, unit);
        };
    }

    private static String perInch(double value, String unit) {
        if (!unit.startsWith("lb an inch")) return DecimalText.shortest(value) + " " + unit;
        return digits(value * 0.1751268) + " N a millimeter" + unit.substring("lb an inch".length());
    }

    /** The roundest of the millimetres that the printed inches could stand for. */
    private static String roundest(double inches, double halfIn) {
        double mm = inches * 25.4;
        double half = halfIn * 25.4;
        if (mm < 3) return DecimalText.upTo(mm, 1);
        for (double step : new double[] {100, 50, 10, 5}) {
            double near = Math.rint(mm / step) * step;
            if (mm >= 20 && Math.abs(near - mm) <= half) return DecimalText.fixed(near, 0);
        }
        return DecimalText.fixed(mm, 0);
    }

    /** Inches with a point: as many digits as were printed. */
    private static String decimalMm(double inches, int places) {
        if (places == 1) return roundest(inches, 0.05);
        return DecimalText.fixed(inches * 25.4, Math.max(0, places - 1));
    }

    /** Whole feet are meters to the centimeter, or rounder where that is the same foot. */
    private static String metres(double feet, int places) {
        return DecimalText.upTo(feet * 0.3048, feet >= 20 ? Math.max(1, places) : Math.max(2, places));
    }

    /** Three digits that count. */
    private static String digits(double value) {
        double size = Math.abs(value);
        if (size >= 100) return DecimalText.whole(value);
        if (size >= 10) return DecimalText.upTo(value, 1);
        if (size >= 1) return DecimalText.upTo(value, 2);
        return DecimalText.upTo(value, 3);
    }

    /** Whether a text still speaks in US units, beside the names of things. */
    public boolean hasUs(String text) {
        return !of(text).equals(text);
    }
}
