package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.WorkedLine;

/** Bolts and lag screws of a hinge in a wood post, line by line for the calculation book: what one carries, then all it is held against; the last line is {@code ratio}. */
public final class WoodFixingWorking {
    private final WoodFixing fixing;
    private final double duration;
    private final List<WorkedLine> lines = new ArrayList<>();
    private final WorkedLine v;
    private final WorkedLine t;

    /**
     * @param share lines of {@link BoltSteps#share}
     * @param duration CD
     */
    private WoodFixingWorking(WoodFixing fixing, double duration, List<WorkedLine> share) {
        this.fixing = fixing;
        this.duration = duration;
        lines.addAll(share);
        this.v = share.get(1);
        this.t = share.get(2);
    }

    /** Forces and moments as {@link BoltRow#share} takes them. */
    public record Carried(double across, double along, double off, double twist, double tilt, double roll) {
        private BoltRow.Share of(BoltRow row) {
            return row.share(across, along, off, twist, tilt, roll);
        }

        private List<WorkedLine> lines(BoltRow row) {
            return BoltSteps.share(row, across, along, off, twist, tilt, roll);
        }
    }

    /**
     * @param over outside of the washer on the wood
     * @param hole under it
     */
    public static List<WorkedLine> bolts(
            WoodFixing fixing, BoltRow row, Bolt bolt, Length over, Length hole, Carried carried, double duration) {
        WoodFixingWorking working = new WoodFixingWorking(fixing, duration, carried.lines(row));
        List<WorkedLine> steel = BoltSteps.steel(bolt, working.v, working.t);
        working.lines.addAll(steel);
        WorkedLine side = working.sideways(carried.of(row).toRowDeg());
        WorkedLine under = working.washer(over, hole);
        double ratio = Math.max(
                bolt.use(carried.of(row).shear(), carried.of(row).tension()),
                Math.max(working.v.value() / side.value(), working.t.value() / under.value()));
        working.lines.add(BoltSteps.most(steel, "; V / Z'; T / Rw")
                .put(working.v)
                .put(side)
                .put(working.t)
                .put(under)
                .gives(ratio));
        return working.lines;
    }

    /** Lags: pushed and pulled at once. */
    public static List<WorkedLine> lags(
            LagScrew screw, WoodFixing fixing, BoltRow row, Carried carried, double duration) {
        WoodFixingWorking working = new WoodFixingWorking(fixing, duration, carried.lines(row));
        WorkedLine side = working.sideways(carried.of(row).toRowDeg());
        WorkedLine out = working.pulled(screw);
        double both = Math.sqrt(working.v.value() * working.v.value() + working.t.value() * working.t.value());
        if (both == 0) return List.of();
        WorkedLine whole = working.add(WorkedLine.of("R", "sqrt(V\u00b2 + T\u00b2)")
                .put(working.v)
                .put(working.t)
                .gives(both, "lb"));
        double may = both
                / LagScrew.use(
                        carried.of(row).shear(),
                        carried.of(row).tension(),
                        fixing.sideways(carried.of(row).toRowDeg(), duration),
                        screw.pulled(fixing.post(), duration));
        WorkedLine allowed = working.add(
                WorkedLine.of("Za'", "Wp \u00d7 Z' \u00d7 R\u00b2 / (Wp \u00d7 V\u00b2 + Z' \u00d7 T\u00b2)")
                        .put(out)
                        .put(side)
                        .put(whole)
                        .put(working.v)
                        .put(working.t)
                        .note("12.4-1, its cosine V / R, its sine T / R")
                        .gives(may, "lb"));
        working.add(WorkedLine.of("ratio", "R / Za'").put(whole).put(allowed).gives(both / may));
        return working.lines;
    }

    /** {@code Z'}: how hard the wood bears at that angle, the six ways to yield, and what time, water and place leave of them. */
    private WorkedLine sideways(double toGrainDeg) {
        double g = fixing.post().species().ovenDryGravity();
        double d = fixing.diameter().inches();
        double sine = StrictMath.sin(StrictMath.toRadians(toGrainDeg));
        YieldModes modes = fixing.modes(toGrainDeg);
        WorkedLine s = add(WorkedLine.of("s", "sin(\u03b8 \u00d7 \u03c0 / 180)")
                .put("\u03b8", toGrainDeg)
                .note("\u03b8 between V and the grain: tan \u03b8 = (Py / n + Mt m) / (Pz / n)")
                .gives(sine));
        WorkedLine along = add(WorkedLine.of("Fp", "11200 \u00d7 G")
                .put("G", g)
                .note("wood bears along its grain, 12.3.3")
                .gives(DowelBearing.along(g).psi(), "psi"));
        WorkedLine across = add(WorkedLine.of("Fq", "6100 \u00d7 G^1.45 / sqrt(d)")
                .put("G", g)
                .put("d", d)
                .note("across it, d in inches")
                .gives(DowelBearing.across(g, fixing.diameter()).psi(), "psi"));
        WorkedLine fem = add(WorkedLine.of("Fem", "Fp \u00d7 Fq / (Fp \u00d7 s\u00b2 + Fq \u00d7 (1 - s\u00b2))")
                .put(along)
                .put(across)
                .put(s)
                .note("12.3-11")
                .gives(modes.mainBearing().psi(), "psi"));
        List<WorkedLine> yield = YieldWorking.of(modes, fem);
        lines.addAll(yield);
        WorkedLine place = place();
        return add(WorkedLine.of("Z'", "Z \u00d7 CD \u00d7 CM \u00d7 Cd")
                .put(yield.get(yield.size() - 1))
                .put("CD", duration)
                .put("CM", WoodFixing.WET)
                .put(place)
                .note("CM wet, Table 11.3.3")
                .gives(fixing.sideways(toGrainDeg, duration)));
    }

    private WorkedLine place() {
        boolean lone = fixing.apart().isZero();
        WorkedLine.Open line = WorkedLine.of(
                        "Cd", lone ? "min(1; e / (4 \u00d7 d))" : "min(1; a / (4 \u00d7 d); e / (4 \u00d7 d))")
                .put("e", fixing.toEnd())
                .put("d", fixing.diameter())
                .note(lone ? "e to the post's top, 12.5.1" : "a apart, e to the post's top, 12.5.1");
        if (!lone) line.put("a", fixing.apart());
        return add(line.gives(fixing.geometry()));
    }

    private WorkedLine washer(Length over, Length hole) {
        double w = over.inches();
        double areaIn2 = Math.PI / 4 * (w * w - hole.inches() * hole.inches());
        WorkedLine area = add(WorkedLine.of("Aw", "\u03c0 \u00d7 (w\u00b2 - h\u00b2) / 4")
                .put("w", over)
                .put("h", hole)
                .note("under the washer")
                .gives(areaIn2, "in\u00b2"));
        WorkedLine spread = add(WorkedLine.of("Cb", "(w + 0.375) / w")
                .put("w", w)
                .note("3.10.4, w in inches")
                .gives(WoodFixing.spread(over)));
        return add(WorkedLine.of("Rw", "Fc \u00d7 CM \u00d7 Cb \u00d7 Aw")
                .put("Fc", fixing.post().grade().acrossGrain().psi(), "psi")
                .put("CM", WoodFixing.WET_ACROSS)
                .put(spread)
                .put(area)
                .note("across the grain, wet, 3.10.2")
                .gives(fixing.washer(over, hole)));
    }

    private WorkedLine pulled(LagScrew screw) {
        double g = fixing.post().species().ovenDryGravity();
        WorkedLine inch = add(WorkedLine.of("W", "1800 \u00d7 G^1.5 \u00d7 d^0.75")
                .put("G", g)
                .put("d", fixing.diameter().inches())
                .note("12.2-1, to an inch of thread, d in inches")
                .gives(Withdrawal.lagPerInch(g, fixing.diameter()).pounds(), "lb/in."));
        return add(WorkedLine.of("Wp", "W \u00d7 p \u00d7 CD \u00d7 CM")
                .put(inch)
                .put("p", screw.thread())
                .put("CD", duration)
                .put("CM", WoodFixing.WET)
                .note("p the thread that holds, no point")
                .gives(screw.pulled(fixing.post(), duration)));
    }

    private WorkedLine add(WorkedLine line) {
        lines.add(line);
        return line;
    }
}
