package plumbleaf.engine.pricing;

import plumbleaf.engine.money.UnitPrice;

/**
 * Who does it.
 *
 * @param people in the crew
 * @param hourly of one person, burden included (payroll tax, insurance, idle time)
 * @param hoursPerDay of work
 * @param cureDays waited between pouring and hanging
 */
public record Crew(int people, UnitPrice hourly, double hoursPerDay, int cureDays) {
    public Crew {
        if (people < 1 || !(hoursPerDay > 0 && hoursPerDay <= 24))
            throw new IllegalArgumentException("A crew has at least one person and a day of up to 24 hours");
    }

    /** Crew-days for so many hours of one person, whole or half. */
    public double days(double personHours) {
        return Math.ceil(personHours / (people * hoursPerDay) * 2 - 1e-9) / 2;
    }

    /** The same at another rate. */
    Crew at(UnitPrice other) {
        return new Crew(people, other, hoursPerDay, cureDays);
    }
}
