package plumbleaf.engine.takeoff;

/** A part of the job, and how much of a line it is the cause of. */
public record Cause(String part, double quantity) {
    /** What a part is a piece of: the bay of {@code B1.r2}, the leaf of {@code G1a.m3}; a post is whole. */
    public static String whole(String part) {
        int dot = part.indexOf('.');
        return dot > 0 ? part.substring(0, dot) : part;
    }
}
