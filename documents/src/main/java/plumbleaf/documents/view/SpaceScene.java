package plumbleaf.documents.view;

import java.util.List;
import plumbleaf.documents.drawing.Point;

/**
 * A gate as solid bodies, for a view that can be turned. All lengths are inches. What stands is placed with x to the right for someone
 * outside who faces the gate, y away from them, z up from grade at the first leaf's pin.
 *
 * @param metric whether sizes are said in millimeters
 * @param standing posts and footings: outlines on the plan, raised from one height to another
 */
public record SpaceScene(String name, boolean metric, List<Block> standing, List<TurningLeaf> leaves) {
    public SpaceScene {
        standing = List.copyOf(standing);
        leaves = List.copyOf(leaves);
    }

    /** What a body is made of, to be drawn as such. */
    public enum Stuff {
        STEEL,
        WOOD,
        CONCRETE
    }

    /**
     * An outline made solid square to its plane.
     *
     * @param part that it is: {@code G1a.m4}
     * @param outline in its plane: on the plan for what stands, r and z for what is part of a leaf
     * @param from  where the body begins: a height, or n across the leaf
     * @param to    where it ends
     */
    public record Block(String part, Stuff stuff, List<Point> outline, double from, double to) {
        public Block {
            outline = List.copyOf(outline);
            if (!(to > from)) throw new IllegalArgumentException("The body of " + part + " has no thickness");
        }
    }

    /**
     * A leaf, and the ground it turns over.
     *
     * @param pinX, pinY, pinZ where its pin axis stands, and grade there
     * @param along  1 where r grows to the right, -1 where to the left
     * @param side   1 where it swings away from who stands outside, -1 towards them
     * @param off    how far its middle plane lies off the pin axis, away from the swing side
     * @param rise   per degree of opening
     * @param opens  degrees it is asked to open
     * @param stops  degrees after which something is touched, at most 180
     * @param turns  degrees of the ground's columns
     * @param reaches radii of the ground's rows, from the pin axis
     * @param ground height of the ground under the leaf's middle plane by column, then by row
     * @param room   least room between leaf and ground there
     */
    public record TurningLeaf(
            String id,
            double pinX,
            double pinY,
            double pinZ,
            int along,
            int side,
            double off,
            double rise,
            double opens,
            double stops,
            List<Block> blocks,
            List<Double> turns,
            List<Double> reaches,
            List<List<Double>> ground,
            List<List<Double>> room) {
        public TurningLeaf {
            blocks = List.copyOf(blocks);
            turns = List.copyOf(turns);
            reaches = List.copyOf(reaches);
            ground = ground.stream().map(List::copyOf).toList();
            room = room.stream().map(List::copyOf).toList();
        }
    }
}
