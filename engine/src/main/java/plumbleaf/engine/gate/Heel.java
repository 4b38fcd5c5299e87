package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.section.Section;

/** Whether the hinge edge of a leaf clears its own post as it opens, the pin being in the middle of the leaf. */
final class Heel {
    private Heel() {}

    /**
     * The open angle at which the leaf meets its hinge post, or the wanted angle where it does not. In plan the leaf is the strip from r0 outwards between its
     * faces, the post lies p beyond the pin. A flat post of half size s is met by the leaf's corner (r0, f) where {@code r0 cos q - f sin q = -p}, while
     * that point is still on the post's face ({@code r0 sin q + f cos q <= s}); past its edge the leaf's leading face meets the post's corner. A round post
     * of radius R is met where the distance from its centre to the corner is R: {@code (r0 + (p + R) cos q)2 + ((p + R) sin q - f)2 = R2}. Halving finds
     * either; the distances fall steadily up to the first contact. Source: plane geometry.
     *
     * @param hingeEdgeIn r0
     * @param leadingFaceIn f, the face on the swing side, off the leaf's plane
     * @param pinOffsetIn p, from the post's face to the pin
     */
    static Angle contact(Section post, double hingeEdgeIn, double leadingFaceIn, double pinOffsetIn, Angle wanted) {
        int steps = 720;
        double full = wanted.radians();
        double before = 0;
        for (int i = 1; i <= steps; i++) {
            double q = full * i / steps;
            if (clear(post, hingeEdgeIn, leadingFaceIn, pinOffsetIn, q)) {
                before = q;
                continue;
            }
            double low = before;
            double high = q;
            for (int turn = 0; turn < 50; turn++) {
                double middle = (low + high) / 2;
                if (clear(post, hingeEdgeIn, leadingFaceIn, pinOffsetIn, middle)) low = middle;
                else high = middle;
            }
            return Angle.radians(low);
        }
        return wanted;
    }

    private static boolean clear(Section post, double r0, double face, double pinOffset, double q) {
        double cos = StrictMath.cos(q);
        double sin = StrictMath.sin(q);
        double half = post.depth().inches() / 2;
        if (post.isRound()) {
            double away = pinOffset + half;
            double beyondEdge = Math.max(0, r0 + away * cos);
            double beyondFace = Math.max(0, away * sin - face);
            return Math.sqrt(beyondEdge * beyondEdge + beyondFace * beyondFace) >= half;
        }
        double cornerX = r0 * cos - face * sin;
        double cornerY = r0 * sin + face * cos;
        boolean cornerInPost = cornerX < -pinOffset && cornerX > -pinOffset - 2 * half && Math.abs(cornerY) < half;
        double postR = -pinOffset * cos + half * sin;
        double postE = pinOffset * sin + half * cos;
        boolean postInLeaf = postR > r0 && postE < face;
        return !cornerInPost && !postInLeaf;
    }
}
