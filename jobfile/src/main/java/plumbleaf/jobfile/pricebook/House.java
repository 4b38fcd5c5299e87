package plumbleaf.jobfile.pricebook;

import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.takeoff.Truck;

/** The one row of the house table. */
public record House(
        int people, UnitPrice hourly, double hoursPerDay, int cureDays, Money minimum, Money roundTo, Truck truck) {}
