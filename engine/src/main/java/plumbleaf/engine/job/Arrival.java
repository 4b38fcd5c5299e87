package plumbleaf.engine.job;

/**
 * What was said on site of the day the crew comes, in words; empty where nobody said. Nothing is worked out from it: the crew reads it.
 *
 * @param parking where the truck may stand
 * @param dogs    dogs, children, whoever must be kept in
 * @param services power and water
 */
public record Arrival(String parking, String dogs, String services) {
    public static final Arrival UNSAID = new Arrival("", "", "");
}
