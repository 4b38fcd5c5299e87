package plumbleaf.engine.frame;

/**
 * Loads, reactions and ground springs added up about the origin, which must be nothing, and what size of number went into the sum.
 *
 * @param residual what is left
 * @param forceScaleLb largest single force that went in
 * @param momentScaleLbIn largest single moment that went in
 */
public record Balance(Wrench residual, double forceScaleLb, double momentScaleLbIn) {
    /** The larger of the two residuals, each against its scale. */
    public double relative() {
        return Math.max(
                residual.forceLb().length() / Math.max(forceScaleLb, 1),
                residual.momentLbIn().length() / Math.max(momentScaleLbIn, 1));
    }
}
