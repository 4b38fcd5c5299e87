package plumbleaf.engine.gate;

/** Which remedies are looked for when a leaf drags. */
enum Cures {
    /** None: in a search over builds, which judges thousands. */
    NONE,
    /** Those of one leaf of a pair. */
    OF_A_LEAF,
    /** Those of a gate with one leaf: the other hand, another place and a pair among them. */
    OF_A_SINGLE_LEAF;

    boolean wanted() {
        return this != NONE;
    }

    boolean ofASingleLeaf() {
        return this == OF_A_SINGLE_LEAF;
    }
}
