package plumbleaf.engine.labour;

import java.util.List;

/**
 * One task of the job.
 *
 * @param quantity in all, in what the rate is counted in
 * @param hours of one person
 * @param causes ids of what it is for
 */
public record TaskHours(LabourRate rate, double quantity, double hours, List<String> causes) {
    public TaskHours {
        causes = List.copyOf(causes);
    }

    public Phase phase() {
        return rate.phase();
    }
}
