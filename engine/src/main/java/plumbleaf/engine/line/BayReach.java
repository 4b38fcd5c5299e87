package plumbleaf.engine.line;

/** How far a bay may reach from the post where it begins. */
@FunctionalInterface
interface BayReach {
    /** The farthest station that a bay from this one may end at; it never falls as the station grows. */
    double fromIn(double stationIn);

    /** Whether a bay from one station may end at another: often quicker to tell than how far one may reach. */
    default boolean spans(double stationIn, double toIn) {
        return fromIn(stationIn) >= toIn;
    }
}
