package plumbleaf.engine.line;

import java.util.Arrays;

/**
 * A convex polygon of places and slopes: its corners counter-clockwise, place first. It changes as it is carried along a fence; {@link LeastBend} alone holds one.
 */
final class ReachedPlaces {
    private double[] place = new double[16];
    private double[] slope = new double[16];
    private double[] newPlace = new double[16];
    private double[] newSlope = new double[16];
    private int corners;
    private int kept;

    /** All places from one to another, at all slopes up to the steepest. */
    static ReachedPlaces strip(double from, double to, double steepest) {
        ReachedPlaces all = new ReachedPlaces();
        all.set(from, to, steepest);
        return all;
    }

    private void set(double from, double to, double steepest) {
        double[] places = {from, to, to, from};
        double[] slopes = {-steepest, -steepest, steepest, steepest};
        System.arraycopy(places, 0, place, 0, 4);
        System.arraycopy(slopes, 0, slope, 0, 4);
        corners = 4;
    }

    boolean isEmpty() {
        return corners == 0;
    }

    /** On by a level length: each place moves by its slope. */
    void goOn(double length) {
        for (int i = 0; i < corners; i++) place[i] += slope[i] * length;
    }

    /** Any slope may follow. */
    void turnFreely(double steepest) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < corners; i++) {
            least = Math.min(least, place[i]);
            most = Math.max(most, place[i]);
        }
        set(least, most, steepest);
    }

    /** Slopes count from another chord now, and may change by so much either way: the lower side of the polygon sinks, the upper side rises. */
    void turn(double shift, double change) {
        int left = 0;
        int right = 0;
        for (int i = 1; i < corners; i++) {
            if (place[i] < place[left] || (place[i] == place[left] && slope[i] < slope[left])) left = i;
            if (place[i] > place[right] || (place[i] == place[right] && slope[i] < slope[right])) right = i;
        }
        kept = 0;
        for (int i = left; ; i = (i + 1) % corners) {
            keep(place[i], slope[i] + shift - change);
            if (i == right) break;
        }
        for (int i = right; ; i = (i + 1) % corners) {
            keep(place[i], slope[i] + shift + change);
            if (i == left) break;
        }
        swap();
    }

    /** Cuts off what lies below a height once it has gone on by a length. */
    void keepAbove(double length, double height) {
        cut(length, height, 1);
    }

    /** Cuts off what lies above a height once it has gone on by a length. */
    void keepBelow(double length, double height) {
        cut(length, height, -1);
    }

    private void cut(double length, double height, int sign) {
        kept = 0;
        for (int i = 0; i < corners; i++) {
            int next = i + 1 == corners ? 0 : i + 1;
            double here = sign * (place[i] + slope[i] * length - height);
            double there = sign * (place[next] + slope[next] * length - height);
            if (here >= 0) keep(place[i], slope[i]);
            if ((here > 0 && there < 0) || (here < 0 && there > 0)) {
                double share = here / (here - there);
                keep(place[i] + (place[next] - place[i]) * share, slope[i] + (slope[next] - slope[i]) * share);
            }
        }
        swap();
    }

    /** A corner in the same place as the last is none. */
    private void keep(double atPlace, double atSlope) {
        if (kept > 0 && newPlace[kept - 1] == atPlace && newSlope[kept - 1] == atSlope) return;
        if (kept == newPlace.length) {
            newPlace = Arrays.copyOf(newPlace, 2 * kept);
            newSlope = Arrays.copyOf(newSlope, 2 * kept);
        }
        newPlace[kept] = atPlace;
        newSlope[kept] = atSlope;
        kept++;
    }

    private void swap() {
        double[] oldPlace = place;
        double[] oldSlope = slope;
        place = newPlace;
        slope = newSlope;
        newPlace = oldPlace;
        newSlope = oldSlope;
        corners = kept;
    }
}
