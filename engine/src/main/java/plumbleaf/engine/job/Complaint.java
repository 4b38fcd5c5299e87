package plumbleaf.engine.job;

import java.time.LocalDate;
import plumbleaf.engine.money.Money;

/**
 * A call under warranty.
 *
 * @param hours of one person it took
 * @param cost of what was bought for it
 */
public record Complaint(LocalDate date, String what, ComplaintCause cause, double hours, Money cost) {}
