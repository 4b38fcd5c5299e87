package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Length;

/**
 * One kind of weld at a joint.
 *
 * @param length of all its runs together
 * @param runs how many beads it is laid in
 * @param flush whether it is ground flush
 */
public record Weld(String joint, WeldKind kind, Length length, String where, int runs, boolean flush) {
    public Weld {
        if (runs < 1) throw new IllegalArgumentException("A weld has one run at least, had " + runs);
    }
}
