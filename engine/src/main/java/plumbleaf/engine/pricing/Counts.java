package plumbleaf.engine.pricing;

/**
 * How often each kind of charge falls due.
 *
 * @param days on site, whole or half
 * @param holes dug
 * @param tons hauled off
 * @param spoilYards loose spoil, swell included
 */
public record Counts(double days, int trips, int holes, double tons, double spoilYards) {
    double of(ChargePer per) {
        return switch (per) {
            case JOB -> 1;
            case DAY -> days;
            case TRIP -> trips;
            case HOLE -> holes;
            case TON -> tons;
            case YARD -> spoilYards;
            case ALLOWANCE -> 0;
        };
    }
}
