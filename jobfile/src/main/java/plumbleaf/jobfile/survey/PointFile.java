package plumbleaf.jobfile.survey;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.ground.Shot;
import plumbleaf.engine.ground.ShotHeight;
import plumbleaf.engine.ground.ShotPlace;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.jobfile.input.InputError;

/**
 * A point file read as shots by east, north and elevation.
 *
 * @param shots the good lines, in order
 * @param errors what is wrong with the others, all of them
 * @param separator what stands between the columns
 * @param order which column holds what
 * @param unit of the coordinates
 * @param found how separator, order and unit were come by, a sentence each
 * @param doubts what looks wrong with lines that were read all the same: nothing is dropped or smoothed
 * @param eastOff whole feet taken off every easting, so that only differences count
 * @param northOff whole feet taken off every northing
 */
public record PointFile(
        List<Shot> shots,
        List<InputError> errors,
        Separator separator,
        ColumnOrder order,
        SurveyUnit unit,
        List<String> found,
        List<InputError> doubts,
        long eastOff,
        long northOff) {
    private static final BigDecimal NM_PER_FOOT = new BigDecimal("304800000");
    /** Coordinates beyond this are a survey's own grid, not the job's. */
    private static final BigDecimal LARGE_NM = NM_PER_FOOT.multiply(new BigDecimal(10_000));

    /** Northings of a metric grid go to 10,000,000 m, 33 million feet. */
    private static final BigDecimal LARGEST_NM = NM_PER_FOOT.multiply(new BigDecimal(100_000_000));

    private static final BigDecimal FARTHEST_NM = NM_PER_FOOT.multiply(new BigDecimal(10 * 5280));
    private static final BigDecimal HIGHEST_NM = NM_PER_FOOT.multiply(new BigDecimal(30_000));
    private static final int MOST_POINTS = 10_000;

    public PointFile {
        shots = List.copyOf(shots);
        errors = List.copyOf(errors);
        found = List.copyOf(found);
        doubts = List.copyOf(doubts);
    }

    /** Of a file that is refused, everything at once by line: what is wrong, and what looks wrong besides. */
    public List<InputError> problems() {
        List<InputError> all = new ArrayList<>(errors);
        if (!errors.isEmpty()) all.addAll(doubts);
        all.sort(Comparator.comparingInt(InputError::line));
        return all;
    }

    /** What the user says about a file; what is not said is found out. */
    public record Said(Optional<Separator> separator, Optional<ColumnOrder> order, Optional<SurveyUnit> unit) {
        public static final Said NOTHING = new Said(Optional.empty(), Optional.empty(), Optional.empty());
    }

    private record Line(int number, String text) {}

    public static PointFile read(String file, String text, Said said) {
        List<Line> lines = lines(text);
        List<String> texts = new ArrayList<>();
        for (Line line : lines) texts.add(line.text());
        List<String> found = new ArrayList<>();
        Separator separator = said.separator().orElseGet(() -> Separator.of(texts));
        found.add("separator: " + separator.key()
                + (said.separator().isPresent() ? ", as you said" : ", as most lines have it"));
        boolean heading =
                !lines.isEmpty() && isHeading(separator.cells(lines.get(0).text()));
        List<Line> rows = heading ? lines.subList(1, lines.size()) : lines;
        ColumnOrder order = order(said, separator, lines, rows, heading, found);
        SurveyUnit unit = unit(said, heading ? lines.get(0).text() : "", found);
        return new Reading(file, separator, order, unit, said.order().isPresent()).points(rows, found);
    }

    private static List<Line> lines(String text) {
        List<Line> lines = new ArrayList<>();
        String[] all = text.split("\n", -1);
        for (int i = 0; i < all.length; i++) {
            String line = all[i].strip();
            boolean remark = line.isEmpty() || line.startsWith("#") || line.startsWith("//") || line.startsWith(";");
            if (!remark) lines.add(new Line(i + 1, line));
        }
        return lines;
    }

    /** A first line of words without a number among them. */
    private static boolean isHeading(List<String> cells) {
        return cells.size() >= 3
                && cells.stream().noneMatch(cell -> PlainNumber.of(cell, false).isPresent());
    }

    private static ColumnOrder order(
            Said said, Separator separator, List<Line> lines, List<Line> rows, boolean heading, List<String> found) {
        if (said.order().isPresent()) {
            found.add("order: " + said.order().get().text() + ", as you said");
            return said.order().get();
        }
        Optional<ColumnOrder> told =
                heading ? ColumnOrder.ofHeading(separator.cells(lines.get(0).text())) : Optional.empty();
        if (told.isPresent()) {
            found.add("order: " + told.get().text() + ", as the heading says");
            return told.get();
        }
        int cells = rows.isEmpty() ? 5 : separator.cells(rows.get(0).text()).size();
        ColumnOrder usual = ColumnOrder.usual(cells);
        String turned = usual.letters().replace("NE", "EN");
        found.add("order: " + usual.text() + ", the usual one; where easting comes first write " + turned
                + " as the order of columns");
        return usual;
    }

    private static SurveyUnit unit(Said said, String heading, List<String> found) {
        if (said.unit().isPresent()) {
            found.add("units: " + said.unit().get().words() + ", as you said");
            return said.unit().get();
        }
        Optional<SurveyUnit> headed = SurveyUnit.inHeading(heading);
        if (headed.isPresent()) {
            found.add("units: " + headed.get().words() + ", as the heading says");
            return headed.get();
        }
        found.add("units: feet, taken for granted; where they are not say m, us-ft, in or mm");
        return SurveyUnit.FEET;
    }

    /** The rows of one file, once it is known how they are laid out. */
    private static final class Reading {
        private final String file;
        private final Separator separator;
        private final ColumnOrder order;
        private final SurveyUnit unit;
        private final boolean orderSaid;
        private final List<InputError> errors = new ArrayList<>();
        private final Set<String> names = new LinkedHashSet<>();

        Reading(String file, Separator separator, ColumnOrder order, SurveyUnit unit, boolean orderSaid) {
            this.file = file;
            this.separator = separator;
            this.order = order;
            this.unit = unit;
            this.orderSaid = orderSaid;
        }

        PointFile points(List<Line> rows, List<String> found) {
            List<SurveyPoint> all = new ArrayList<>();
            boolean comma = separator != Separator.COMMA && rows.stream().anyMatch(row -> decimalComma(row.text()));
            if (comma) found.add("decimals: after a comma");
            for (Line row : rows) point(row).ifPresent(all::add);
            PointReview review = new PointReview(file, all, order, orderSaid);
            errors.addAll(review.errors());
            List<SurveyPoint> points = review.good();
            if (rows.isEmpty())
                errors.add(InputError.ofFile(file, "there is no point in this file", "give lines of P,N,E,Z,D"));
            if (points.size() > MOST_POINTS)
                errors.add(InputError.ofFile(file, "there are more than 10,000 points", "keep those near the fence"));
            boolean grid = points.stream()
                    .anyMatch(point -> point.north().abs().compareTo(LARGE_NM) > 0
                            || point.east().abs().compareTo(LARGE_NM) > 0);
            long northOff = grid ? wholeFeet(points.get(0).north()) : 0;
            long eastOff = grid ? wholeFeet(points.get(0).east()) : 0;
            if (grid)
                found.add("origin: " + northOff + " ft taken off every northing and " + eastOff
                        + " ft off every easting; only differences count");
            List<Shot> shots = new ArrayList<>();
            List<SurveyPoint> kept = new ArrayList<>();
            for (SurveyPoint point : points)
                shot(point, northOff, eastOff).ifPresent(shot -> {
                    shots.add(shot);
                    kept.add(point);
                });
            List<InputError> sorted = new ArrayList<>(errors);
            sorted.sort(Comparator.comparingInt(InputError::line));
            List<InputError> doubts = PointDoubts.of(file, kept, shots, errors);
            return new PointFile(shots, sorted, separator, order, unit, found, doubts, eastOff, northOff);
        }

        private boolean decimalComma(String line) {
            return separator.cells(line).stream()
                    .anyMatch(cell ->
                            cell.indexOf(',') > 0 && PlainNumber.of(cell, true).isPresent());
        }

        private static long wholeFeet(BigDecimal nanometres) {
            return nanometres.divideToIntegralValue(NM_PER_FOOT).longValueExact();
        }

        private Optional<SurveyPoint> point(Line line) {
            List<String> cells = separator.cells(line.text());
            Optional<BigDecimal> north = coordinate(line, cells, 'N', "northing");
            Optional<BigDecimal> east = coordinate(line, cells, 'E', "easting");
            Optional<BigDecimal> up = coordinate(line, cells, 'Z', "elevation");
            String name = order.at('P') < 0 ? "" : cell(cells, order.at('P'));
            if (!name.isEmpty() && !names.add(name))
                error(line, "point", name, "this point is there twice", "keep one of the lines");
            if (north.isEmpty() || east.isEmpty() || up.isEmpty()) return Optional.empty();
            return Optional.of(new SurveyPoint(
                    line.number(),
                    name,
                    measured(north.get()),
                    measured(east.get()),
                    measured(up.get()),
                    up.get(),
                    note(cells)));
        }

        /** The description, with what follows it where spaces separate. */
        private String note(List<String> cells) {
            int at = order.at('D');
            if (at < 0 || at >= cells.size()) return "";
            boolean last = at == order.letters().length() - 1;
            return last ? String.join(" ", cells.subList(at, cells.size())).strip() : cells.get(at);
        }

        private static String cell(List<String> cells, int at) {
            return at < cells.size() ? cells.get(at) : "";
        }

        private Optional<BigDecimal> coordinate(Line line, List<String> cells, char letter, String name) {
            String cell = cell(cells, order.at(letter));
            Optional<BigDecimal> number = PlainNumber.of(cell, separator != Separator.COMMA);
            if (number.isEmpty()) {
                error(
                        line,
                        name,
                        cell,
                        cell.isEmpty() ? "the " + name + " is missing" : "this is not a number",
                        "write " + order.text() + " with plain numbers for N, E and Z");
                return Optional.empty();
            }
            if (measured(number.get()).abs().compareTo(LARGEST_NM) > 0) {
                error(line, name, cell, "no grid reaches so far", "check the digits, the order and the units");
                return Optional.empty();
            }
            return number;
        }

        private BigDecimal measured(BigDecimal number) {
            return unit.nanometres(number);
        }

        private void error(Line line, String field, String value, String problem, String cure) {
            errors.add(new InputError(file, line.number(), 0, field, value, problem, cure));
        }

        private Optional<Shot> shot(SurveyPoint point, long northOff, long eastOff) {
            BigDecimal north = point.north().subtract(NM_PER_FOOT.multiply(new BigDecimal(northOff)));
            BigDecimal east = point.east().subtract(NM_PER_FOOT.multiply(new BigDecimal(eastOff)));
            boolean far = north.abs().compareTo(FARTHEST_NM) > 0 || east.abs().compareTo(FARTHEST_NM) > 0;
            boolean high = point.up().abs().compareTo(HIGHEST_NM) > 0;
            if (far)
                error(
                        new Line(point.line(), ""),
                        "northing",
                        "",
                        "this point is more than ten miles from the first",
                        "check order and units");
            if (high)
                error(
                        new Line(point.line(), ""),
                        "elevation",
                        "",
                        "this point is more than 30,000 ft up or down",
                        "check order and units");
            if (far || high) return Optional.empty();
            return Optional.of(new Shot(
                    id(point),
                    new ShotPlace.At(offset(east), offset(north)),
                    new ShotHeight.Elevation(offset(point.up())),
                    point.note()));
        }

        private static Offset offset(BigDecimal nanometres) {
            return Offset.nanometres(nanometres.longValueExact());
        }

        /** The point's own name where it can be an id, {@code S101} for a bare number; else one made from its line. */
        private static String id(SurveyPoint point) {
            String name = point.name();
            boolean plain = !name.isEmpty() && name.length() <= 19;
            boolean digits = plain;
            for (int i = 0; i < name.length(); i++) {
                char c = name.charAt(i);
                boolean digit = c >= '0' && c <= '9';
                boolean letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
                plain = plain && (digit || letter || c == '-' || c == '_');
                digits = digits && digit;
            }
            if (!plain) return "S" + point.line();
            return digits ? "S" + name : name;
        }
    }
}
