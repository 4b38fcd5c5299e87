package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * The ground along a run: the polyline of its shots. Before the first and beyond the last shot the end grades go on, which whoever uses it must say:
 * {@link #isMeasured} tells.
 *
 * @param run whose it is
 * @param points by station, each station once; empty where nothing was measured, and the ground is then taken as level at zero
 */
public record Profile(String run, List<ProfilePoint> points) {
    /** Stations nearer than this are one: a tenth of the finest tape mark, so that no grade is made of rounding. */
    private static final double SAME_STATION_IN = 0.001;

    /** The steepest grade that is still told as one. */
    private static final double STEEPEST = 19;

    public Profile {
        points = List.copyOf(points);
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i - 1).station().compareTo(points.get(i).station()) >= 0)
                throw new IllegalArgumentException("A profile's stations must grow");
        }
    }

    /** Sorted by station; of two at one station the first given stays. */
    static Profile of(String run, List<ProfilePoint> unsorted) {
        List<ProfilePoint> sorted = new ArrayList<>(unsorted);
        sorted.sort(Comparator.comparing(ProfilePoint::station));
        List<ProfilePoint> once = new ArrayList<>();
        for (ProfilePoint point : sorted) {
            boolean again = !once.isEmpty()
                    && point.station()
                                    .minus(once.get(once.size() - 1).station())
                                    .inches()
                            < SAME_STATION_IN;
            if (!again) once.add(point);
        }
        return new Profile(run, once);
    }

    /** A hollow shallower than this is no low point. Judgement. */
    private static final Length HOLLOW = Length.inches(2);

    /**
     * A shot lower than both its neighbours.
     *
     * @param deep below the highest ground on the lower of its two sides: how deep water may stand there
     */
    public record LowPoint(ProfilePoint at, Length deep) {}

    /** Where water crosses or stands: the low points that are more than two inches deep, by station. */
    public List<LowPoint> lowPoints() {
        List<LowPoint> low = new ArrayList<>();
        double[] highestAfter = new double[points.size() + 1];
        highestAfter[points.size()] = Double.NEGATIVE_INFINITY;
        for (int i = points.size() - 1; i >= 0; i--)
            highestAfter[i] =
                    Math.max(highestAfter[i + 1], points.get(i).elevation().inches());
        double highestBefore = Double.NEGATIVE_INFINITY;
        for (int i = 1; i + 1 < points.size(); i++) {
            highestBefore =
                    Math.max(highestBefore, points.get(i - 1).elevation().inches());
            double here = points.get(i).elevation().inches();
            boolean lowest = points.get(i - 1).elevation().inches() > here
                    && points.get(i + 1).elevation().inches() >= here;
            double deep = Math.min(highestBefore, highestAfter[i + 1]) - here;
            if (lowest && deep > HOLLOW.inches()) low.add(new LowPoint(points.get(i), new Length(deep)));
        }
        return List.copyOf(low);
    }

    /** Whether a station lies between the first and the last shot. */
    public boolean isMeasured(Offset station) {
        return !points.isEmpty()
                && station.compareTo(points.get(0).station()) >= 0
                && station.compareTo(points.get(points.size() - 1).station()) <= 0;
    }

    public Offset elevationAt(Offset station) {
        if (points.isEmpty()) return Offset.ZERO;
        ProfilePoint from = points.get(before(station));
        double alongIn = station.inches() - from.station().inches();
        return new Offset(from.elevation().inches() + gradeOfSegment(before(station)) * alongIn);
    }

    public Offset elevationAt(Length station) {
        return elevationAt(station.asOffset());
    }

    /** Grade just beyond a station, in the run's direction, + up; a face steeper than 19 to 1 counts as that. */
    public Slope gradeAfter(Offset station) {
        return slope(ratioAfter(station));
    }

    /** Grade of the straight line between the ground at two stations: the chord, + up. */
    public Slope gradeBetween(Offset from, Offset to) {
        double riseIn = elevationAt(to).inches() - elevationAt(from).inches();
        return slope(riseIn / (to.inches() - from.inches()));
    }

    /** The ground from one station to another: both ends and every shot between them. */
    public List<ProfilePoint> between(Offset from, Offset to) {
        List<ProfilePoint> part = new ArrayList<>();
        part.add(new ProfilePoint("", from, elevationAt(from)));
        for (int i = countUpTo(from);
                i < points.size() && points.get(i).station().compareTo(to) < 0;
                i++) part.add(points.get(i));
        part.add(new ProfilePoint("", to, elevationAt(to)));
        return List.copyOf(part);
    }

    /**
     * Level length of a stretch taped along the ground from a station: walks the polyline until the tape is used up, {@code S = sum of sqrt(ds^2 + dz^2)}.
     * On one even grade this is {@code L = sqrt(S^2 - dz^2)}. Check: SlopeTapeCheck.
     *
     * @param from where the tape starts
     * @param taped reading of the tape held along the ground
     */
    public Length levelLength(Length from, Length taped) {
        double left = taped.inches();
        double at = from.inches();
        while (true) {
            double grade = ratioAfter(new Offset(at));
            double perLevel = Math.sqrt(1 + grade * grade);
            int beyond = countUpTo(new Offset(at));
            double next = beyond < points.size() ? points.get(beyond).station().inches() : Double.POSITIVE_INFINITY;
            if ((next - at) * perLevel >= left) return new Length(at + left / perLevel - from.inches());
            left -= (next - at) * perLevel;
            at = next;
        }
    }

    /** The shot at or before a station that has one after it; the ends go on beyond. */
    private int before(Offset station) {
        return Math.max(0, Math.min(points.size() - 2, countUpTo(station) - 1));
    }

    /** How many shots lie at or before a station, by halving. */
    private int countUpTo(Offset station) {
        int low = 0;
        int high = points.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (points.get(middle).station().compareTo(station) <= 0) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    private double ratioAfter(Offset station) {
        return points.isEmpty() ? 0 : gradeOfSegment(before(station));
    }

    private static Slope slope(double ratio) {
        return new Slope(Math.max(-STEEPEST, Math.min(STEEPEST, ratio)));
    }

    private double gradeOfSegment(int first) {
        if (points.size() < 2) return 0;
        ProfilePoint a = points.get(first);
        ProfilePoint b = points.get(first + 1);
        return (b.elevation().inches() - a.elevation().inches())
                / (b.station().inches() - a.station().inches());
    }
}
