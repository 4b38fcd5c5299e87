package plumbleaf.engine.job;

import java.time.LocalDate;
import plumbleaf.engine.money.Money;

/** A signed change after acceptance. */
public record Change(String id, LocalDate date, String what, Money price, boolean accepted) {}
