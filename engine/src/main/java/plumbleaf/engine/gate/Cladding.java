package plumbleaf.engine.gate;

import java.util.function.Function;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.MeshEdge;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/** What fills the leaf. */
public sealed interface Cladding {
    <T> T match(
            Function<Open, T> open,
            Function<Wood, T> wood,
            Function<Pickets, T> pickets,
            Function<Mesh, T> mesh,
            Function<Sheet, T> sheet);

    /** How high the cap on it lies over the top of its boards. */
    default Length capThickness() {
        return match(
                open -> Length.ZERO,
                wood -> wood.trim().capThickness(),
                pickets -> Length.ZERO,
                mesh -> Length.ZERO,
                sheet -> Length.ZERO);
    }

    /** Nothing: the bare frame. */
    record Open() implements Cladding {
        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Wood, T> wood,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return open.apply(this);
        }
    }

    /**
     * Plumb wood pickets on nailers that are bolted to the rails.
     *
     * @param face the side of the frame that the pickets are on; {@code both} counts as outside
     * @param trim what finishes them
     */
    record Wood(Boarding style, WoodSpecies pickets, WoodSpecies nailers, FinishedFace face, Trimming trim)
            implements Cladding {
        /** Without trim. */
        public Wood(Boarding style, WoodSpecies pickets, WoodSpecies nailers, FinishedFace face) {
            this(style, pickets, nailers, face, Trimming.NONE);
        }

        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Wood, T> wood,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return wood.apply(this);
        }
    }

    /**
     * Plumb steel pickets in the plane of the frame.
     *
     * @param section of a picket
     * @param gap the most clear space between two, and beside the stiles
     * @param punched whether they pass through punched rails, else they are cut in between and welded
     */
    record Pickets(Section section, Length gap, boolean punched) implements Cladding {
        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Wood, T> wood,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return pickets.apply(this);
        }
    }

    /**
     * Wire mesh in each opening of the frame.
     *
     * @param pitch from wire to wire along the leaf
     * @param upright from wire to wire up it
     */
    record Mesh(boolean woven, Length wire, Length pitch, Length upright, MeshEdge edge) implements Cladding {
        /** With square meshes. */
        public Mesh(boolean woven, Length wire, Length pitch, MeshEdge edge) {
            this(woven, wire, pitch, pitch, edge);
        }

        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Wood, T> wood,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return mesh.apply(this);
        }

        /** Share of its own face that stops the wind: {@code 1 - (1 - d / p)(1 - d / q)}. */
        public double solidShare() {
            return 1 - (1 - wire.inches() / pitch.inches()) * (1 - wire.inches() / upright.inches());
        }

        /** Weight of a square inch: a wire a pitch each way, at its full length; a woven wire's waves add {@code (pi d / 2p)2} to it. */
        double poundsPerIn2(double steelLbPerIn3) {
            double d = wire.inches();
            double p = pitch.inches();
            double wave = woven ? Math.PI * d / (2 * p) * (Math.PI * d / (2 * p)) : 0;
            double wires = 1 / p + 1 / upright.inches();
            return wires * Math.PI / 4 * d * d * (1 + wave) * steelLbPerIn3;
        }
    }

    /** Steel sheet in each opening of the frame. */
    record Sheet(Length thickness, MeshEdge edge) implements Cladding {
        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Wood, T> wood,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return sheet.apply(this);
        }
    }
}
