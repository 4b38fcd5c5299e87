package plumbleaf.engine.takeoff;

import java.util.Optional;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;

/**
 * The lag screws of a leaf's hinges in its wood post.
 *
 * @param length under the head
 * @param lead the hole they are led in by, as deep as the screw goes
 */
public record LagItem(int count, Length diameter, Length length, Length lead) {
    /** Nothing where its hinges are fixed another way, or its post is no wood. */
    public static Optional<LagItem> of(Leaf leaf, GateParts parts) {
        boolean wood = parts.hingePost().match(steel -> false, is -> true);
        if (!wood) return Optional.empty();
        return parts.hinge()
                .fixing()
                .toPost()
                .match(
                        welded -> Optional.empty(),
                        bolted -> Optional.empty(),
                        lagged -> Optional.of(new LagItem(
                                lagged.count() * leaf.pins().size(),
                                lagged.diameter(),
                                lagged.length(),
                                lagged.lead())));
    }

    /** {@code lag-0.5x4}. */
    public String item() {
        return "lag-" + DecimalText.shortest(diameter.inches()) + "x" + DecimalText.shortest(length.inches());
    }

    /** {@code 1/2" x 4" lag screw}. */
    public String name() {
        return LengthText.feetAndInches(diameter.inches()) + " x " + LengthText.inchesOnly(length.inches())
                + " lag screw";
    }

    Need need(String cause) {
        return Need.pieces(item(), name(), PartGroup.HARDWARE, count, cause);
    }
}
