package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Works out one swing over the ground. */
final class Swings {
    /** No leaf is looked at further round than this. */
    static final double HALF_TURN = Math.PI;

    private static final double CURVE_STEP_DEG = 2.5;
    private static final int MAP_ANGLES = 19;
    private static final int MAP_RADII = 9;

    private final SwingAsk ask;
    private final SwingAxes axes;
    private final List<GroundCell> cells;
    private final Sweeps sweeps;
    private final LowEdge plane;
    private final List<LowStrip> strips;
    private final double tipIn;
    private final double risePerRad;

    private Swings(SwingAsk ask, GroundUnder ground) {
        this.ask = ask;
        this.axes = SwingAxes.of(ask.opening(), ask.hand(), ask.hinge().pin());
        double pinSide = axes.pinSide().inches();
        this.plane = CladdingFaces.plane(ask.outline()).shifted(-pinSide);
        this.strips = CladdingFaces.strips(ask.outline(), ask.parts(), axes.viewerSign()).stream()
                .map(strip -> strip.shifted(-pinSide))
                .toList();
        this.tipIn = ask.outline().latchEdge().inches();
        double reach = reach(-plane.sideIn());
        for (LowStrip strip : strips) reach = Math.max(reach, Math.max(reach(-strip.nearIn()), reach(strip.farIn())));
        Length cover = Length.inches(reach + 1);
        PlanPoint pin = axes.pin();
        this.risePerRad = ask.hinge().risePerDegree().inches() * 180 / Math.PI;
        this.cells = GroundCell.within(
                cover.inches(), ground.around(pin, Length.inches(tipIn), cover), axes, ground.elevation(pin));
        this.sweeps = new Sweeps(cells, risePerRad);
    }

    static Swing of(SwingAsk ask, GroundUnder ground) {
        return new Swings(ask, ground).swing();
    }

    /** The same without the curve and the map, which are half the work and are only drawn: for what is tried, or priced. */
    static Swing tried(SwingAsk ask, GroundUnder ground) {
        return new Swings(ask, ground).swing(false);
    }

    /** The sweep itself, for the remedies that look along it. */
    static Swings over(SwingAsk ask, GroundUnder ground) {
        return new Swings(ask, ground);
    }

    Swing swing() {
        return swing(true);
    }

    /** @param drawn with its curve and its map */
    Swing swing(boolean drawn) {
        double opens = opensRad();
        Low least = sweeps.least(plane, 0, opens);
        Low faces = least;
        for (LowStrip strip : strips) faces = faces.orLess(sweeps.least(strip, 0, opens));
        Low running = running();
        double contact = sweeps.firstContact(List.of(plane), HALF_TURN);
        SwingLimit limit = contact < HALF_TURN ? new SwingLimit.Ground() : new SwingLimit.Nothing();
        for (StandingThing thing : ask.things()) {
            double struck = contactWith(thing);
            if (struck < contact) {
                contact = struck;
                limit = new SwingLimit.Struck(thing.what());
            }
        }
        return new Swing(
                ask.hand(),
                ask.opens(),
                clearance(least),
                clearance(faces),
                clearance(running),
                Offset.inches(sweeps.clearance(plane, within(running.rIn()), 0)),
                Angle.radians(contact),
                limit,
                ask.shotError(),
                clearance(sweeps.mostAt(plane, 0)),
                drawn ? curve(opens, least.angleRad()) : List.of(),
                drawn ? map(opens) : new ClearanceMap(List.of(), List.of(), List.of()),
                drawn ? new SwingLines(sweeps, cells, risePerRad).at("c", plane, least) : List.of());
    }

    /** Whether the running leaf clears the ground by this much: looked at closed and wide open first, where most that fail do. */
    boolean runningClears(double marginIn) {
        return runningAt(0).clearIn() >= marginIn
                && runningAt(opensRad()).clearIn() >= marginIn
                && running().clearIn() >= marginIn;
    }

    private Low running() {
        double opens = opensRad();
        double drop = ask.drop().inches();
        double rise = ask.laterRise().inches();
        Low running = sweeps.least(runningPlane(), 0, opens);
        for (LowStrip strip : strips)
            running = running.orLess(sweeps.least(strip.lowered(drop, tipIn, rise), 0, opens));
        return running;
    }

    private double opensRad() {
        return Math.min(HALF_TURN, Math.max(0, ask.opens().radians()));
    }

    /** Least clearance at one angle with drop and later ground counted. */
    Low runningAt(double angleRad) {
        return sweeps.leastAt(runningPlane(), angleRad);
    }

    /** The ground under the running leaf at each of these angles. */
    List<UnderEdge> underRunning(List<OpenAt> angles) {
        LowEdge running = runningPlane();
        return angles.stream().map(open -> sweeps.under(running, open)).toList();
    }

    /** Height of the ground under the leaf's middle plane, from grade at the pin. */
    double groundIn(double rIn, OpenAt open) {
        LowEdge atGrade = new LowEdge(plane.fromIn(), plane.toIn(), 0, 0, plane.sideIn());
        return risePerRad * open.rad() - sweeps.clearance(atGrade, rIn, open);
    }

    double fromIn() {
        return plane.fromIn();
    }

    double tipIn() {
        return tipIn;
    }

    private LowEdge runningPlane() {
        return plane.lowered(ask.drop().inches(), tipIn, ask.laterRise().inches());
    }

    /**
     * The open angle at which the leaf's leading face reaches a thing that stands at a point: {@code q = f - asin(e / R)} for the point's polar place
     * (R, f) and the face e off the pin, to the swing side; half a turn where the leaf passes clear or the thing stands
     * behind the closed leaf.
     */
    private double contactWith(StandingThing thing) {
        double x = axes.alongIn(thing.at());
        double y = axes.sideIn(thing.at());
        double radius = Math.sqrt(x * x + y * y);
        double face = plane.sideIn();
        for (LowStrip strip : strips) face = Math.max(face, strip.farIn());
        if (y < plane.sideIn() || radius > reach(face) || radius <= Math.abs(face)) return HALF_TURN;
        double angle = StrictMath.atan2(y, x) - StrictMath.asin(face / radius);
        return Math.max(0, Math.min(HALF_TURN, angle));
    }

    private double reach(double faceIn) {
        return Math.sqrt(tipIn * tipIn + faceIn * faceIn);
    }

    private List<Clearance> curve(double opens, double leastAt) {
        List<Double> angles = new ArrayList<>();
        double step = CURVE_STEP_DEG * Math.PI / 180;
        for (int i = 0; i * step < opens - 1e-9; i++) angles.add(i * step);
        angles.add(opens);
        if (!angles.contains(leastAt)) angles.add(leastAt);
        angles.sort(Double::compare);
        return angles.stream()
                .map(angle -> clearance(sweeps.leastAt(plane, angle)))
                .toList();
    }

    private ClearanceMap map(double opens) {
        List<Angle> angles = new ArrayList<>();
        List<Length> radii = new ArrayList<>();
        List<List<Offset>> clear = new ArrayList<>();
        for (int j = 0; j < MAP_RADII; j++)
            radii.add(Length.inches(plane.fromIn() + (plane.toIn() - plane.fromIn()) * j / (MAP_RADII - 1)));
        for (int i = 0; i < MAP_ANGLES; i++) {
            OpenAt open = OpenAt.angle(opens * i / (MAP_ANGLES - 1));
            angles.add(Angle.radians(open.rad()));
            clear.add(radii.stream()
                    .map(r -> Offset.inches(sweeps.clearance(plane, r.inches(), open)))
                    .toList());
        }
        return new ClearanceMap(angles, radii, clear);
    }

    private double within(double rIn) {
        return Math.max(plane.fromIn(), Math.min(plane.toIn(), rIn));
    }

    private static Clearance clearance(Low low) {
        return new Clearance(
                Offset.inches(low.clearIn()), Length.inches(Math.max(0, low.rIn())), Angle.radians(low.angleRad()));
    }
}
