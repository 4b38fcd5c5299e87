package plumbleaf.engine.gate;

/** Which remedies are looked for when a leaf drags. */
enum Cures {
    /** None, nor anything else that is said of a gate: its leaves alone, for what they weigh and cost. */
    UNSAID,
    /** None: in a search over builds, which judges thousands. */
    NONE,
    /** Those of one leaf of a pair. */
    OF_A_LEAF,
    /** Those of a gate with one leaf: the other hand, another place and a pair among them. */
    OF_A_SINGLE_LEAF;

    boolean wanted() {
        return this != NONE && this != UNSAID;
    }

    boolean said() {
        return this != UNSAID;
    }

    boolean ofASingleLeaf() {
        return this == OF_A_SINGLE_LEAF;
    }
}
