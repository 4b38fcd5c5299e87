package plumbleaf.engine.job;

import java.util.List;

/**
 * What happened to the job since it was designed.
 *
 * @param hours that tasks really took
 * @param used materials
 * @param changes signed after acceptance
 * @param complaints calls under warranty
 * @param moisture readings of a meter, before the finish
 */
public record JobLog(
        List<Actual> hours,
        List<UsedMaterial> used,
        List<Change> changes,
        List<Complaint> complaints,
        List<MoistureReading> moisture) {
    public JobLog {
        hours = List.copyOf(hours);
        used = List.copyOf(used);
        changes = List.copyOf(changes);
        complaints = List.copyOf(complaints);
        moisture = List.copyOf(moisture);
    }

    public static JobLog empty() {
        return new JobLog(List.of(), List.of(), List.of(), List.of(), List.of());
    }
}
