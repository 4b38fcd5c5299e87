package plumbleaf.engine.job;

/**
 * How the wood of a run and its gates is stained, every face before it is put together.
 *
 * @param coats none, one or two
 */
public record Stain(int coats, Texture texture) {
    public static final Stain NONE = new Stain(0, Texture.ROUGH);

    /** What the surface is like: it settles how far a gallon goes. */
    public enum Texture {
        ROUGH("rough"),
        SMOOTH("smooth");

        private final String key;

        Texture(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    public Stain {
        if (coats < 0 || coats > 2) throw new IllegalArgumentException("No, one or two coats, not " + coats);
    }

    public boolean isNone() {
        return coats == 0;
    }
}
