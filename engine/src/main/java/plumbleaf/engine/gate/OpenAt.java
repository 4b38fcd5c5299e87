package plumbleaf.engine.gate;

/** An open angle with its cosine and sine, for whoever looks at many radii of one angle. */
record OpenAt(double rad, double cos, double sin) {
    static OpenAt angle(double rad) {
        return new OpenAt(rad, StrictMath.cos(rad), StrictMath.sin(rad));
    }
}
