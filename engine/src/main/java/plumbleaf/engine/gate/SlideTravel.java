package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.ground.SurfacePiece;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The ground under the whole way of a slide leaf, from the nose of the closed leaf to the tail of the open one, and what is clear over it. The leaf travels level, so
 * what clears at a place clears there wherever the leaf stands.
 *
 * @param ground in straight pieces from the open tail's end to the nose, heights from grade at the opening's face
 * @param least clearance anywhere on the way, unloaded, + clear and - struck
 * @param at r of that place
 * @param closedLeast least gap under the closed leaf within the opening
 * @param closedLargest largest gap there
 * @param running least clearance less what the leaf drops and the ground rises later
 * @param laterRise that rise
 */
public record SlideTravel(
        List<Stretch> ground,
        Offset least,
        Offset at,
        Offset closedLeast,
        Offset closedLargest,
        Offset running,
        Length laterRise) {
    public SlideTravel {
        ground = List.copyOf(ground);
    }

    /** Straight ground between two places of the way. */
    public record Stretch(Offset from, Offset to, Offset start, Offset end, boolean extrapolated) {
        Offset heightAt(double rIn) {
            double share = (rIn - from.inches()) / (to.inches() - from.inches());
            return Offset.inches(start.inches() + share * (end.inches() - start.inches()));
        }
    }

    /**
     * Over straight pieces the least and the largest gap lie at their ends or at the ends of the opening, so the answer is exact.
     *
     * @param pieces walked from the open tail's end to the nose
     * @param zero elevation of grade at the opening's face
     * @param bottom height of the leaf's lowest edge over that
     * @param drop of the nose once it hangs, or of the tail
     */
    static SlideTravel of(
            List<SurfacePiece> pieces, SlideShape shape, Offset zero, Offset bottom, Length drop, Length laterRise) {
        List<Stretch> ground = new ArrayList<>();
        double begin = shape.openEnd().inches();
        for (SurfacePiece piece : pieces)
            ground.add(new Stretch(
                    Offset.inches(begin + piece.from().inches()),
                    Offset.inches(begin + piece.to().inches()),
                    piece.start().minus(zero),
                    piece.end().minus(zero),
                    piece.extrapolated()));
        double least = Double.POSITIVE_INFINITY;
        double at = 0;
        double closedLeast = Double.POSITIVE_INFINITY;
        double closedLargest = Double.NEGATIVE_INFINITY;
        double clear = shape.opening().inches();
        for (Stretch stretch : ground) {
            double a = stretch.from().inches();
            double b = stretch.to().inches();
            for (double r : List.of(a, b)) {
                double over = bottom.inches() - stretch.heightAt(r).inches();
                if (over < least) {
                    least = over;
                    at = r;
                }
            }
            double low = Math.max(0, a);
            double high = Math.min(clear, b);
            if (!(high > low)) continue;
            for (double r : List.of(low, high)) {
                double gap = bottom.inches() - stretch.heightAt(r).inches();
                closedLeast = Math.min(closedLeast, gap);
                closedLargest = Math.max(closedLargest, gap);
            }
        }
        return new SlideTravel(
                ground,
                Offset.inches(least),
                Offset.inches(at),
                Offset.inches(closedLeast),
                Offset.inches(closedLargest),
                Offset.inches(least - drop.inches() - laterRise.inches()),
                laterRise);
    }

    /** Height of the ground at a place of the way. */
    public Offset groundAt(double rIn) {
        for (Stretch stretch : ground) if (rIn <= stretch.to().inches() + 1e-9) return stretch.heightAt(rIn);
        return ground.get(ground.size() - 1).end();
    }

    public boolean clears() {
        return running.inches() >= 0;
    }

    /** Soil to shave along the way, so wide, that a leaf with this bottom runs clear by a margin: cubic inches. */
    double tooHighIn3(double bottomIn, double marginIn, double takenIn, double widthIn) {
        double area = 0;
        for (Stretch stretch : ground) {
            double length = stretch.to().inches() - stretch.from().inches();
            int steps = Math.max(1, (int) Math.ceil(length));
            for (int i = 0; i < steps; i++) {
                double r = stretch.from().inches() + (i + 0.5) * length / steps;
                double over = stretch.heightAt(r).inches() + marginIn + takenIn - bottomIn;
                if (over > 0) area += over * length / steps;
            }
        }
        return area * widthIn;
    }
}
