package plumbleaf.jobfile.survey;

import java.math.BigDecimal;

/**
 * A line of a point file that has its three numbers, in nanometres.
 *
 * @param line its number in the file
 * @param name as the file has it; may be empty
 * @param upAsRead its elevation in the file's own unit
 */
record SurveyPoint(
        int line, String name, BigDecimal north, BigDecimal east, BigDecimal up, BigDecimal upAsRead, String note) {
    double northFt() {
        return north.doubleValue() / 304_800_000;
    }

    double eastFt() {
        return east.doubleValue() / 304_800_000;
    }

    double upFt() {
        return up.doubleValue() / 304_800_000;
    }
}
