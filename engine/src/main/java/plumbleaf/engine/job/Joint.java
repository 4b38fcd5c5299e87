package plumbleaf.engine.job;

/** How frame members meet at the corners. */
public enum Joint {
    /** Both ends cut at half the corner. */
    MITERED("mitered"),
    /** Stiles run through, rails butt between them. */
    BUTTED("butted"),
    /** Bottom and top rail run through, the stiles butt between them; rails in between butt against the stiles. */
    BUTTED_RAILS("butted-rails-through"),
    /** The end is cut to the round of the other tube. */
    COPED("coped"),
    /** Stiles run through, rails are bolted to them in adjustable corner brackets; nothing is welded there. */
    BRACKETED("bracketed");

    private final String key;

    Joint(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    /** Whether bottom and top rail go from edge to edge of the leaf, square at their ends. */
    public boolean railsRunThrough() {
        return this == BUTTED_RAILS;
    }
}
