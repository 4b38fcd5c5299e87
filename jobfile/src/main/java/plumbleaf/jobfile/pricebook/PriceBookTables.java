package plumbleaf.jobfile.pricebook;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import plumbleaf.engine.labour.LabourRate;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.pricing.Category;
import plumbleaf.engine.pricing.Charge;
import plumbleaf.engine.pricing.ChargePer;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.engine.takeoff.OrderUnit;
import plumbleaf.engine.takeoff.Sold;
import plumbleaf.engine.takeoff.Truck;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/** The tables of a price book. Prices are plain dollars, dates as 2027-03-01. */
public final class PriceBookTables {
    private static final List<String> TRUCK = List.of("payload_lb", "bed_ft", "overhang_ft");
    private static final Pattern DATE = Pattern.compile("\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])");

    private PriceBookTables() {}

    public static CsvTable<Sold> materials(String file, String text) {
        List<String> columns = List.of(
                "item",
                "name",
                "supplier",
                "unit",
                "contents",
                "of",
                "least",
                "price",
                "taxed",
                "waste_pct",
                "weight_lb",
                "date",
                "source");
        Set<String> seen = new LinkedHashSet<>();
        return CsvTable.read(file, text, columns, row -> sold(row, seen));
    }

    private static Sold sold(CsvRow row, Set<String> seen) {
        String item = row.needed("item");
        String supplier = row.needed("supplier");
        String contents = row.text("contents");
        if (!seen.add(item + "|" + supplier + "|" + row.text("unit") + "|" + contents))
            row.error("item", "this supplier sells it in this unit and size twice", "keep the row that holds");
        if (!DATE.matcher(row.text("date")).matches())
            row.error("date", "this is not a date", "write year, month and day, like 2027-03-01");
        return new Sold(
                item,
                row.needed("name"),
                supplier,
                row.read("unit", PriceBookTables::orderUnit, OrderUnit.EACH),
                row.number("contents", 0.0001, 100_000),
                row.read("of", PriceBookTables::netUnit, NetUnit.PIECES),
                whole(row, "least", 1, 10_000),
                price(row, "price"),
                row.yes("taxed"),
                row.number("waste_pct", 0, 60) / 100,
                Force.pounds(row.number("weight_lb", 0, 100_000)),
                row.text("date"),
                row.needed("source"));
    }

    public static CsvTable<LabourRate> labour(String file, String text) {
        List<String> columns = List.of("task", "name", "phase", "soil", "up_to_in", "per", "hours", "source");
        Set<String> seen = new LinkedHashSet<>();
        return CsvTable.read(file, text, columns, row -> rate(row, seen));
    }

    private static LabourRate rate(CsvRow row, Set<String> seen) {
        String task = row.needed("task");
        if (!seen.add(task + "|" + row.text("soil") + "|" + row.text("up_to_in")))
            row.error("task", "this task has hours for this soil and size twice", "keep the row that holds");
        return new LabourRate(
                task,
                row.needed("name"),
                row.read("phase", PriceBookTables::phase, Phase.BUILD),
                row.text("soil"),
                Length.inches(row.numberOr("up_to_in", 0, 1, 60)),
                row.needed("per"),
                row.number("hours", 0, 999),
                row.needed("source"));
    }

    public static CsvTable<Charge> charges(String file, String text) {
        List<String> columns = List.of("id", "name", "category", "per", "price", "taxed", "source");
        return CsvTable.read(
                file,
                text,
                columns,
                row -> new Charge(
                        row.needed("id"),
                        row.needed("name"),
                        row.read("category", PriceBookTables::category, Category.EQUIPMENT),
                        row.read("per", PriceBookTables::per, ChargePer.JOB),
                        price(row, "price"),
                        row.yes("taxed"),
                        row.needed("source")));
    }

    public static CsvTable<House> house(String file, String text) {
        List<String> columns =
                List.of("people", "hourly", "hours_per_day", "cure_days", "minimum", "round_to", "source");
        return CsvTable.read(
                file,
                text,
                columns,
                row -> new House(
                        whole(row, "people", 1, 50),
                        price(row, "hourly"),
                        row.number("hours_per_day", 1, 16),
                        whole(row, "cure_days", 0, 60),
                        cents(row, "minimum", 0),
                        cents(row, "round_to", 1),
                        truck(row)));
    }

    /** Older tables say nothing of the truck; then the usual one is taken, and the job says so. */
    private static Truck truck(CsvRow row) {
        boolean unsaid = TRUCK.stream()
                .allMatch(column -> !row.has(column) || row.text(column).isEmpty());
        if (unsaid) return Truck.USUAL;
        return Truck.of(
                Force.pounds(of(row, "payload_lb", 100, 100_000)),
                Length.feet(of(row, "bed_ft", 2, 60)),
                Length.feet(of(row, "overhang_ft", 0, 20)));
    }

    /** One of the truck's numbers: who gives one gives all. */
    private static double of(CsvRow row, String column, double least, double most) {
        if (row.has(column)) return row.number(column, least, most);
        row.error(column, "a truck has " + String.join(", ", TRUCK) + ", and this is missing", "add the column");
        return least;
    }

    private static int whole(CsvRow row, String column, int least, int most) {
        double value = row.number(column, least, most);
        if (value != Math.rint(value)) row.error(column, "this is not a whole number", "write a whole number");
        return (int) Math.rint(value);
    }

    private static UnitPrice price(CsvRow row, String column) {
        return new UnitPrice(row.decimal(column));
    }

    private static Money cents(CsvRow row, String column, long least) {
        BigDecimal dollars = row.decimal(column);
        Money amount = Money.rounded(dollars);
        if (amount.inDollars().compareTo(dollars) != 0)
            row.error(column, "an amount stops at the cent", "write two places, like 950.00");
        if (amount.cents() < least) row.error(column, "this is less than a cent", "write at least 0.01");
        return amount.cents() < least ? Money.cents(least) : amount;
    }

    private static Parsed<OrderUnit> orderUnit(String text) {
        return OrderUnit.of(text)
                .<Parsed<OrderUnit>>map(Parsed.Read::new)
                .orElseGet(() -> new Parsed.Refused<>(
                        "nothing is sold by this unit",
                        "write each, box, lb, stick, bag, yard, roll, pail, can or sheet"));
    }

    private static Parsed<NetUnit> netUnit(String text) {
        return NetUnit.of(text)
                .<Parsed<NetUnit>>map(Parsed.Read::new)
                .orElseGet(() ->
                        new Parsed.Refused<>("nothing is measured in this", "write pieces, ft, ft2, ft3, lb or gal"));
    }

    private static Parsed<Phase> phase(String text) {
        return Phase.of(text)
                .<Parsed<Phase>>map(Parsed.Read::new)
                .orElseGet(() -> new Parsed.Refused<>(
                        "this is no phase of a job", "write tear-out, shop, set, build, hang, finish or travel"));
    }

    private static Parsed<Category> category(String text) {
        return Category.of(text)
                .<Parsed<Category>>map(Parsed.Read::new)
                .orElseGet(() -> new Parsed.Refused<>(
                        "this is no category of cost",
                        "write material, labor, equipment, subcontract, disposal, permit or travel"));
    }

    private static Parsed<ChargePer> per(String text) {
        return ChargePer.of(text)
                .<Parsed<ChargePer>>map(Parsed.Read::new)
                .orElseGet(() -> new Parsed.Refused<>(
                        "nothing is charged by this",
                        "write job, day on site, trip, hole, ton hauled off, cubic yard of spoil or allowance"));
    }
}
