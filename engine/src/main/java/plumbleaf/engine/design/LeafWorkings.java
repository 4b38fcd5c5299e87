package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.gate.IceCoat;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Gravity;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.AfterHanging;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.LifeJudgement;
import plumbleaf.engine.sag.ShutAt;
import plumbleaf.engine.sag.WindWay;
import plumbleaf.engine.wind.LeafWind;
import plumbleaf.engine.wind.VelocityPressure;
import plumbleaf.engine.wind.WindTables;

/** What a leaf's pressures, drop, lean and frequency come from, line by line for the calculation book. */
final class LeafWorkings {
    private LeafWorkings() {}

    static Working wind(
            SiteWind site, Length top, WindTables tables, HungGate gate, HungLoads loads, List<CaseForces> cases) {
        List<WorkedLine> lines = new ArrayList<>();
        WorkedLine q = VelocityPressure.line(site, top, tables);
        lines.add(q);
        WorkedLine shut = pressure("p", q, site, loads.shut());
        WorkedLine open = pressure("po", q, site, loads.open());
        lines.add(shut);
        WorkedLine push = push("F", shut, gate.leaf(), loads.shut());
        lines.add(push);
        held(gate, push, loads.shut(), cases).ifPresent(lines::add);
        lines.add(open);
        lines.add(push("Fo", open, gate.leaf(), loads.open()));
        return new Working(
                "Wind on leaf " + gate.leaf().id() + ", shut (" + loads.shut().windCase() + ") and standing open ("
                        + loads.open().windCase() + ")",
                "ASCE " + site.edition().key() + " 26.10, 29.3.1, 29.4, 29.7, 2.4.1",
                "G with Kd where q has none; Cf the mean over the leaf, raised where the whole face would get under 16 psf; A its face",
                lines);
    }

    private static WorkedLine pressure(String name, WorkedLine q, SiteWind site, LeafWind wind) {
        double gust = VelocityPressure.gustAndDirection(site);
        return WorkedLine.of(name, "q \u00d7 G \u00d7 Cf")
                .put(q)
                .put("G", gust)
                .put("Cf", wind.coefficient())
                .gives(wind.pressure().psf(), "psf");
    }

    private static WorkedLine push(String name, WorkedLine pressure, Leaf leaf, LeafWind wind) {
        double faceFt2 = leaf.outline().face().inSquareFeet();
        return WorkedLine.of(name, "0.6 \u00d7 " + pressure.symbol() + " \u00d7 A")
                .put(pressure)
                .put("A", faceFt2, "ft\u00b2")
                .note(DecimalText.fixed(wind.height().inches(), 2) + " in. above grade")
                .gives(Combination.D_W.wind() * wind.pressure().psf() * faceFt2, "lb");
    }

    /** The latch of a leaf that leans on nothing else: moments about the pins. */
    private static Optional<WorkedLine> held(HungGate gate, WorkedLine push, LeafWind wind, List<CaseForces> cases) {
        if (gate.shutAt() != ShutAt.LATCH) return Optional.empty();
        Leaf leaf = gate.leaf();
        return cases.stream()
                .filter(each -> each.combination() == Combination.D_W
                        && each.state() == LeafState.CLOSED
                        && each.wind() == WindWay.IN)
                .findFirst()
                .map(each -> latch(leaf, push, wind, each));
    }

    /** By statics; the frame in space, which knows its own slopes, is named beside it. */
    private static WorkedLine latch(Leaf leaf, WorkedLine push, LeafWind wind, CaseForces shut) {
        double middle = (leaf.outline().hingeEdge().inches()
                        + leaf.outline().latchEdge().inches())
                / 2;
        double stile = leaf.of(MemberRole.LATCH_STILE).get(0).middle().r().inches();
        return WorkedLine.of("R", "F \u00d7 (m + o) / l")
                .put(push)
                .put("m", middle, "in.")
                .put("o", wind.offCentre())
                .put("l", stile, "in.")
                .note(
                        "on the latch, of moments about the pins: m to the middle of the face, o off it (Case B), l to the latch stile; the frame in space gives "
                                + WorkedLine.number(Math.abs(shut.hold().pounds())) + " lb")
                .gives(push.value() * (middle + wind.offCentre().inches()) / stile, "lb");
    }

    /** @param soil what the pier's spring in likely soil comes from, where that is soil alone */
    static Working drop(HungLeaf hung, List<WorkedLine> soil, LifeJudgement life) {
        HungGate gate = hung.gate();
        GateSag sag = hung.sag();
        List<CaseForces> cases = hung.cases();
        List<WorkedLine> lines = new ArrayList<>();
        Leaf leaf = gate.leaf();
        double corner = leaf.freeCorner().r().inches();
        pier(gate).flatMap(pier -> turn(pier, sag, cases)).ifPresent(turn -> {
            double axis =
                    gate.hinge().pinOffset().inches() + gate.hingePostCentre().inches();
            lines.addAll(soil);
            lines.addAll(turn);
            lines.add(WorkedLine.of("footing", "\u03b8 \u00d7 (b + e)")
                    .put(turn.get(turn.size() - 1))
                    .put("b", corner, "in.")
                    .put("e", axis, "in.")
                    .note("b from the pins to the corner, e on to the post's axis")
                    .gives(sag.byCause().footing().inches(), "in."));
        });
        if (leaf.pins().size() > 1 && sag.byCause().hingeSlack().inches() > 0)
            lines.add(WorkedLine.of("play", "2 \u00d7 s \u00d7 b / d")
                    .put("s", gate.hinge().slack())
                    .put("b", corner, "in.")
                    .put("d", leaf.pinSpacing())
                    .note("a turn of the whole leaf, beside the elastic drop")
                    .gives(sag.byCause().hingeSlack().inches(), "in."));
        lines.addAll(PostWorkings.gives(gate, sag));
        lines.add(WorkedLine.of("drop", "leaf + hinges + post + footing + play")
                .put("leaf", sag.byCause().leaf().inches(), "in.")
                .put("hinges", sag.byCause().hingeFlex().inches(), "in.")
                .put("post", sag.byCause().post().inches(), "in.")
                .put("footing", sag.byCause().footing().inches(), "in.")
                .put("play", sag.byCause().hingeSlack().inches(), "in.")
                .note("by the stiffness of the whole; the leaf's own part by virtual work")
                .gives(sag.total().inches(), "in."));
        lines.addAll(after(hung, life));
        return new Working(
                "Drop of the free latch corner, dead load, likely soil",
                "unit load method: \u03a3 integral of (M m / EI + N n / EA + T t / GJ) + \u03a3 springs",
                "M and P what the post brings to grade; ka, kc, kb the pier's spring there, P = ka y + kc \u03b8, M = kc y + kb \u03b8",
                lines);
    }

    /** What comes after hanging, in likely soil. */
    private static List<WorkedLine> after(HungLeaf hung, LifeJudgement life) {
        AfterHanging after = hung.sag().byTime().afterHanging();
        Leaf leaf = hung.gate().leaf();
        double footing = hung.sag().byCause().footing().inches();
        List<WorkedLine> lines = new ArrayList<>();
        WorkedLine creep = WorkedLine.of("creep", "cg \u00d7 footing + (kp - 1) \u00d7 post")
                .put("cg", life.groundCreep())
                .put("footing", footing, "in.")
                .put("kp", hung.gate().hingePost().lastingBend())
                .put("post", hung.sag().byCause().post().inches(), "in.")
                .note("of ground and post in the years after, likely soil; kp 1 but for wood, NDS 3.5.2")
                .gives(after.creep().inches(), "in.");
        WorkedLine wear = WorkedLine.of("wear", "2 \u00d7 w \u00d7 b / d")
                .put("w", life.wear())
                .put("b", leaf.freeCorner().r().inches(), "in.")
                .put("d", leaf.pinSpacing())
                .note("of each hinge, judgement")
                .gives(after.wear().inches(), "in.");
        WorkedLine season = WorkedLine.of("season", "cs \u00d7 footing")
                .put("cs", life.softSeason())
                .put("footing", footing, "in.")
                .note("judgement")
                .gives(after.season().inches(), "in.");
        lines.add(creep);
        lines.add(wear);
        lines.add(season);
        lines.add(WorkedLine.of("after", "creep + wear + season + person")
                .put(creep)
                .put(wear)
                .put(season)
                .put("person", after.residual().inches(), "in.")
                .note(DecimalText.upTo(life.residual(), 3)
                        + " of what a person brings it down; in soft soil "
                        + WorkedLine.number(hung.sag().afterHangingSoft().inches()) + " in., which is judged")
                .gives(after.total().inches(), "in."));
        return lines;
    }

    private static Optional<PierSpring> pier(HungGate gate) {
        return gate.foot().likely().match(Optional::of, planes -> Optional.empty(), wall -> Optional.empty());
    }

    private static Optional<List<WorkedLine>> turn(PierSpring pier, GateSag sag, List<CaseForces> cases) {
        return cases.stream()
                .filter(each -> each.combination() == Combination.D && each.state() == LeafState.CLOSED)
                .findFirst()
                .map(each -> List.of(WorkedLine.of("\u03b8", "(ka \u00d7 M - kc \u00d7 P) / (ka \u00d7 kb - kc\u00b2)")
                        .put("ka", pier.lateralLbPerIn(), "lb/in.")
                        .put("M", each.hingePost().momentAlong().poundInches(), "lb-in")
                        .put("kc", pier.couplingLb(), "lb")
                        .put("P", each.hingePost().along().pounds(), "lb")
                        .put("kb", pier.rotationalLbIn(), "lb-in/rad")
                        .note("turn of the footing")
                        .gives(sag.footingTurn().radians(), "rad")));
    }

    /**
     * The moment that the leaf's weight adds as its post leans.
     *
     * @param soil what the pier's spring in soft soil comes from, where that is soil alone
     */
    static Working lean(HungLeaf hung, List<WorkedLine> soil) {
        HungGate gate = hung.gate();
        PierSpring soft = gate.foot().soft().across();
        double height = hung.hinges().get(hung.hinges().size() - 1).z().inches();
        double weight = gate.leaf()
                .weight()
                .wet()
                .plus(gate.hingePost().weightOf(gate.hingePostHeight()))
                .pounds();
        double modulus = gate.hingePost().elasticModulus().psi();
        double inertia = Math.min(gate.hingePost().ixIn4(), gate.hingePost().iyIn4());
        double a = Math.sqrt(weight / (modulus * inertia));
        double spring = soft.rotationalLbIn() - soft.couplingLb() * soft.couplingLb() / soft.lateralLbPerIn();
        WorkedLine k = WorkedLine.of("k", "kb - kc\u00b2 / ka")
                .put("kb", soft.rotationalLbIn(), "lb-in/rad")
                .put("kc", soft.couplingLb(), "lb")
                .put("ka", soft.lateralLbPerIn(), "lb/in.")
                .note("the footing free to shift, soft soil")
                .gives(spring, "lb-in/rad");
        WorkedLine al = WorkedLine.of("a", "sqrt(P / (E \u00d7 I))")
                .put("P", weight, "lb")
                .put("E", modulus, "psi")
                .put("I", inertia, "in4")
                .note("per inch; P leaf and post")
                .gives(a);
        WorkedLine x = WorkedLine.of("x", "a \u00d7 L")
                .put(al)
                .put("L", height, "in.")
                .note("L to the top hinge")
                .gives(a * height);
        return new Working(
                "Second order: what the lean of post " + hung.post() + " adds to the moment at its foot",
                "exact beam-column on a turning foot; AISC 360-22 C2.1",
                "a factor on the first-order moment; above 1.1 first-order numbers are short",
                Stream.concat(
                                soil.stream(),
                                Stream.of(
                                        k,
                                        al,
                                        x,
                                        WorkedLine.of("B", "tan(x) / x / (1 - P \u00d7 tan(x) / (a \u00d7 k))")
                                                .put(x)
                                                .put("P", weight, "lb")
                                                .put(al)
                                                .put(k)
                                                .gives(hung.amplification())))
                        .toList());
    }

    static Working ice(HungLeaf hung, IceCoat coat) {
        return new Working(
                "Ice on leaf " + hung.id(),
                "ASCE 7-16 10.4.1, equations 10.4-1 and 10.4-2 (from memory)",
                "t design thickness, as the job gives it; strength by D + L + 0.7 Di and D + 0.7 Di + 0.7 Wi; the latch corner goes "
                        + hung.sag()
                                .ice()
                                .map(drop -> WorkedLine.number(drop.drop().inches()) + " in. down")
                                .orElse("nowhere")
                        + " by Di alone until it thaws",
                coat.lines(hung.gate().leaf()));
    }

    static Working frequency(GateSag sag) {
        return new Working(
                "Lowest natural frequency of the closed leaf",
                "Rayleigh's quotient of the shape it shakes in",
                "k and W of that shape, its largest shift taken as 1 in.: k = u K u, W = g u M u; g 386.089 in./s\u00b2",
                List.of(WorkedLine.of("f", "sqrt(k \u00d7 g / W) / (2 \u00d7 \u03c0)")
                        .put("k", sag.sway().modeLbPerIn(), "lb/in.")
                        .put("g", Gravity.IN_PER_S2, "in./s\u00b2")
                        .put("W", sag.sway().modePounds(), "lb")
                        .gives(sag.sway().hertz(), "Hz")));
    }
}
