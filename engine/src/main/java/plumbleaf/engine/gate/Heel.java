package plumbleaf.engine.gate;

import plumbleaf.engine.catalogue.PinPlace;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.section.PostStock;

/** Whether the hinge edge of a leaf clears its own post as it opens. */
final class Heel {
    private static final int STEPS = 720;

    private Heel() {}

    /**
     * The open angle at which the leaf meets its hinge post, or the wanted angle where it does not. In plan, from the pin, the leaf is the strip from r0 outwards
     * behind its leading face f - e; the post's face lies p back and its middle e away from the swing side. A flat post of half size s is met by the leaf's
     * corner where {@code r0 cos q - (f - e) sin q = -p}, while that point is still on the post's face; past its edge the leaf's leading face meets the post's
     * corner. A round post of radius R is met where the distance from its centre to the strip is R. Opened by half a turn the leaf lies along the post:
     * {@code 2 e - f >= s} clears it. Halving finds the first contact; the distances fall steadily up to it. Source: plane geometry. Check: HeelTest.
     *
     * @param hingeEdgeIn r0
     * @param leadingFaceIn f, the face on the swing side, off the leaf's middle plane
     * @param pin its offset p from the post's face, and e off the leaf's plane to the swing side
     */
    static Angle contact(PostStock post, double hingeEdgeIn, double leadingFaceIn, PinPlace pin, Angle wanted) {
        double full = wanted.radians();
        double before = 0;
        for (int i = 1; i <= STEPS; i++) {
            double q = full * i / STEPS;
            if (clear(post, hingeEdgeIn, leadingFaceIn, pin, q)) {
                before = q;
                continue;
            }
            double low = before;
            double high = q;
            for (int turn = 0; turn < 50; turn++) {
                double middle = (low + high) / 2;
                if (clear(post, hingeEdgeIn, leadingFaceIn, pin, middle)) low = middle;
                else high = middle;
            }
            return Angle.radians(low);
        }
        return wanted;
    }

    private static boolean clear(PostStock post, double r0, double leadingFace, PinPlace pin, double q) {
        double cos = StrictMath.cos(q);
        double sin = StrictMath.sin(q);
        double half = post.depth().inches() / 2;
        double p = pin.offset().inches();
        double e = pin.swingSide().inches();
        double face = leadingFace - e;
        if (post.isRound()) {
            double away = p + half;
            double beyondEdge = Math.max(0, r0 + away * cos + e * sin);
            double beyondFace = Math.max(0, away * sin - e * cos - face);
            return Math.sqrt(beyondEdge * beyondEdge + beyondFace * beyondFace) >= half;
        }
        double cornerX = r0 * cos - face * sin;
        double cornerY = r0 * sin + face * cos + e;
        boolean cornerInPost = cornerX < -p && cornerX > -p - 2 * half && Math.abs(cornerY) < half;
        double swingSideCorner = half - e;
        double postR = -p * cos + swingSideCorner * sin;
        double postE = p * sin + swingSideCorner * cos;
        boolean postInLeaf = postR > r0 && postE < face;
        return !cornerInPost && !postInLeaf;
    }
}
