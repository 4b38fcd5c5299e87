package plumbleaf.documents.view;

import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Volume;

/**
 * A post with what it is made of and stands in.
 *
 * @param depth of its hole from grade; zero where nothing is dug
 * @param length of the whole post, as cut
 * @param section as the trade says it
 * @param concrete in its hole, net of the post
 * @param governedBy why the hole is as deep as it is
 */
public record PostDetail(
        Post post, Length hole, Length depth, Length length, String section, Volume concrete, String governedBy) {
    public boolean isDug() {
        return !hole.isZero() && !depth.isZero();
    }
}
