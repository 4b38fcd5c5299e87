package plumbleaf.engine.design;

import org.jspecify.annotations.Nullable;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Bracket;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.section.Section;

/**
 * What a gate's leaves are made of. Two are one where their ids are: a search asks that a hundred thousand times.
 *
 * @param id its parts in a fixed order
 */
record LeafPick(String id, Section frame, Bracing bracing, Joint joint, Bracket bracket) {
    static LeafPick of(Section frame, Bracing bracing, Joint joint, Bracket bracket) {
        return new LeafPick(frame.id() + " " + bracing.mark() + " " + joint.key(), frame, bracing, joint, bracket);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LeafPick pick && pick.id.equals(id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
