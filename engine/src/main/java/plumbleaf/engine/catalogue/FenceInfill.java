package plumbleaf.engine.catalogue;

import java.util.function.Function;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;

/** What fills the bays of a fence, and in the same words what may fill a gate's leaf. */
public sealed interface FenceInfill {
    <T> T match(
            Function<Upright, T> upright,
            Function<BothSides, T> bothSides,
            Function<Lying, T> lying,
            Function<Panel, T> panel,
            Function<Fabric, T> fabric,
            Function<Mesh, T> mesh);

    /**
     * Upright boards on one face of the rails: side by side, spaced, or board on board where their spacing laps.
     *
     * @param fasteners at a crossing of board and rail
     */
    record Upright(Board board, Spacing spacing, BoardTop top, int fasteners) implements FenceInfill {
        @Override
        public <T> T match(
                Function<Upright, T> upright,
                Function<BothSides, T> bothSides,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return upright.apply(this);
        }
    }

    /** Upright boards by turns on the two faces of the rails: a shadowbox. Their spacing laps as one looks square at them. */
    record BothSides(Board board, Spacing spacing, BoardTop top, int fasteners) implements FenceInfill {
        @Override
        public <T> T match(
                Function<Upright, T> upright,
                Function<BothSides, T> bothSides,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return bothSides.apply(this);
        }
    }

    /**
     * Boards that lie along the fence, one over the other, from post to post.
     *
     * @param spacing up the fence
     * @param fasteners at each end of a board
     */
    record Lying(Board board, Spacing spacing, int fasteners) implements FenceInfill {
        @Override
        public <T> T match(
                Function<Upright, T> upright,
                Function<BothSides, T> bothSides,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return lying.apply(this);
        }
    }

    /**
     * A panel of metal pickets through rails, made in one length.
     *
     * @param length of a whole panel, end of rail to end of rail
     * @param picket section of a picket
     * @param gap clear between pickets as made
     * @param rack most it may be racked: its rise over its length
     * @param swivel most that its brackets turn from square, up and down
     */
    record Panel(Length length, String picket, Length gap, Slope rack, Angle swivel) implements FenceInfill {
        @Override
        public <T> T match(
                Function<Upright, T> upright,
                Function<BothSides, T> bothSides,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return panel.apply(this);
        }
    }

    /**
     * Woven chain-link fabric.
     *
     * @param wire diameter of its wire, coating apart
     * @param mesh clear between parallel wires
     * @param roll length of a roll
     * @param slats share of the mesh that slats or a screen close; zero for none
     * @param barbed strands of barbed wire on arms over the top; zero for none
     */
    record Fabric(Length wire, Length mesh, Length roll, double slats, int barbed) implements FenceInfill {
        public Fabric {
            if (!(slats >= 0 && slats <= 1)) throw new IllegalArgumentException("Slats close from 0 to all of a mesh");
        }

        @Override
        public <T> T match(
                Function<Upright, T> upright,
                Function<BothSides, T> bothSides,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return fabric.apply(this);
        }
    }

    /**
     * Flat sheets of welded wire between pipe rails.
     *
     * @param across from wire to wire along the fence
     * @param upright from wire to wire up it
     * @param sheet length of a sheet
     */
    record Mesh(Length wire, Length across, Length upright, Length sheet) implements FenceInfill {
        @Override
        public <T> T match(
                Function<Upright, T> uprightBoards,
                Function<BothSides, T> bothSides,
                Function<Lying, T> lying,
                Function<Panel, T> panel,
                Function<Fabric, T> fabric,
                Function<Mesh, T> mesh) {
            return mesh.apply(this);
        }
    }
}
