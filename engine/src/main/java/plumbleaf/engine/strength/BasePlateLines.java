package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.material.Concrete;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.support.Support;

/** A base plate and its anchors under one combination, line by line for the calculation book. */
final class BasePlateLines {
    private final BasePlateAnchors at;
    private final Section post;
    private final Support.SlabPlate on;
    private final Length toEdge;
    private final List<WorkedLine> lines = new ArrayList<>();

    /** @param toEdge from the anchors to the edge of the slab */
    BasePlateLines(BasePlateAnchors at, Section post, Support.SlabPlate on, Length toEdge) {
        this.at = at;
        this.post = post;
        this.on = on;
        this.toEdge = toEdge;
    }

    /** The balance both ways, the pull with its prying, the push and the plate's thickness; then the end of each check named. */
    List<WorkedLine> to(List<String> checks) {
        BaseAction action = at.action().action();
        double side = on.plate().side().inches();
        double half = side / 2;
        double arm = on.plate().anchorSpacing().inches() / 2;
        double down = Math.max(0, action.down().pounds()) / 2;
        WorkedLine fp = WorkedLine.of("fp", "0.85 \u00d7 fc / 2.31")
                .put("fc", on.slab().strength().psi(), "psi")
                .note("J8, omega 2.31")
                .gives(BasePlateAnchors.bearing(on.slab()).psi(), "psi");
        WorkedLine q =
                WorkedLine.of("q", "fp \u00d7 B").put(fp).put("B", side, "in.").gives(fp.value() * side, "lb/in.");
        lines.add(fp);
        lines.add(q);
        OneWay along = oneWay("x", Math.abs(action.momentAlong().poundInches()), down, q, half, arm);
        OneWay across = oneWay("y", Math.abs(action.momentAcross().poundInches()), down, q, half, arm);
        WorkedLine pull = pull(along, across, action);
        WorkedLine[] pulled = prying(pull);
        WorkedLine push = push(action);
        for (String check : checks) end(check, along, across, fp, pull, pulled[0], pulled[1], push);
        return List.copyOf(lines);
    }

    private record OneWay(WorkedLine crushing, WorkedLine strip, WorkedLine pair) {}

    private OneWay oneWay(String way, double moment, double down, WorkedLine q, double half, double arm) {
        BasePlateAnchors.OneWay is = BasePlateAnchors.OneWay.of(moment, down, on.plate(), q.value());
        WorkedLine crushing = WorkedLine.of("c" + way, "2 \u00d7 (M + N \u00d7 f) / q / (b + f)\u00b2")
                .put("M", moment, "lb-in")
                .put("N", down, "lb")
                .put("f", arm, "in.")
                .put(q)
                .put("b", half, "in.")
                .note("half of the weight each way; f to the anchors, b half the plate")
                .gives(is.crushing());
        WorkedLine strip = WorkedLine.of("Y" + way, "b + f - (b + f) \u00d7 sqrt(max(0; 1 - c" + way + "))")
                .put("b", half, "in.")
                .put("f", arm, "in.")
                .put(crushing)
                .note("strip of concrete that is pressed")
                .gives(is.strip(), "in.");
        WorkedLine pair = WorkedLine.of("T" + way, "max(0; q \u00d7 Y" + way + " - N)")
                .put(q)
                .put(strip)
                .put("N", down, "lb")
                .note("pull of two anchors")
                .gives(is.pairLb(), "lb");
        lines.addAll(List.of(crushing, strip, pair));
        return new OneWay(crushing, strip, pair);
    }

    private WorkedLine pull(OneWay along, OneWay across, BaseAction action) {
        double lifts = Math.max(0, -action.down().pounds());
        WorkedLine pull = WorkedLine.of("T", "(Tx + Ty) / 2 + U / 4")
                .put(along.pair())
                .put(across.pair())
                .put("U", lifts, "lb")
                .note("on the corner anchor; U what lifts the post")
                .gives((along.pair().value() + across.pair().value()) / 2 + lifts / 4, "lb");
        lines.add(pull);
        return pull;
    }

    /** Lever of the anchor and its pull with prying: {@code l} and {@code R}. */
    private WorkedLine[] prying(WorkedLine pull) {
        double inside = BasePlateAnchors.bendingLineIn(post);
        double spacing = on.plate().anchorSpacing().inches();
        double lever = Math.max(0, spacing / 2 - inside);
        WorkedLine l = WorkedLine.of("l", "max(0; s / 2 - m)")
                .put("s", spacing, "in.")
                .put("m", inside, "in.")
                .note(
                        "from the anchor to where the plate bends: m 0.4 of a round post's width, 0.475 of a square one's")
                .gives(lever, "in.");
        lines.add(l);
        double prying = at.prying().pounds();
        if (prying > 0) {
            double d = on.anchors().diameter().inches();
            double t = on.plate().thickness().inches();
            double b = lever - d / 2;
            double width = BasePlateAnchors.widthIn(lever, on.plate());
            double net = Math.max(0.1, 1 - (d + BasePlateAnchors.HOLE_OVER_ANCHOR_IN) / width);
            double out = Math.min(on.plate().anchorEdge().inches(), 1.25 * lever) + d / 2;
            double fu = BasePlateAnchors.ULTIMATE.psi();
            double strength = width * fu * t * t / (4 * BasePlateAnchors.BENDING_SAFETY * b);
            WorkedLine p = WorkedLine.of("p", "min(B / 2; 2 \u00d7 l)")
                    .put("B", on.plate().side())
                    .put(l)
                    .gives(width, "in.");
            WorkedLine g = WorkedLine.of("\u03b4", "max(0.1; 1 - (da + 0.125) / p)")
                    .put("da", d, "in.")
                    .put(p)
                    .note("net share at the anchor's hole")
                    .gives(net);
            WorkedLine a = WorkedLine.of("a'", "min(ae; 1.25 \u00d7 l) + da / 2")
                    .put("ae", on.plate().anchorEdge())
                    .put(l)
                    .put("da", d, "in.")
                    .gives(out, "in.");
            WorkedLine w = WorkedLine.of("P", "p \u00d7 Fu \u00d7 t\u00b2 / (4 \u00d7 1.67 \u00d7 (l - da / 2))")
                    .put(p)
                    .put("Fu", fu, "psi")
                    .put("t", t, "in.")
                    .put(l)
                    .put("da", d, "in.")
                    .note("pull at which the plate bends by itself")
                    .gives(strength, "lb");
            WorkedLine k = WorkedLine.of("\u03b1", "max(0; min(1; (T / P - 1) / \u03b4))")
                    .put(pull)
                    .put(w)
                    .put(g)
                    .gives(Math.max(0, Math.min(1, (pull.value() / strength - 1) / net)));
            lines.addAll(List.of(p, g, a, w, k));
            lines.add(WorkedLine.of("Q", "\u03b4 \u00d7 \u03b1 \u00d7 (l - da / 2) / a' \u00d7 P")
                    .put(g)
                    .put(k)
                    .put(l)
                    .put("da", d, "in.")
                    .put(a)
                    .put(w)
                    .note("prying, Manual part 9")
                    .gives(at.prying()));
        }
        WorkedLine r = WorkedLine.of("R", prying > 0 ? "T + Q" : "T")
                .put(pull)
                .putWhere(prying > 0, "Q", prying)
                .note("pull of one anchor")
                .gives(at.pull());
        lines.add(r);
        return new WorkedLine[] {l, r};
    }

    private WorkedLine push(BaseAction action) {
        WorkedLine push = WorkedLine.of("V", "H / 4 + Tz / (4 \u00d7 s / sqrt(2))")
                .put("H", action.push())
                .put("Tz", Math.abs(action.torsion().poundInches()), "lb-in")
                .put("s", on.plate().anchorSpacing())
                .note("push on one anchor")
                .gives(at.push());
        lines.add(push);
        return push;
    }

    private void end(
            String check,
            OneWay along,
            OneWay across,
            WorkedLine fp,
            WorkedLine pull,
            WorkedLine l,
            WorkedLine r,
            WorkedLine push) {
        switch (check) {
            case "plate.thickness" -> thickness(along, across, fp, pull, l);
            case "plate.bearing" ->
                lines.add(WorkedLine.of("bearing", "max(cx; cy)")
                        .put(along.crushing())
                        .put(across.crushing())
                        .note("ratio of the concrete under the plate's edge")
                        .gives(at.crushing()));
            case "anchor.breakout" -> tension(r);
            case "anchor.edge" -> shear(push);
            case "slab.tipping" -> tipping();
            case "slab.bending" -> bending();
            case "anchor.sheet" -> sheet(r, push);
            default -> {}
        }
    }

    private void thickness(OneWay along, OneWay across, WorkedLine fp, WorkedLine pull, WorkedLine l) {
        double yield = BasePlateAnchors.YIELD.psi();
        double inside = BasePlateAnchors.bendingLineIn(post);
        double out = Math.max(0, on.plate().side().inches() / 2 - inside);
        double pressed = Math.min(Math.max(along.strip().value(), across.strip().value()), out);
        WorkedLine o = WorkedLine.of("o", "max(0; B / 2 - m)")
                .put("B", on.plate().side())
                .put("m", inside, "in.")
                .gives(out, "in.");
        WorkedLine y = WorkedLine.of("Yo", "min(max(Yx; Yy); o)")
                .put(along.strip())
                .put(across.strip())
                .put(o)
                .gives(pressed, "in.");
        WorkedLine tc = WorkedLine.of("tc", "sqrt(4 \u00d7 1.67 \u00d7 fp \u00d7 Yo \u00d7 (o - Yo / 2) / Fy)")
                .put(fp)
                .put(y)
                .put(o)
                .put("Fy", yield, "psi")
                .note("bent up by the concrete, Design Guide 1 3.3")
                .gives(
                        BasePlateAnchors.compressionThickness(
                                Math.max(along.strip().value(), across.strip().value()),
                                inside,
                                on.plate(),
                                BasePlateAnchors.bearing(on.slab())),
                        "in.");
        lines.addAll(List.of(o, y, tc));
        boolean bentByAnchors = l.value() > 0;
        WorkedLine.Open ratio = WorkedLine.of("plate", bentByAnchors ? "max(tc; tt) / t" : "tc / t")
                .put(tc);
        if (bentByAnchors) {
            WorkedLine tt = byAnchors(pull, l);
            lines.add(tt);
            ratio.put(tt);
        }
        lines.add(ratio.put("t", on.plate().thickness())
                .note("ratio of the plate's thickness")
                .gives(at.plateNeeded().inches() / on.plate().thickness().inches()));
    }

    private WorkedLine byAnchors(WorkedLine pull, WorkedLine l) {
        return WorkedLine.of("tt", "sqrt(4 \u00d7 1.67 \u00d7 T \u00d7 l / (Fy \u00d7 min(B / 2; 2 \u00d7 l)))")
                .put(pull)
                .put(l)
                .put("Fy", BasePlateAnchors.YIELD.psi(), "psi")
                .put("B", on.plate().side())
                .note("bent down by its anchor, 3.4")
                .gives(BasePlateAnchors.tensionThickness(pull.value(), l.value(), on.plate()), "in.");
    }

    private double factor() {
        return BasePlateHold.loadFactor(at.action().combination());
    }

    private ConcreteBreakout breakout() {
        return BasePlateHold.breakout(on);
    }

    private void tension(WorkedLine r) {
        if (toEdge.isZero()) return;
        double h = on.anchors().embedment().inches();
        Length spacing = on.plate().anchorSpacing();
        WorkedLine nb = WorkedLine.of("Nb", "17 \u00d7 sqrt(fc) \u00d7 he^1.5")
                .put("fc", on.slab().strength().psi(), "psi")
                .put("he", h, "in.")
                .note("17.6.2.2.1")
                .gives(breakout().oneInTension());
        WorkedLine anc = WorkedLine.of(
                        "An", "(2 \u00d7 1.5 \u00d7 he + s) \u00d7 (min(1.5 \u00d7 he; ce) + 1.5 \u00d7 he)")
                .put("he", h, "in.")
                .put("s", spacing)
                .put("ce", toEdge)
                .note("cone over two anchors, cut at the edge")
                .gives(breakout().coneIn2(spacing, Length.ZERO, ConcreteBreakout.Edges.oneSide(toEdge)), "in\u00b2");
        WorkedLine na = WorkedLine.of(
                        "Na",
                        "Nb \u00d7 An / (9 \u00d7 he\u00b2) \u00d7 min(1; 0.7 + 0.3 \u00d7 ce / (1.5 \u00d7 he)) \u00d7 0.65 / \u03b1f")
                .put(nb)
                .put(anc)
                .put("he", h, "in.")
                .put("ce", toEdge)
                .put("\u03b1f", factor())
                .note("17.6.2.1, 17.6.2.4; \u03b1f the load factor")
                .gives(BasePlateHold.mayPull(on, toEdge, at));
        lines.addAll(List.of(nb, anc, na));
        lines.add(WorkedLine.of("breakout", "2 \u00d7 R / Na")
                .put(r)
                .put(na)
                .note("ratio of the concrete over the anchors")
                .gives(2 * at.pull().pounds() / na.value()));
    }

    private void shear(WorkedLine push) {
        if (toEdge.isZero()) return;
        Length da = on.anchors().diameter();
        Length spacing = on.plate().anchorSpacing();
        Length thick = on.slab().thickness();
        WorkedLine vb = WorkedLine.of(
                        "Vb", "min(7 \u00d7 (le / da)^0.2 \u00d7 sqrt(da); 9) \u00d7 sqrt(fc) \u00d7 ce^1.5")
                .put("le", Math.min(on.anchors().embedment().inches(), 8 * da.inches()), "in.")
                .put("da", da)
                .put("fc", on.slab().strength().psi(), "psi")
                .put("ce", toEdge)
                .note("17.7.2.2.1")
                .gives(breakout().oneInShear(da, toEdge));
        WorkedLine av = WorkedLine.of("Av", "(3 \u00d7 ce + s) \u00d7 min(1.5 \u00d7 ce; ha)")
                .put("ce", toEdge)
                .put("s", spacing)
                .put("ha", thick)
                .note("face that breaks out")
                .gives(ConcreteBreakout.faceIn2(toEdge, spacing, thick), "in\u00b2");
        WorkedLine va = WorkedLine.of(
                        "Va",
                        "Vb \u00d7 Av / (4.5 \u00d7 ce\u00b2) \u00d7 max(1; sqrt(1.5 \u00d7 ce / ha)) \u00d7 0.70 / \u03b1f")
                .put(vb)
                .put(av)
                .put("ce", toEdge)
                .put("ha", thick)
                .put("\u03b1f", factor())
                .note("17.7.2.1, 17.7.2.6")
                .gives(BasePlateHold.mayPush(on, toEdge, at));
        lines.addAll(List.of(vb, av, va));
        lines.add(WorkedLine.of("edge", "2 \u00d7 V / Va")
                .put(push)
                .put(va)
                .note("ratio of the slab's edge")
                .gives(2 * at.push().pounds() / va.value()));
    }

    private void tipping() {
        if (!on.slab().isMeasured()) return;
        Length thick = on.slab().thickness();
        WorkedLine tip = WorkedLine.of("Mt", "M + H \u00d7 ha")
                .put("M", at.moment().poundInches(), "lb-in")
                .put("H", at.action().action().push())
                .put("ha", thick)
                .note("about the slab's long side, at its foot")
                .gives(BasePlateHold.tipsLbIn(on, at), "lb-in");
        WorkedLine hold = WorkedLine.of("Ms", "0.6 \u00d7 g \u00d7 ls \u00d7 ws \u00d7 ha / 1728 \u00d7 ws / 2")
                .put("g", Concrete.DENSITY.perCubicInch() * 1728, "pcf")
                .put("ls", on.slab().length())
                .put("ws", on.slab().width())
                .put("ha", thick)
                .note("0.6 of the slab's weight")
                .gives(BasePlateHold.slabHoldsLbIn(on), "lb-in");
        lines.addAll(List.of(tip, hold));
        lines.add(WorkedLine.of("tipping", "Mt / Ms")
                .put(tip)
                .put(hold)
                .note("ratio of the slab that tips")
                .gives(tip.value() / hold.value()));
    }

    private void bending() {
        WorkedLine mc = WorkedLine.of(
                        "Mp", "0.60 \u00d7 5 \u00d7 sqrt(fc) \u00d7 (B + 2 \u00d7 ha) \u00d7 ha\u00b2 / 6 / \u03b1f")
                .put("fc", on.slab().strength().psi(), "psi")
                .put("B", on.plate().side())
                .put("ha", on.slab().thickness())
                .put("\u03b1f", factor())
                .note("plain concrete, 14.5.2")
                .gives(BasePlateHold.mayBendLbIn(on, at), "lb-in");
        double share = BasePlateHold.shareOneWay(on.slab());
        lines.add(mc);
        lines.add(WorkedLine.of("slab", "n \u00d7 M / Mp")
                .put("n", share)
                .put("M", at.moment().poundInches(), "lb-in")
                .put(mc)
                .note("ratio of the slab in bending; n all of it one way beside an edge, else half")
                .gives(share * at.moment().poundInches() / mc.value()));
    }

    private void sheet(WorkedLine r, WorkedLine push) {
        double pull = r.value() / on.anchors().tension().pounds();
        double pushed = push.value() / on.anchors().shear().pounds();
        lines.add(WorkedLine.of("anchor", "max(R / Rs; V / Vs; (R / Rs + V / Vs) / 1.2)")
                .put(r)
                .put("Rs", on.anchors().tension())
                .put(push)
                .put("Vs", on.anchors().shear())
                .note("ratio of the anchor itself; Rs and Vs from its maker's sheet, 17.8.3")
                .gives(Math.max(Math.max(pull, pushed), (pull + pushed) / BasePlateHold.TOGETHER)));
    }
}
