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

    /** A hole filled with concrete round the post. Its sizes are chosen or pinned with the builds. */
    record NewFooting() implements Support {
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

    /** A post driven into the ground without concrete. */
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
    record SlabPlate(Length slabThickness, Length edgeDistance) implements Support {
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
    record CoreSocket(Length depth, Length edgeDistance) implements Support {
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

    /** Anchors into a wall; what it is made of decides whether a hinge may hang there. */
    record WallAnchor(WallKind of) implements Support {
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

    /** A post that stands already, and what a pull on it showed. */
    record Existing(PostFeel feel, List<PullTest> tests) implements Support {
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
