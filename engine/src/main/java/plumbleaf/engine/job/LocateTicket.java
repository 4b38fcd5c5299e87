package plumbleaf.engine.job;

import java.time.LocalDate;

/** The locate request: its number, the first day digging is legal, the last day it holds. */
public record LocateTicket(String number, LocalDate digFrom, LocalDate validThrough) {}
