package plumbleaf.jobfile.stock;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.engine.takeoff.Sold;

/** What things are called where they are sold, for papers and pages on which their codes alone would say nothing. */
public final class ItemNames {
    private final Map<String, String> names = new LinkedHashMap<>();
    private final Map<String, String> barNames = new LinkedHashMap<>();

    /** @param sold rows of one price book after another; the first that has an item names it */
    public ItemNames(List<Sold> sold) {
        for (Sold one : sold) {
            names.putIfAbsent(one.item(), one.name());
            barNames.putIfAbsent(one.item(), withoutLength(one));
        }
    }

    /** A stick's name ends in its own length, which a bar on hand need not have. */
    private static String withoutLength(Sold sold) {
        String tail = ", " + DecimalText.upTo(sold.contents(), 3) + " ft";
        return sold.of() == NetUnit.FEET && sold.name().endsWith(tail)
                ? sold.name().substring(0, sold.name().length() - tail.length())
                : sold.name();
    }

    /** Every item and its name, in the order of the book. */
    public Map<String, String> all() {
        return new LinkedHashMap<>(barNames);
    }

    /** What a row of the yard is; its code where no book sells it. */
    public String of(YardRow row) {
        Map<String, String> known = row.kind() == YardRow.Kind.GOODS ? names : barNames;
        return known.getOrDefault(row.item(), row.item());
    }

    /** How long it is, or what one holds. */
    public static String size(YardRow row) {
        return switch (row.kind()) {
            case BAR -> LengthText.feetAndInches(row.length().inches());
            case OFFCUT -> "offcut " + LengthText.feetAndInches(row.length().inches());
            case GOODS ->
                row.of() == NetUnit.PIECES && row.contents() == 1
                        ? ""
                        : DecimalText.upTo(row.contents(), 2) + " " + row.of().key() + " each";
        };
    }
}
