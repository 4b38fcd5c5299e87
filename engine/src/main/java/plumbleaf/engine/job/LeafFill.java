package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;

/** What is asked to fill a leaf's frame. */
public sealed interface LeafFill {
    <T> T match(
            Function<AsFence, T> asFence,
            Function<Bare, T> bare,
            Function<Style, T> style,
            Function<Pickets, T> pickets,
            Function<Mesh, T> mesh,
            Function<Sheet, T> sheet);

    /** As files hold it, without what belongs to it. */
    default String key() {
        return match(
                asFence -> "as-fence",
                bare -> "none",
                style -> "style",
                pickets -> "metal-pickets",
                mesh -> "mesh",
                sheet -> "sheet");
    }

    /** As the fence it stands in. */
    record AsFence() implements LeafFill {
        @Override
        public <T> T match(
                Function<AsFence, T> asFence,
                Function<Bare, T> bare,
                Function<Style, T> style,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return asFence.apply(this);
        }
    }

    /** Nothing. */
    record Bare() implements LeafFill {
        @Override
        public <T> T match(
                Function<AsFence, T> asFence,
                Function<Bare, T> bare,
                Function<Style, T> style,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return bare.apply(this);
        }
    }

    /** A style of the catalogue other than the fence's. */
    record Style(String id) implements LeafFill {
        @Override
        public <T> T match(
                Function<AsFence, T> asFence,
                Function<Bare, T> bare,
                Function<Style, T> style,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return style.apply(this);
        }
    }

    /**
     * Plumb steel pickets.
     *
     * @param section of a picket
     * @param gap the most clear space between two
     * @param punched whether they pass through punched rails, else they are welded between rails
     */
    record Pickets(String section, Length gap, boolean punched) implements LeafFill {
        @Override
        public <T> T match(
                Function<AsFence, T> asFence,
                Function<Bare, T> bare,
                Function<Style, T> style,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return pickets.apply(this);
        }
    }

    /**
     * Wire mesh in the frame.
     *
     * @param woven woven, else welded at the crossings
     * @param wire diameter
     * @param pitch from wire to wire, both ways
     * @param edge how its edge is held
     */
    record Mesh(boolean woven, Length wire, Length pitch, MeshEdge edge) implements LeafFill {
        @Override
        public <T> T match(
                Function<AsFence, T> asFence,
                Function<Bare, T> bare,
                Function<Style, T> style,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return mesh.apply(this);
        }
    }

    /** Steel sheet in the frame. */
    record Sheet(Length thickness, MeshEdge edge) implements LeafFill {
        @Override
        public <T> T match(
                Function<AsFence, T> asFence,
                Function<Bare, T> bare,
                Function<Style, T> style,
                Function<Pickets, T> pickets,
                Function<Mesh, T> mesh,
                Function<Sheet, T> sheet) {
            return sheet.apply(this);
        }
    }
}
