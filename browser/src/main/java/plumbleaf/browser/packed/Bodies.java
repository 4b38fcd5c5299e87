package plumbleaf.browser.packed;

/** The functions' bodies while they are told one after the other: where each stands, and the locals that stand before its code. Packing they are there; unpacking they are made. */
public interface Bodies {
    /** How many functions there are, those imported too; any number while it is unpacked. */
    int functions();

    /** The same of globals. */
    int globals();

    /** Their code stands here. */
    void stand(ModuleBytes code);

    /** How many functions there are indeed. */
    void are(int functions);

    /** The type of a function; any number while it is unpacked. */
    int typeOf(int function);

    /** Whether it only asks if an object is there, in the words of {@link PackedChecks}; any answer while it is unpacked. */
    boolean checks(int function);

    /** A reference to it is told. */
    void refers(int function);

    /**
     * The code that comes next is this function's.
     *
     * @return the kinds of its locals, those given to it first; while it is unpacked only these
     */
    int[] begin(int function, int[] given);

    /** Its code is over. */
    void end(int function, int[] locals, int given);
}
