package plumbleaf.jobfile.survey;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The unit of a point file's coordinates, in nanometres. */
public enum SurveyUnit {
    FEET("ft", "feet", new BigDecimal("304800000")),
    /** 1200/3937 of a metre, NIST SP 811 (2008) B.6: retired at the end of 2022, but still in older surveys. */
    US_SURVEY_FEET(
            "us-ft",
            "US survey feet",
            new BigDecimal("1200000000000")
                    .divide(new BigDecimal("3937"), new MathContext(30, RoundingMode.HALF_EVEN))),
    INCHES("in", "inches", new BigDecimal("25400000")),
    METRES("m", "meters", new BigDecimal("1000000000")),
    MILLIMETRES("mm", "millimeters", new BigDecimal("1000000"));

    private final String key;
    private final String words;
    private final BigDecimal nanometres;

    SurveyUnit(String key, String words, BigDecimal nanometres) {
        this.key = key;
        this.words = words;
        this.nanometres = nanometres;
    }

    /** The unit that a heading names, as {@code Z (m)} or {@code Elevation, US survey feet}; none where it names none. */
    static Optional<SurveyUnit> inHeading(String heading) {
        String words = heading.toLowerCase(Locale.ROOT);
        if (names(words, "millimeter", "millimetre", "(mm)")) return Optional.of(MILLIMETRES);
        if (names(words, "meter", "metre", "(m)")) return Optional.of(METRES);
        if (names(words, "survey feet", "(us-ft)", "(usft)", "(us ft)", "(sft)")) return Optional.of(US_SURVEY_FEET);
        if (names(words, "feet", "(ft)")) return Optional.of(FEET);
        return names(words, "inches", "(in)") ? Optional.of(INCHES) : Optional.empty();
    }

    private static boolean names(String heading, String... words) {
        return Arrays.stream(words).anyMatch(heading::contains);
    }

    public String key() {
        return key;
    }

    /** As people read it. */
    public String words() {
        return words;
    }

    /** To the nearest nanometre. */
    BigDecimal nanometres(BigDecimal value) {
        return value.multiply(nanometres).setScale(0, RoundingMode.HALF_UP);
    }
}
