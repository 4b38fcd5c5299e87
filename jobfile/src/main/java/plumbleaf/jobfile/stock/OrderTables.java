package plumbleaf.jobfile.stock;

import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.takeoff.LoadList;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.engine.takeoff.OtherWay;
import plumbleaf.engine.takeoff.Supplied;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.table.SafeCsv;

/** The order, the receiving sheet and the load list as tables. The order goes out of the house and has no prices. */
public final class OrderTables {
    private OrderTables() {}

    /** Another supplier of the same, or the same in another package; where a check was made with the section itself, no swap. */
    public static String swap(TakeoffLine line) {
        if (line.cut()) return "no";
        for (OtherWay other : line.others())
            return "or " + other.units() + " x " + other.sold().name();
        return "ask";
    }

    /** The day it is needed by; empty where the job has no first day yet. */
    public static String day(TakeoffLine line) {
        return line.need()
                .day()
                .value()
                .map(day -> TextKind.DATE.write().apply(day))
                .orElse("");
    }

    /** What the parts need before it is rounded up: net, and what is added for waste where that is not in a cut plan. */
    public static String needs(TakeoffLine line) {
        String net = DecimalText.upTo(line.net(), line.sold().of() == NetUnit.PIECES ? 0 : 1);
        String unit =
                line.sold().of() == NetUnit.PIECES ? "" : " " + line.sold().of().key();
        double waste = line.wasteShare();
        return net + unit + (waste > 0 ? " + " + DecimalText.upTo(waste * 100, 1) + "%" : "");
    }

    /** The need behind the units, to follow a name; empty where one is one and nothing is added. */
    public static String roundedFrom(TakeoffLine line) {
        boolean single = line.sold().of() == NetUnit.PIECES && line.sold().contents() == 1 && line.wasteShare() == 0;
        return single ? "" : ": for " + needs(line);
    }

    /** Waste, cut and rounding together, of what is bought. */
    public static String unused(TakeoffLine line) {
        return line.units() == 0 ? "" : DecimalText.whole(line.unusedShare() * 100) + "%";
    }

    public static String order(Takeoff takeoff) {
        SafeCsv csv = new SafeCsv()
                .row("supplier", "item", "name", "quantity", "unit", "weight_lb", "swap", "needed_for", "needed_by");
        for (Supplied supplied : Supplied.of(takeoff)) {
            for (TakeoffLine line : supplied.lines())
                csv.row(
                        supplied.supplier(),
                        line.item(),
                        line.sold().name(),
                        Long.toString(line.units()),
                        line.sold().unit().key(),
                        DecimalText.upTo(line.weight().pounds(), 1),
                        swap(line),
                        line.need().work(),
                        day(line));
        }
        return csv.text();
    }

    /** Lines to count at the tailgate; what came is written in the last column, and {@link CameTable} reads it back. */
    public static String receiving(Takeoff takeoff) {
        SafeCsv csv =
                new SafeCsv().row("supplier", "item", "name", "ordered", "unit", "needed_for", "needed_by", "came");
        for (Supplied supplied : Supplied.of(takeoff)) {
            for (TakeoffLine line : supplied.lines())
                csv.row(
                        supplied.supplier(),
                        line.item(),
                        line.sold().name(),
                        Long.toString(line.units()),
                        line.sold().unit().key(),
                        line.need().work(),
                        day(line),
                        "");
        }
        return csv.text();
    }

    /** Every line of the take-off with its reasons, for the office. */
    public static String takeoff(Takeoff takeoff) {
        SafeCsv csv = new SafeCsv()
                .row(
                        "group",
                        "item",
                        "name",
                        "net",
                        "net_unit",
                        "with_waste",
                        "from_yard",
                        "quantity",
                        "unit",
                        "one_holds",
                        "unused_pct",
                        "cost",
                        "for");
        for (TakeoffLine line : takeoff.lines())
            csv.row(
                    line.group().key(),
                    line.item(),
                    line.sold().name(),
                    DecimalText.upTo(line.net(), 3),
                    line.sold().of().key(),
                    DecimalText.upTo(line.withWaste(), 3),
                    DecimalText.upTo(line.fromYard(), 3),
                    Long.toString(line.units()),
                    line.sold().unit().key(),
                    DecimalText.upTo(line.sold().contents(), 3),
                    line.units() == 0 ? "" : DecimalText.upTo(line.unusedShare() * 100, 1),
                    line.cost().plain(),
                    String.join(
                            " ",
                            line.causes().stream().map(cause -> cause.part()).toList()));
        return csv.text();
    }

    public static String load(LoadList list) {
        SafeCsv csv = new SafeCsv()
                .row("day", "item", "what", "quantity", "unit", "weight_lb", "longest", "loaded", "returned");
        for (LoadList.Load load : list.loads()) {
            for (LoadList.LoadLine line : load.lines())
                csv.row(
                        load.stage().key(),
                        line.item(),
                        line.what(),
                        Long.toString(line.count()),
                        line.unit(),
                        DecimalText.upTo(line.weight().pounds(), 1),
                        line.longest().isZero()
                                ? ""
                                : LengthText.feetAndInches(line.longest().inches()),
                        "",
                        "");
            for (String tool : load.stage().tools()) csv.row(load.stage().key(), "", tool, "", "", "", "", "", "");
        }
        return csv.text();
    }
}
