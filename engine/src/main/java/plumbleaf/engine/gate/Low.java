package plumbleaf.engine.gate;

/** A clearance, and where: private numbers of the sweep. */
record Low(double clearIn, double rIn, double angleRad) {
    static final Low NONE = new Low(Double.POSITIVE_INFINITY, 0, 0);

    Low orLess(Low other) {
        return other.clearIn < clearIn ? other : this;
    }
}
