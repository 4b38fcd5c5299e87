package plumbleaf.engine.schedule;

import java.time.LocalDate;
import plumbleaf.engine.job.FrostMonths;

/**
 * What frost does to the days of a job. In a month in which it may freeze at the site, concrete poured then, or still young then, is held back from its load for the
 * house's longer cure. Plans by the month the site names, not by a forecast: on the day the thermometer decides.
 *
 * @param cureDays between pouring and hanging in such a month; the house's own
 */
public record ColdWeather(FrostMonths months, int cureDays) {
    /** Kept from freezing, a part load, exposed afterwards: 6 days. ACI 306R, length of the protection period for such service; from memory. */
    public static final int USUAL_CURE_DAYS = 6;

    /** Cold weather: air has fallen to, or is expected to fall below, 40 F while concrete is young. Source: ACI 306R-16, definition of cold weather, as quoted by ACI. */
    public static final int COLD_AIR_F = 40;

    /** Least warmth of concrete when it is poured in pieces thinner than 12 in., as the ring round a post is. ACI 306R, table of concrete temperatures; from memory. */
    public static final int POURED_F = 55;

    /** What stains for fences ask for at the least, air and wood; the can's own goes before it. Common practice, no source. */
    public static final int STAIN_F = 50;

    public static ColdWeather none() {
        return new ColdWeather(FrostMonths.UNSAID, USUAL_CURE_DAYS);
    }

    /**
     * Days that concrete waits.
     *
     * @param usual in warm weather
     */
    public int cure(LocalDate poured, int usual) {
        return isCold(poured, usual) ? Math.max(usual, cureDays) : usual;
    }

    /** Whether frost may come while the concrete is young. */
    public boolean isCold(LocalDate poured, int usual) {
        return months.holds(poured) || months.holds(poured.plusDays(usual));
    }

    String pouring(int days) {
        return "Frost may come: concrete goes in at " + POURED_F
                + " F or warmer, never on frozen ground or into ice, and is kept from freezing for " + days
                + " days once the air goes below " + COLD_AIR_F + " F (ACI 306R).";
    }

    String finishing() {
        return "Frost may come: no stain below " + STAIN_F
                + " F, nor when it falls below that in the night; the can's own limit goes first.";
    }
}
