package plumbleaf.jobfile.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plumbleaf.jobfile.input.InputError;

/**
 * Looks over all points of a file at once for what one line alone does not show: numbers that stand in another's column, a height of nothing, a whole file whose
 * columns are turned. What is found is refused with its line; nothing is turned round unasked.
 */
final class PointReview {
    /** Fewer points than this have no usual place. Judgement. */
    private static final int ENOUGH = 4;

    /** What the place of a point may be off the middle of all, in spreads of the middle half. Judgement. */
    private static final double SPREADS = 12;

    /** Off the rest by less than this is no slip of columns. Judgement. */
    private static final double LEAST_OFF_FT = 100;

    /** Heights that data collectors write where none was taken. Common practice, no source. */
    private static final List<Double> NOTHING = List.of(0.0, -99.0, -999.0, -9999.0, -99999.0, 9999.0, 99999.0);

    /** Off the rest by less than this a zero may be a height. Judgement. */
    private static final double LEAST_HEIGHT_FT = 15;

    /** From point to nearest point no ground climbs steeper than this throughout; where columns are turned it seems to. Judgement. */
    private static final double STEEP = 1;

    private static final double USUAL = 0.5;

    /** Nearest points are looked for among this many. */
    private static final int SAMPLE = 400;

    private final String file;
    private final List<SurveyPoint> good = new ArrayList<>();
    private final List<InputError> errors = new ArrayList<>();

    PointReview(String file, List<SurveyPoint> points, ColumnOrder order, boolean orderSaid) {
        this.file = file;
        if (points.size() < ENOUGH) {
            good.addAll(points);
            return;
        }
        Spread north = Spread.of(points, SurveyPoint::northFt);
        Spread east = Spread.of(points, SurveyPoint::eastFt);
        Spread up = Spread.of(points, SurveyPoint::upFt);
        for (SurveyPoint point : points) {
            if (isNothing(point, up)) noHeight(point);
            else if (!isTurned(point, north, east, up)) good.add(point);
        }
        if (!orderSaid && good.size() >= ENOUGH) columns(order);
    }

    List<SurveyPoint> good() {
        return good;
    }

    List<InputError> errors() {
        return errors;
    }

    /** Middle value and the spread of the middle half of all. */
    private record Spread(double middle, double half) {
        static Spread of(List<SurveyPoint> points, ToDoubleFunction<SurveyPoint> value) {
            double[] all = points.stream().mapToDouble(value).sorted().toArray();
            return new Spread(all[all.length / 2], all[all.length * 3 / 4] - all[all.length / 4]);
        }

        boolean isFar(double value, double least) {
            return Math.abs(value - middle) > SPREADS * half + least;
        }

        boolean holds(double value) {
            return !isFar(value, LEAST_OFF_FT);
        }
    }

    /** In the unit of the file, whatever that is: nobody converts a number that stands for none. */
    private static boolean isNothing(SurveyPoint point, Spread up) {
        double asRead = point.upAsRead().doubleValue();
        return up.isFar(point.upFt(), LEAST_HEIGHT_FT)
                && NOTHING.stream().anyMatch(value -> Math.abs(asRead - value) < 1e-9);
    }

    private void noHeight(SurveyPoint point) {
        errors.add(new InputError(
                file,
                point.line(),
                0,
                "elevation",
                point.upAsRead().toPlainString(),
                "this stands where the elevation is missing",
                "give the point its height, or strike the line"));
    }

    private boolean isTurned(SurveyPoint point, Spread north, Spread east, Spread up) {
        double n = point.northFt();
        double e = point.eastFt();
        double z = point.upFt();
        boolean far = !north.holds(n) || !east.holds(e) || !up.holds(z);
        if (!far) return false;
        if (north.holds(e) && east.holds(n) && up.holds(z)) return turned(point, "northing", "easting");
        if (north.holds(z) && east.holds(e) && up.holds(n)) return turned(point, "northing", "elevation");
        if (north.holds(n) && east.holds(z) && up.holds(e)) return turned(point, "easting", "elevation");
        return false;
    }

    private boolean turned(SurveyPoint point, String one, String other) {
        error(
                point.line(),
                one,
                one + " and " + other + " are swapped here: the other way round the point lies among the rest",
                "write this line in the order of the others");
        return true;
    }

    /** The whole file: with a plan coordinate read as height, neighbors stand on top of each other. */
    private void columns(ColumnOrder order) {
        double asRead = steepness(SurveyPoint::northFt, SurveyPoint::eastFt, SurveyPoint::upFt);
        if (asRead <= STEEP) return;
        double byNorth = steepness(SurveyPoint::upFt, SurveyPoint::eastFt, SurveyPoint::northFt);
        double byEast = steepness(SurveyPoint::northFt, SurveyPoint::upFt, SurveyPoint::eastFt);
        char with = byNorth <= byEast ? 'N' : 'E';
        if (Math.min(byNorth, byEast) > USUAL) return;
        String better = order.letters().replace('Z', '?').replace(with, 'Z').replace('?', with);
        errors.add(InputError.ofFile(
                file,
                "read as " + order.text()
                        + " the ground climbs steeper than 1 in 1 from nearly every point to its nearest: "
                        + "a column of the plan is taken for the elevation",
                "write " + better + " as the order of columns, or the order that is right"));
    }

    /** The middle of the grades from each point to the one nearest in plan. */
    private double steepness(
            ToDoubleFunction<SurveyPoint> north, ToDoubleFunction<SurveyPoint> east, ToDoubleFunction<SurveyPoint> up) {
        int count = Math.min(SAMPLE, good.size());
        double[] grades = new double[count];
        for (int i = 0; i < count; i++) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int j = 0; j < count; j++) {
                if (i == j) continue;
                double dn = north.applyAsDouble(good.get(i)) - north.applyAsDouble(good.get(j));
                double de = east.applyAsDouble(good.get(i)) - east.applyAsDouble(good.get(j));
                double away = Math.sqrt(dn * dn + de * de);
                if (away == 0 || away >= nearest) continue;
                nearest = away;
                grades[i] = Math.abs(up.applyAsDouble(good.get(i)) - up.applyAsDouble(good.get(j))) / away;
            }
        }
        Arrays.sort(grades);
        return grades[count / 2];
    }

    private void error(int line, String field, String problem, String cure) {
        errors.add(new InputError(file, line, 0, field, "", problem, cure));
    }
}
