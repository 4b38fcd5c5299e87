package plumbleaf.engine.schedule;

import plumbleaf.engine.quantity.DecimalText;

/**
 * How a crew works through a job.
 *
 * @param cureDays between pouring and hanging anything on a post: 3 days above 50 F, common practice, no source
 */
public record Pace(int people, double hoursPerDay, int cureDays) {
    public Pace {
        if (people < 1 || !(hoursPerDay > 0) || cureDays < 0)
            throw new IllegalArgumentException("A crew works some hours, not " + DecimalText.shortest(hoursPerDay)
                    + ", and waits days, not fewer");
    }

    /** Crew-days, whole or half. */
    double days(double personHours) {
        return Math.ceil(personHours / (people * hoursPerDay) * 2 - 1e-9) / 2;
    }
}
