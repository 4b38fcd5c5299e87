package plumbleaf.engine.strength;

import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.section.WoodPost;

/**
 * A wood post set in the ground, wet: reference values with the factors of wet service, size and incising, duration by the combination. A pole has neither a wet nor
 * a size factor, but loses to the steam before its treatment.
 * Source: NDS 2018 4.3, 6.3, 3.7, 3.9.2; Supplement Tables 4A, 4D and 6B. Check: WoodPostStrengthTest.
 *
 * @param bending Fb with every factor but duration and stability
 * @param shear Fv likewise
 * @param compression Fc likewise
 * @param leastModulus Emin likewise
 */
public record WoodPostStrength(WoodPost post, Stress bending, Stress shear, Stress compression, Stress leastModulus)
        implements PostStrength {
    /** CD. Source: NDS 2018 Table 2.3.2. */
    private static final double LASTING = 0.9;

    private static final double LIVE = 1.0;
    private static final double WIND = 1.6;

    /** KF of bending over the wind's CD, lambda 1. Source: NDS 2018 Appendix N, Tables N1 and N3, from memory. */
    public static final double RESERVE = 2.54 / WIND;

    /** Ke of a post fixed at grade and free on top. Source: NDS 2018 Appendix G. */
    private static final double CANTILEVER = 2.1;

    /** Incising, Ci. Source: NDS 2018 Table 4.3.8, from memory. */
    private static final double INCISED_STRENGTH = 0.80;

    /** CM of timbers' Fc; their other values hold wet or dry. Source: NDS Supplement 2018 Table 4D, from memory. */
    private static final double WET_TIMBER_COMPRESSION = 0.91;

    /** CM of dimension lumber. Source: NDS Supplement 2018 Table 4A. */
    private static final double WET_BENDING = 0.85;

    private static final double WET_BENDING_FROM_PSI = 1150;
    private static final double WET_SHEAR = 0.97;
    private static final double WET_COMPRESSION = 0.8;
    private static final double WET_COMPRESSION_FROM_PSI = 750;

    /** Cct of a pole steamed before treatment, the least that is usual. Source: NDS 2018 Table 6.3.5, from memory. */
    private static final double STEAMED = 0.8;

    public static WoodPostStrength of(WoodPost post) {
        double incised = post.incised() ? INCISED_STRENGTH : 1;
        double fb = post.grade().bending().psi();
        double fc = post.grade().compression().psi();
        double fv = post.grade().shear().psi();
        if (post.isRound()) return made(post, fb * STEAMED, fv * STEAMED, fc * STEAMED);
        if (post.timber()) return made(post, fb * incised, fv * incised, fc * incised * WET_TIMBER_COMPRESSION);
        double larger = Math.max(post.depth().inches(), post.width().inches());
        double sized = post.grade().sizeSpecific() ? fb : fb * RailCheck.sizeFactor(larger);
        double wetBending = sized > WET_BENDING_FROM_PSI ? WET_BENDING : 1;
        double sizedFc = post.grade().sizeSpecific() ? fc : fc * compressionSizeFactor(larger);
        double wetFc = sizedFc > WET_COMPRESSION_FROM_PSI ? WET_COMPRESSION : 1;
        return made(post, sized * wetBending * incised, fv * WET_SHEAR * incised, sizedFc * wetFc * incised);
    }

    private static WoodPostStrength made(WoodPost post, double fb, double fv, double fc) {
        return new WoodPostStrength(
                post,
                Stress.psi(fb),
                Stress.psi(fv),
                Stress.psi(fc),
                post.grade().leastModulus().times(post.modulusFactor()));
    }

    /** CF of Fc. Source: NDS Supplement 2018 Table 4A, from memory. */
    private static double compressionSizeFactor(double depthIn) {
        if (depthIn <= 3.5) return 1.15;
        return depthIn <= 5.5 ? 1.1 : 1.05;
    }

    /** CD of a combination, by what of it lasts least. Source: NDS 2018 Table 2.3.2. */
    public static double duration(Combination combination) {
        if (combination.hasWind()) return WIND;
        return combination.live() > 0 ? LIVE : LASTING;
    }

    /**
     * {@code (fc/Fc')2 + fb1/(Fb1' (1 - fc/FcE1)) + fb2/(Fb2' (1 - fc/FcE2 - (fb1/FbE)2))}, FbE left out since a square post does not buckle sideways; of a pole the
     * two bend it as one; shear and torsion alone are never less. Source: NDS 2018 Equation 3.9-3, 3.4-2. Check: WoodPostStrengthTest.
     */
    @Override
    public double ratio(CombinedAction combined, Length height) {
        BaseAction action = combined.action();
        double duration = duration(combined.combination());
        double fc = Math.max(0, action.down().pounds()) / post.areaIn2();
        double alongPsi = Math.abs(action.momentAlong().poundInches()) / post.sxIn3();
        double acrossPsi = Math.abs(action.momentAcross().poundInches()) / post.syIn3();
        double may = bending.psi() * duration;
        double axial = fc / (compression.psi() * duration * stability(duration, height));
        double along = alongPsi / (may * grown(fc, height, post.depth()));
        double across = acrossPsi / (may * grown(fc, height, post.width()));
        double bent = post.isRound() ? Math.sqrt(along * along + across * across) : along + across;
        return Math.max(axial * axial + bent, sheared(action) / (shear.psi() * duration));
    }

    /** {@link #ratio} line by line, for the calculation book. */
    public List<WorkedLine> lines(CombinedAction combined, Length height) {
        BaseAction action = combined.action();
        double duration = duration(combined.combination());
        double fc = Math.max(0, action.down().pounds()) / post.areaIn2();
        double may = bending.psi() * duration;
        double pressed = compression.psi() * duration * stability(duration, height);
        double deep = grown(fc, height, post.depth());
        double wide = grown(fc, height, post.width());
        double along = Math.abs(action.momentAlong().poundInches()) / post.sxIn3() / (may * deep);
        double across = Math.abs(action.momentAcross().poundInches()) / post.syIn3() / (may * wide);
        WorkedLine weight = WorkedLine.of("fc", "P / A")
                .put("P", Math.max(0, action.down().pounds()), "lb")
                .put("A", post.areaIn2(), "in\u00b2")
                .gives(fc, "psi");
        WorkedLine allowed = WorkedLine.of("Fb'", "Fb \u00d7 CD")
                .put("Fb", bending.psi(), "psi")
                .put("CD", duration)
                .note("Fb with wet service, size, incising or steaming")
                .gives(may, "psi");
        WorkedLine stands = WorkedLine.of("Fc'", "Fc \u00d7 CD \u00d7 CP")
                .put("Fc", compression.psi(), "psi")
                .put("CD", duration)
                .put("CP", stability(duration, height))
                .note("CP by 3.7-1")
                .gives(pressed, "psi");
        WorkedLine one = bentLine("along", action.momentAlong().poundInches(), post.sxIn3(), deep, allowed, along);
        WorkedLine other = bentLine("across", action.momentAcross().poundInches(), post.syIn3(), wide, allowed, across);
        WorkedLine shear = sheared(action, duration);
        String both = post.isRound() ? "sqrt(along\u00b2 + across\u00b2)" : "along + across";
        return List.of(
                weight,
                stands,
                allowed,
                one,
                other,
                shear,
                WorkedLine.of("ratio", "max((fc / Fc')\u00b2 + " + both + "; shear)")
                        .put(weight)
                        .put(stands)
                        .put(one)
                        .put(other)
                        .put(shear)
                        .note("3.9-3")
                        .gives(ratio(combined, height)));
    }

    private static WorkedLine bentLine(
            String name, double momentLbIn, double modulusIn3, double left, WorkedLine allowed, double is) {
        return WorkedLine.of(name, "M / S / (Fb' \u00d7 g)")
                .put("M", Math.abs(momentLbIn), "lb-in")
                .put("S", modulusIn3, "in\u00b3")
                .put(allowed)
                .put("g", left)
                .note("g = 1 - fc / FcE, FcE = 0.822 Emin' / (2.1 L / d)\u00b2")
                .gives(is);
    }

    private WorkedLine sheared(BaseAction action, double duration) {
        double a = Math.max(post.depth().inches(), post.width().inches());
        double b = Math.min(post.depth().inches(), post.width().inches());
        WorkedLine.Open line = WorkedLine.of(
                        "shear",
                        post.isRound()
                                ? "(4 \u00d7 V / A / 3 + 16 \u00d7 T / (\u03c0 \u00d7 a\u00b3)) / (Fv \u00d7 CD)"
                                : "(1.5 \u00d7 V / A + T \u00d7 (3 \u00d7 a + 1.8 \u00d7 b) / (a\u00b2 \u00d7 b\u00b2)) / (Fv \u00d7 CD)")
                .put("V", action.push())
                .put("A", post.areaIn2(), "in\u00b2")
                .put("T", Math.abs(action.torsion().poundInches()), "lb-in")
                .put("a", a, "in.")
                .put("Fv", shear.psi(), "psi")
                .put("CD", duration)
                .note("3.4.2; twist by judgement");
        if (!post.isRound()) line.put("b", b, "in.");
        return line.gives(sheared(action) / (shear.psi() * duration));
    }

    /**
     * {@code 1.5 V/A + T (3 a + 1.8 b) / (a2 b2)}, of a pole {@code 4/3 V/A + 16 T / (pi d3)}: pushed and twisted at once. The standard has no word on twist; it is
     * held to the shear that the wood may take (judgement). Source: NDS 2018 3.4.2; Roark's Formulas, torsion of a rectangle, from memory.
     */
    private double sheared(BaseAction action) {
        double v = action.push().pounds() / post.areaIn2();
        double t = Math.abs(action.torsion().poundInches());
        double a = Math.max(post.depth().inches(), post.width().inches());
        double b = Math.min(post.depth().inches(), post.width().inches());
        if (post.isRound()) return 4 * v / 3 + 16 * t / (Math.PI * a * a * a);
        return 1.5 * v + t * (3 * a + 1.8 * b) / (a * a * b * b);
    }

    /**
     * How much a post drilled through along the run uses where it is drilled: bending on {@code I - dh d3/12} the one way, {@code I - d dh3/12} the other.
     * Source: NDS 2018 3.1.2 net section; statics. Check: WoodPostStrengthTest.
     *
     * @param along moment that bends it along the run
     * @param across across it
     * @param hole dh
     * @param duration CD
     */
    public double drilled(Moment along, Moment across, Length hole, double duration) {
        double d = post.depth().inches();
        double dh = hole.inches();
        double ix = Math.max(1e-9, post.ixIn4() - dh * d * d * d / 12);
        double iy = Math.max(1e-9, post.iyIn4() - d * dh * dh * dh / 12);
        double alongPsi = Math.abs(along.poundInches()) * d / 2 / ix;
        double acrossPsi = Math.abs(across.poundInches()) * post.width().inches() / 2 / iy;
        double psi = post.isRound() ? Math.sqrt(alongPsi * alongPsi + acrossPsi * acrossPsi) : alongPsi + acrossPsi;
        return psi / (bending.psi() * duration);
    }

    /** {@link #drilled} line by line. */
    public List<WorkedLine> drilledLines(Moment along, Moment across, Length hole, double duration) {
        double d = post.depth().inches();
        double dh = hole.inches();
        WorkedLine deep = WorkedLine.of("In1", "I1 - dh \u00d7 d\u00b3 / 12")
                .put("I1", post.ixIn4(), "in4")
                .put("dh", hole)
                .put("d", post.depth())
                .note("along the run, the hole goes right through")
                .gives(Math.max(1e-9, post.ixIn4() - dh * d * d * d / 12), "in4");
        WorkedLine wide = WorkedLine.of("In2", "I2 - d \u00d7 dh\u00b3 / 12")
                .put("I2", post.iyIn4(), "in4")
                .put("d", post.depth())
                .put("dh", hole)
                .note("across it, in the middle")
                .gives(Math.max(1e-9, post.iyIn4() - d * dh * dh * dh / 12), "in4");
        WorkedLine one = WorkedLine.of("f1", "M1 \u00d7 d / 2 / In1")
                .put("M1", Math.abs(along.poundInches()), "lb-in")
                .put("d", post.depth())
                .put(deep)
                .gives(Math.abs(along.poundInches()) * d / 2 / deep.value(), "psi");
        WorkedLine other = WorkedLine.of("f2", "M2 \u00d7 b / 2 / In2")
                .put("M2", Math.abs(across.poundInches()), "lb-in")
                .put("b", post.width())
                .put(wide)
                .gives(Math.abs(across.poundInches()) * post.width().inches() / 2 / wide.value(), "psi");
        return List.of(
                deep,
                wide,
                one,
                other,
                WorkedLine.of(
                                "ratio",
                                (post.isRound() ? "sqrt(f1\u00b2 + f2\u00b2)" : "(f1 + f2)") + " / (Fb \u00d7 CD)")
                        .put(one)
                        .put(other)
                        .put("Fb", bending.psi(), "psi")
                        .put("CD", duration)
                        .gives(drilled(along, across, hole, duration)));
    }

    /** {@code 1 - fc/FcE}: what is left of bending strength while the weight leans on it. */
    private double grown(double fcPsi, Length height, Length depth) {
        return Math.max(1e-6, 1 - fcPsi / eulerPsi(height, depth));
    }

    /** {@code FcE = 0.822 Emin' / (le/d)2}. Source: NDS 2018 3.7.1.5. */
    private double eulerPsi(Length height, Length depth) {
        double slender = CANTILEVER * height.inches() / depth.inches();
        return slender <= 0 ? Double.MAX_VALUE : 0.822 * leastModulus.psi() / (slender * slender);
    }

    /** {@code CP = (1 + a)/(2c) - sqrt(((1 + a)/(2c))2 - a/c), a = FcE/Fc*, c = 0.8}. Source: NDS 2018 Equation 3.7-1. */
    private double stability(double duration, Length height) {
        Length least = post.depth().compareTo(post.width()) < 0 ? post.depth() : post.width();
        double a = eulerPsi(height, least) / (compression.psi() * duration);
        if (a > 1e6) return 1;
        double half = (1 + a) / 1.6;
        return half - Math.sqrt(half * half - a / 0.8);
    }

    @Override
    public Moment allowableInWind() {
        return Moment.poundInches(bending.psi() * WIND * Math.min(post.sxIn3(), post.syIn3()));
    }

    @Override
    public Moment ultimateInWind() {
        return allowableInWind().times(RESERVE);
    }

    @Override
    public double roomBeside(Force down, Length height) {
        double fc = down.pounds() / post.areaIn2();
        double axial = fc / (compression.psi() * WIND * stability(WIND, height));
        return Math.max(0, (1 - axial * axial) * grown(fc, height, post.width()));
    }

    @Override
    public double stiffnessLbIn2() {
        return post.elasticModulus().psi() * Math.min(post.ixIn4(), post.iyIn4());
    }

    @Override
    public Basis clause() {
        return Basis.clause("NDS 2018 3.9.2, wet service, duration 0.9 dead, 1.0 live, 1.6 wind");
    }
}
