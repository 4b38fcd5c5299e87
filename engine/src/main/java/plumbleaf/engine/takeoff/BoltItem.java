package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Fastening;
import plumbleaf.engine.catalogue.HingeFixing;
import plumbleaf.engine.gate.Fitting;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.BoltStack;

/**
 * Like bolts of a leaf, by their stack-up.
 *
 * @param where what they hold
 * @param drill the hole, through both walls
 * @param sleeve length of the crush sleeve each one stands in; none where wood gives with the tube
 * @param nutOnWood whether a wide washer lies under its nut, on the wood
 */
public record BoltItem(
        String where, int count, BoltStack stack, Length drill, Optional<Length> sleeve, boolean nutOnWood) {
    /** Nailer bolts. Common practice, no source. */
    public static final Length NAILER = Length.inches(0.375);

    /** Bolts at the hinges, on leaf and post, then those of the nailers. */
    public static List<BoltItem> of(Leaf leaf, GateParts parts) {
        List<BoltItem> items = new ArrayList<>();
        HingeFixing fixing = parts.hinge().fixing();
        int hinges = leaf.pins().size();
        Section frame = parts.frame();
        Length thick = frame.isRound() ? frame.depth() : frame.width();
        add(
                items,
                "hinges on the leaf",
                hinges,
                fixing.toLeaf(),
                parts,
                List.of(fixing.plateThickness(), thick),
                thick);
        onPost(items, hinges, fixing, parts);
        int nailers = 0;
        for (Fitting fitting : leaf.fittings()) if (fitting.what().equals("nailer bolt")) nailers++;
        Optional<Length> board = parts.cladding()
                .match(
                        open -> Optional.empty(),
                        wood -> Optional.of(wood.style().railThickness()),
                        pickets -> Optional.empty(),
                        mesh -> Optional.empty(),
                        sheet -> Optional.empty());
        if (nailers > 0 && board.isPresent()) {
            BoltStack stack = BoltStack.of(parts.bolt(NAILER), List.of(thick, board.get()));
            items.add(new BoltItem(
                    "nailers on the rails", nailers, stack, stack.size().hole(), Optional.empty(), true));
        }
        return List.copyOf(items);
    }

    /** Through a tube with a plate on its far side, or through wood with a wide washer there; lag screws are no bolts. */
    private static void onPost(List<BoltItem> items, int hinges, HingeFixing fixing, GateParts parts) {
        Length post = parts.hingePost().depth();
        boolean wood = parts.hingePost().match(steel -> false, is -> true);
        if (!wood) {
            List<Length> plies = List.of(fixing.plateThickness(), post, fixing.plateThickness());
            add(items, "hinges on the post", hinges, fixing.toPost(), parts, plies, post);
            return;
        }
        fixing.toPost()
                .match(
                        welded -> false,
                        bolted -> items.add(new BoltItem(
                                "hinges on the wood post",
                                bolted.count() * hinges,
                                BoltStack.of(parts.bolt(bolted.diameter()), List.of(fixing.plateThickness(), post)),
                                bolted.hole(),
                                Optional.empty(),
                                true)),
                        lagged -> false);
    }

    private static void add(
            List<BoltItem> items,
            String where,
            int hinges,
            Fastening fastening,
            GateParts parts,
            List<Length> plies,
            Length tube) {
        fastening.match(
                welded -> items,
                bolted -> {
                    items.add(new BoltItem(
                            where,
                            bolted.count() * hinges,
                            BoltStack.of(parts.bolt(bolted.diameter()), plies),
                            bolted.hole(),
                            Optional.of(BoltStack.sleeve(tube)),
                            false));
                    return items;
                },
                lagged -> items);
    }

    private String size() {
        return DecimalText.shortest(stack.size().diameter().inches());
    }

    /** {@code bolt-0.5x3.5}. */
    public String item() {
        return "bolt-" + size() + "x" + DecimalText.shortest(stack.order().inches());
    }

    /** {@code 1/2" x 3-1/2" hex bolt}. */
    public String name() {
        return LengthText.feetAndInches(stack.size().diameter().inches()) + " x "
                + LengthText.inchesOnly(stack.order().inches()) + " hex bolt";
    }

    /** Bolts, nuts (capped where the end would stand out), two washers each, the one on wood a wide one, sleeves. */
    List<Need> needs(String cause) {
        List<Need> needs = new ArrayList<>();
        String diameter = LengthText.feetAndInches(stack.size().diameter().inches());
        needs.add(Need.pieces(item(), name(), PartGroup.HARDWARE, count, cause));
        String nut = stack.needsCap() ? "cap-nut-" : "nut-";
        String nutName = diameter + (stack.needsCap() ? " cap nut" : " hex nut");
        needs.add(Need.pieces(nut + size(), nutName, PartGroup.HARDWARE, count, cause));
        needs.add(Need.pieces(
                "washer-" + size(),
                diameter + " flat washer",
                PartGroup.HARDWARE,
                nutOnWood ? count : 2 * count,
                cause));
        if (nutOnWood)
            needs.add(Need.pieces(
                    "wide-washer-" + size(), diameter + " wide washer for wood", PartGroup.HARDWARE, count, cause));
        sleeve.ifPresent(length -> needs.add(Need.pieces(
                "sleeve-" + size(), "crush sleeve for " + diameter + " bolts", PartGroup.HARDWARE, count, cause)));
        return needs;
    }
}
