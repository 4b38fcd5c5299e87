package plumbleaf.engine.catalogue;

/**
 * How a finish stands up in a wood: a row of the corrosion table.
 *
 * @param wood id of a species; its treatment is the usual one for fences
 * @param verdict in one word: good, fair or bad
 * @param why in a sentence
 */
public record FastenerFit(String wood, FastenerFinish finish, String verdict, String why, String source) {}
