package plumbleaf.engine.gate;

import java.util.List;

/**
 * Where members of a leaf's frame meet.
 *
 * @param at where their centrelines cross; for a brace in a corner, the crossing of the stile's and the rail's
 * @param members ids, the one that runs through first
 */
public record FrameJoint(String id, Place at, List<String> members) {
    public FrameJoint {
        members = List.copyOf(members);
    }
}
