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
     */
    record Wood(Boarding style, WoodSpecies pickets, WoodSpecies nailers, FinishedFace face) implements Cladding {
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

    /** Wire mesh in each opening of the frame. */
    record Mesh(boolean woven, Length wire, Length pitch, MeshEdge edge) implements Cladding {
        @Override
        public <T> T match(
                Function<Open, T> open,
                Function<Wood, T> wood,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return mesh.apply(this);
        }

        /** Share of its own face that stops the wind: {@code 1 - (1 - d / p)2}. */
        public double solidShare() {
            double clear = 1 - wire.inches() / pitch.inches();
            return 1 - clear * clear;
        }

        /** Weight of a square inch: two wires a pitch, at their full length; a woven wire's waves add {@code (pi d / 2p)2} to it. */
        double poundsPerIn2(double steelLbPerIn3) {
            double d = wire.inches();
            double p = pitch.inches();
            double wave = woven ? Math.PI * d / (2 * p) * (Math.PI * d / (2 * p)) : 0;
            return 2 * Math.PI / 4 * d * d / p * (1 + wave) * steelLbPerIn3;
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
