package plumbleaf.engine.support;

import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.quantity.Length;

/** What holds a post. */
public sealed interface Support {
    <T> T match(
            Function<NewFooting, T> newFooting,
            Function<Driven, T> driven,
            Function<SlabPlate, T> slabPlate,
            Function<CoreSocket, T> coreSocket,
            Function<WallAnchor, T> wallAnchor,
            Function<Existing, T> existing);

    /**
     * A hole filled with concrete round the post. Its sizes are chosen or pinned with the builds.
     *
     * @param bell how its foot is widened; none where it is straight
     * @param sleeve whether a smooth sleeve keeps frozen ground from gripping its shaft
     * @param slabAtGrade whether a slab that can take the push holds the post at grade; a walk that merely lies against it does not
     */
    record NewFooting(Bell bell, boolean sleeve, boolean slabAtGrade) implements Support {
        /** Straight sides in open ground. */
        public NewFooting() {
            this(Bell.NONE, false, false);
        }

        @Override
        public <T> T match(
                Function<NewFooting, T> newFooting,
                Function<Driven, T> driven,
                Function<SlabPlate, T> slabPlate,
                Function<CoreSocket, T> coreSocket,
                Function<WallAnchor, T> wallAnchor,
                Function<Existing, T> existing) {
            return newFooting.apply(this);
        }
    }

    /** A post driven into the ground without concrete. Its own width is all that soil holds. */
    record Driven(Length depth) implements Support {
        @Override
        public <T> T match(
                Function<NewFooting, T> newFooting,
                Function<Driven, T> driven,
                Function<SlabPlate, T> slabPlate,
                Function<CoreSocket, T> coreSocket,
                Function<WallAnchor, T> wallAnchor,
                Function<Existing, T> existing) {
            return driven.apply(this);
        }
    }

    /** A plate under the post, anchored to a slab. */
    record SlabPlate(Slab slab, BasePlate plate, Anchors anchors) implements Support {
        @Override
        public <T> T match(
                Function<NewFooting, T> newFooting,
                Function<Driven, T> driven,
                Function<SlabPlate, T> slabPlate,
                Function<CoreSocket, T> coreSocket,
                Function<WallAnchor, T> wallAnchor,
                Function<Existing, T> existing) {
            return slabPlate.apply(this);
        }
    }

    /** A post grouted into a hole cored in concrete. */
    record CoreSocket(Length depth, Slab slab) implements Support {
        /** As deep as one is cored where nobody says: through the slab, 8 in. at most. Common practice, no source. */
        public static Length usualDepth(Length slab) {
            return slab.compareTo(MOST_DEPTH) < 0 ? slab : MOST_DEPTH;
        }

        private static final Length MOST_DEPTH = Length.inches(8);

        /** Of grout all round the post. Common practice, no source. */
        public static final Length RING = Length.inches(0.75);

        @Override
        public <T> T match(
                Function<NewFooting, T> newFooting,
                Function<Driven, T> driven,
                Function<SlabPlate, T> slabPlate,
                Function<CoreSocket, T> coreSocket,
                Function<WallAnchor, T> wallAnchor,
                Function<Existing, T> existing) {
            return coreSocket.apply(this);
        }
    }

    /**
     * Anchors into a wall; what it is made of decides whether a hinge may hang there.
     *
     * @param perHinge anchors of one hinge, or of one post along the wall
     * @param edge from the anchors to the nearest edge of the wall; zero where nobody measured it
     */
    record WallAnchor(WallKind of, Anchors anchors, int perHinge, Length edge) implements Support {
        public WallAnchor {
            if (perHinge < 1) throw new IllegalArgumentException("Something must hold a hinge");
        }

        /** The usual anchors, edge not measured. */
        public static WallAnchor usual(WallKind of) {
            return new WallAnchor(of, Anchors.USUAL, 4, Length.ZERO);
        }

        @Override
        public <T> T match(
                Function<NewFooting, T> newFooting,
                Function<Driven, T> driven,
                Function<SlabPlate, T> slabPlate,
                Function<CoreSocket, T> coreSocket,
                Function<WallAnchor, T> wallAnchor,
                Function<Existing, T> existing) {
            return wallAnchor.apply(this);
        }
    }

    /**
     * A post that stands already, and what a pull on it showed.
     *
     * @param embedment how deep it stands; zero where nobody knows
     * @param plug width of its concrete; zero where nobody knows
     * @param girth round it by tape, which tells its size; zero where nobody measured it
     */
    record Existing(PostFeel feel, Length embedment, Length plug, Length girth, List<PullTest> tests)
            implements Support {
        public Existing {
            tests = List.copyOf(tests);
        }

        @Override
        public <T> T match(
                Function<NewFooting, T> newFooting,
                Function<Driven, T> driven,
                Function<SlabPlate, T> slabPlate,
                Function<CoreSocket, T> coreSocket,
                Function<WallAnchor, T> wallAnchor,
                Function<Existing, T> existing) {
            return existing.apply(this);
        }
    }
}
