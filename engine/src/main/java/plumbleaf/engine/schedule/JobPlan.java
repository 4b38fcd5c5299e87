package plumbleaf.engine.schedule;

import java.time.LocalDate;

/**
 * A job that wants its days.
 *
 * @param job what it is called
 * @param schedule its work in order
 * @param notBefore earliest day of its first work; digging has to wait for the ticket as well
 * @param digFrom first day anyone may dig; the same as {@code notBefore} where there is no ticket
 */
public record JobPlan(String job, Schedule schedule, LocalDate notBefore, LocalDate digFrom) {}
