package plumbleaf.engine.job;

import java.time.LocalDate;
import plumbleaf.engine.money.Money;

/**
 * A change after acceptance.
 *
 * @param price what it adds to the price with tax; below zero for a credit
 * @param days crew-days it adds
 * @param accepted whether the customer has signed it
 */
public record Change(String id, LocalDate date, String what, Money price, double days, boolean accepted) {}
