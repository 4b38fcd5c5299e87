package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;

/**
 * A screw for boards.
 *
 * @param id as sold: {@code picket-screw}
 * @param diameter nominal, of the shank
 * @param length under its head
 */
public record Screw(String id, String name, Length diameter, Length length, FastenerFinish finish) {
    /** Thread in the rail once the boards before it are passed. */
    public Length inRail(Length boards) {
        return Length.inches(Math.max(0, length.inches() - boards.inches()));
    }
}
