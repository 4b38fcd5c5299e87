package plumbleaf.engine.gate;

import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Bracket;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.section.Section;

/** How a leaf's frame is made, as the frame model and the drawings need to know it. */
public record LeafMake(Section tube, Bracing bracing, Joint joint, Bracket bracket) {
    /** Whether its corners are bolted in brackets that turn under load. */
    public boolean isBolted() {
        return joint == Joint.BRACKETED;
    }
}
