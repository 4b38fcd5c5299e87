package plumbleaf.documents.view;

import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;

/**
 * A post with what it is made of and stands in.
 *
 * @param depth of its hole from grade; zero where nothing is dug
 * @param length of the whole post, as cut
 * @param section as the trade says it
 */
public record PostDetail(Post post, Length hole, Length depth, Length length, String section) {
    public boolean isDug() {
        return !hole.isZero() && !depth.isZero();
    }
}
