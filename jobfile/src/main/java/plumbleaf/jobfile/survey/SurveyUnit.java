package plumbleaf.jobfile.survey;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

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
