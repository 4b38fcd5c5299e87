package plumbleaf.web.room;

/**
 * What someone typed that could not be kept: it is shown again in its field with the reason beside it.
 *
 * @param path    of the field; empty when nothing was typed
 * @param problem why it was refused, with the cure
 */
record Typed(String path, String value, String problem) {
    static final Typed NOTHING = new Typed("", "", "");
}
