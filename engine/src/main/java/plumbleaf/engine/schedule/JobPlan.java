package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.List;
import plumbleaf.engine.job.FrostMonths;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.job.OldFence;

/**
 * A job that wants its days.
 *
 * @param job what it is called
 * @param schedule its work in order, what is done left out
 * @param notBefore earliest day of its first work
 * @param tickets days on which anyone may dig; where there are none digging waits for nothing here
 * @param pullsConcrete whether taking the old fence down is digging too
 * @param frost months in which it may freeze there
 */
public record JobPlan(
        String job,
        Schedule schedule,
        LocalDate notBefore,
        List<LocateTicket> tickets,
        boolean pullsConcrete,
        FrostMonths frost) {
    public JobPlan {
        tickets = List.copyOf(tickets);
    }

    /** What is left to do of a job, from a day on, or from the one agreed where that is later. */
    public static JobPlan of(Job job, Quote quote, LocalDate notBefore) {
        LocalDate agreed = job.site().start().or(notBefore);
        return new JobPlan(
                job.title(),
                WorkLeft.of(job, quote, notBefore),
                agreed.isAfter(notBefore) ? agreed : notBefore,
                job.existing().tickets(),
                job.existing().fences().stream().anyMatch(OldFence::concrete),
                job.site().frost().months());
    }
}
