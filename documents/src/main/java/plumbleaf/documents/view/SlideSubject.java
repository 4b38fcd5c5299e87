package plumbleaf.documents.view;

import java.util.Optional;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.DisplayUnits;

/**
 * A slide gate as its drawings need it.
 *
 * @param front the post of the front rollers
 * @param receiver the post its nose comes to
 * @param rear the post of the rear rollers, where it found a place
 */
public record SlideSubject(
        SlidePlan plan, GateParts parts, Post front, Post receiver, Optional<Post> rear, DisplayUnits display) {
    /** Drawn from outside, x to the right: r runs that way where it slides to the left. */
    double x(double rIn) {
        return plan.kind().opensTo() == Side.LEFT ? rIn : -rIn;
    }

    /** Of the receiver's mouth across the leaf, what the post itself leaves on its side. */
    public double mouthToPostIn() {
        return plan.mouthToPost(receiver.width()).inches();
    }

    Outside outside() {
        return Outside.of(plan.kind().opensTo());
    }

    /** Height of grade at a place of the way, from that at the opening's face. */
    double groundZ(double rIn) {
        return plan.travel().groundAt(rIn).inches();
    }

    double gradeZ(Post post) {
        return post.grade().minus(plan.zero()).inches();
    }

    double topZ(Post post) {
        return post.top().minus(plan.zero()).inches();
    }

    /** r of a post's centre. */
    double at(Post post) {
        if (post.equals(front)) return plan.shape().frontRollers().inches();
        if (post.equals(receiver))
            return plan.shape().opening().inches() + post.width().inches() / 2;
        return plan.shape().rearRollers().inches();
    }

    String length(double inches) {
        return display.length(inches);
    }

    String gate() {
        return plan.leaf().id().substring(0, plan.leaf().id().length() - 1);
    }
}
