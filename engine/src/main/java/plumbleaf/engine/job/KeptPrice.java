package plumbleaf.engine.job;

import java.math.BigDecimal;

/**
 * A price as it was when the job was quoted; it holds for this job until someone asks for the new ones.
 *
 * @param of which one, as the price book names it: {@code material/TUBE-2x2x0.083/Cobb Valley Fence Supply/stick/24}
 * @param value dollars, or hours for one
 */
public record KeptPrice(String of, BigDecimal value) {}
