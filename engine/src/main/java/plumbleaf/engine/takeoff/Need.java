package plumbleaf.engine.takeoff;

/**
 * Something a part of the job needs, before waste and rounding.
 *
 * @param item as sold: {@code picket-screw}
 * @param cause id of the post, bay, leaf or member that needs it
 */
public record Need(String item, String name, PartGroup group, NetUnit unit, double quantity, String cause) {
    public Need {
        if (!(quantity >= 0)) throw new IllegalArgumentException("A need of " + item + " must be zero or more");
    }

    public static Need pieces(String item, String name, PartGroup group, int count, String cause) {
        return new Need(item, name, group, NetUnit.PIECES, count, cause);
    }
}
