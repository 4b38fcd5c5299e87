package plumbleaf.engine.job;

import java.time.LocalDate;

/**
 * What was really used of something bought.
 *
 * @param units taken along, in units of sale
 * @param returned of these, what went back to the yard or the supplier
 */
public record UsedMaterial(Stated<LocalDate> date, String item, double units, double returned) {}
