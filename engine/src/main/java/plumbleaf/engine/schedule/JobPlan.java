package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.List;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LocateTicket;

/**
 * A job that wants its days.
 *
 * @param job what it is called
 * @param schedule its work in order
 * @param notBefore earliest day of its first work; digging has to wait for the ticket as well
 * @param digFrom first day anyone may dig; the same as {@code notBefore} where there is no ticket
 */
public record JobPlan(String job, Schedule schedule, LocalDate notBefore, LocalDate digFrom) {
    /** Work of a job from a day on; its first ticket says when it may dig. */
    public static JobPlan of(Job job, Schedule schedule, LocalDate notBefore) {
        List<LocateTicket> tickets = job.existing().tickets();
        LocalDate dig = tickets.isEmpty() ? notBefore : tickets.get(0).digFrom();
        return new JobPlan(job.title(), schedule, notBefore, dig.isBefore(notBefore) ? notBefore : dig);
    }
}
