package plumbleaf.engine.line;

import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** What fills a bay, laid out piece by piece. */
public sealed interface BayFill {
    <T> T match(
            Function<Open, T> open,
            Function<Pickets, T> pickets,
            Function<Lying, T> lying,
            Function<Panel, T> panel,
            Function<Fabric, T> fabric,
            Function<Mesh, T> mesh);

    /** The widest clear opening in it, at its driest; zero where nothing shows through. */
    default Length widestOpening() {
        return match(
                open -> Length.ZERO,
                pickets -> positive(pickets.row().gapDriest()),
                lying -> positive(lying.gapDriest()),
                panel -> panel.clear().compareTo(panel.end()) > 0 ? panel.clear() : panel.end(),
                Fabric::opening,
                Mesh::opening);
    }

    /** Whether its openings change with the season, as between boards. */
    default boolean dries() {
        return match(open -> false, pickets -> true, lying -> true, panel -> false, fabric -> false, mesh -> false);
    }

    private static Length positive(Offset gap) {
        return Length.inches(Math.max(0, gap.inches()));
    }

    /** Nothing: the style is not known. */
    record Open() implements BayFill {
        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Pickets, T> pickets,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return open.apply(this);
        }
    }

    /**
     * Upright boards.
     *
     * @param sight least angle from square at which one sees through when the boards are driest: 0 where gaps are open, 90 degrees where nothing shows
     */
    record Pickets(BayPickets row, Angle sight) implements BayFill {
        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Pickets, T> pickets,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return pickets.apply(this);
        }
    }

    /**
     * Boards from post to post, from the bottom up.
     *
     * @param gap between them as set
     * @param rip width of the highest board; the whole width where it is not ripped
     */
    record Lying(List<RailPiece> boards, Offset gap, Length rip, Offset gapDriest, Offset gapWettest)
            implements BayFill {
        public Lying {
            boards = List.copyOf(boards);
        }

        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Pickets, T> pickets,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return lying.apply(this);
        }
    }

    /**
     * One metal panel.
     *
     * @param length of its rails between the posts, along the grade
     * @param cut whether it is cut from a whole one
     * @param pickets upright in it
     * @param picket width of one
     * @param clear between its pickets in plan, which racking does not change and which is less than made where it slopes
     * @param end clear between the post and its first and last picket
     * @param swivel of its brackets from square
     */
    record Panel(Length length, boolean cut, int pickets, Length picket, Length clear, Length end, Angle swivel)
            implements BayFill {
        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Pickets, T> pickets,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return panel.apply(this);
        }
    }

    /**
     * Woven fabric, stretched past its posts.
     *
     * @param length along the grade
     * @param opening the widest square way through a mesh that nothing closes
     */
    record Fabric(Length length, Length height, Length opening) implements BayFill {
        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Pickets, T> pickets,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return fabric.apply(this);
        }
    }

    /**
     * Sheets of welded wire, cut to the bay.
     *
     * @param sheets length of each piece, along the grade
     * @param opening the larger way through a mesh
     */
    record Mesh(List<Length> sheets, Length height, Length opening) implements BayFill {
        public Mesh {
            sheets = List.copyOf(sheets);
        }

        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Pickets, T> pickets,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return mesh.apply(this);
        }
    }
}
