package plumbleaf.engine.strength;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.footing.PullFit;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.support.PostFeel;
import plumbleaf.engine.support.PullTest;
import plumbleaf.engine.support.Support;

/**
 * A post that stands already. What holds it was never seen: a pull test says how it gives, the feel of a shake says less, and neither says at what it fails.
 *
 * @param soft in soft ground, in likely, in stiff
 * @param fit what the worst pull test came to; empty without one
 */
public record ExistingHold(PierSpring soft, PierSpring likely, PierSpring stiff, Optional<PullFit> fit) {
    /** What a post that nobody dug up is taken to stand in, where it feels firm. Judgement. */
    private static final Length GUESSED_DEPTH = Length.inches(24);

    private static final Length GUESSED_PLUG = Length.inches(8);

    /** One that moves by hand, and one that nobody shook, over one that is firm. Judgement. */
    private static final double MOVES = 0.1;

    private static final double NOT_SHAKEN = 0.4;

    /** The springs of an existing post; empty where the site's soil has no numbers and nobody pulled it. */
    public static Optional<ExistingHold> of(Support.Existing post, PostStock section, Optional<SoilBand> soil) {
        Optional<PullFit> worst = worstFit(post, section, soil);
        if (worst.isPresent()) {
            PullFit fit = worst.get();
            SoilBand band = fit.band();
            return Optional.of(new ExistingHold(
                    fit.spring(band.soft()), fit.spring(band.likely()), fit.spring(band.stiff()), worst));
        }
        return soil.map(band -> guessed(post, band));
    }

    private static ExistingHold guessed(Support.Existing post, SoilBand band) {
        double share = switch (post.feel()) {
            case FIRM -> 1;
            case MOVES -> MOVES;
            case UNKNOWN -> NOT_SHAKEN;
        };
        Length depth = post.embedment().isZero() ? GUESSED_DEPTH : post.embedment();
        HoleSize plug = new HoleSize(post.plug().isZero() ? GUESSED_PLUG : post.plug(), depth);
        return new ExistingHold(
                band.soft().times(share).spring(plug),
                band.likely().times(share).spring(plug),
                band.stiff().times(share).spring(plug),
                Optional.empty());
    }

    /** Of several pulls the one that found the ground softest. */
    private static Optional<PullFit> worstFit(Support.Existing post, PostStock section, Optional<SoilBand> soil) {
        PullFit.Kind kind = soil.map(SoilBand::likely)
                .map(likely -> likely.match(growing -> PullFit.Kind.GROWING, constant -> PullFit.Kind.CONSTANT))
                .orElse(PullFit.Kind.GROWING);
        double stiffness = section.elasticModulus().psi() * Math.min(section.ixIn4(), section.iyIn4());
        Optional<PullFit> worst = Optional.empty();
        for (PullTest test : post.tests()) {
            Optional<PullFit> fit = PullFit.of(test, stiffness, post.embedment(), kind);
            boolean softer = fit.isPresent() && (worst.isEmpty() || turning(fit.get()) < turning(worst.get()));
            if (softer) worst = fit;
        }
        return worst;
    }

    private static double turning(PullFit fit) {
        return fit.spring(fit.soil()).rotationalLbIn();
    }

    /** Findings about the post, and what of the day's load a pull has proved. */
    public static HeldPost held(
            String part,
            Support.Existing post,
            PostStock section,
            Optional<SoilBand> soil,
            List<CombinedAction> actions) {
        HeldPost.Notes notes = new HeldPost.Notes();
        Optional<PullFit> fit = of(post, section, soil).flatMap(ExistingHold::fit);
        fit.ifPresent(found -> fitted(notes, part, found));
        if (fit.isEmpty() && !post.tests().isEmpty())
            notes.note(Checked.note(
                    "existing.readings",
                    Severity.CANNOT_SAY,
                    part,
                    "Post " + part
                            + ": the pull's readings fit no post that turns in soil. Read both heights again, from the same string, and pull harder.",
                    Basis.judgement("rigid pier in elastic soil")));
        if (post.tests().isEmpty()) shaken(notes, part, post);
        notes.note(Checked.note(
                "existing.section",
                Severity.CAUTION,
                part,
                "Post " + part + " is taken as " + section.name()
                        + section.match(
                                steel ->
                                        ": its wall cannot be seen. Pull its cap and measure it, or drill a small hole; look for rust at grade.",
                                wood ->
                                        ", sound: dig round it 6 in. deep and probe it with an awl. Where the awl goes in, or it sounds hollow, it carries"
                                                + " less than is said here; set a new post."),
                Basis.judgement("the lightest wall of its size, unless the build names it")));
        proof(notes, part, post, actions);
        return notes.done();
    }

    private static void fitted(HeldPost.Notes notes, String part, PullFit fit) {
        fit.soil()
                .match(
                        growing -> notes.fact(
                                "fittedNhLbPerIn3",
                                "n_h from the pull",
                                growing.rate().poundsPerCubicInch(),
                                "lb/in3"),
                        constant -> notes.fact(
                                "fittedKDPsi",
                                "k D from the pull",
                                constant.perLength().psi(),
                                "psi"));
        notes.fact("fittedDepthIn", "depth that the pull tells of", fit.depth().inches(), "in")
                .fact("pullTurnRad", "turn at grade under the pull", fit.turn().radians(), "rad")
                .fact(
                        "pullShiftIn",
                        "shift at grade under the pull",
                        fit.shift().inches(),
                        "in");
        notes.note(Checked.of(
                "existing.loose",
                Severity.MUST_FIX,
                part,
                "Post " + part + ": of what the pull moved it, " + DecimalText.whole(fit.leftOver() * 100)
                        + " % stayed when it was let go; above 10 % its concrete is loose in the hole. Reset it.",
                Basis.commonPractice("10 % left over"),
                Measure.demand(fit.leftOver(), PullFit.LOOSE, "")));
        if (fit.readingError() > 0.5)
            notes.note(Checked.note(
                    "existing.small-reading",
                    Severity.CAUTION,
                    part,
                    "Post " + part
                            + ": the two readings differ by little more than one can read. Pull harder, or read higher up.",
                    Basis.judgement("1/16 in. between the readings")));
    }

    private static void shaken(HeldPost.Notes notes, String part, Support.Existing post) {
        Basis guess = Basis.judgement(LengthText.feetAndInches(GUESSED_DEPTH.inches()) + " deep, "
                + LengthText.feetAndInches(GUESSED_PLUG.inches()) + " wide unless told");
        if (post.feel() == PostFeel.MOVES)
            notes.note(Checked.note(
                    "existing.moves",
                    Severity.MUST_FIX,
                    part,
                    "Post " + part + " moves in its hole when shaken: reset or replace it before anything hangs on it.",
                    guess));
        else
            notes.note(Checked.note(
                    "existing.guess",
                    Severity.CAUTION,
                    part,
                    "Post " + part + " was not pulled: how it gives is a guess by "
                            + (post.feel() == PostFeel.FIRM ? "its feel" : "nothing but the soil")
                            + ". Pull it with a hand scale, read it at 3 in. and at the top, and enter the readings.",
                    guess));
    }

    /** A pull that it stood is a proof of that moment; for more nothing is known. */
    private static void proof(HeldPost.Notes notes, String part, Support.Existing post, List<CombinedAction> actions) {
        double proved = 0;
        for (PullTest test : post.tests())
            proved = Math.max(proved, test.force().pounds() * test.at().inches());
        double daily = 0;
        double all = 0;
        for (CombinedAction one : actions) {
            double moment = one.action().size().poundInches();
            all = Math.max(all, moment);
            if (one.combination().live() == 0 && !one.combination().hasWind()) daily = Math.max(daily, moment);
        }
        Basis basis = Basis.judgement("a post is good for a pull it stood; nothing is known of what lies deeper");
        notes.fact("provedMomentLbIn", "moment at grade that a pull proved", proved, "lb-in");
        if (proved > 0)
            notes.check(Checked.of(
                    "existing.proved",
                    Severity.MUST_FIX,
                    part,
                    "Post " + part + ": " + DecimalText.whole(daily / 12)
                            + " lb-ft stand on it every day, a pull proved " + DecimalText.whole(proved / 12)
                            + " lb-ft."
                            + (daily > proved ? " Pull it harder, or set a new post." : ""),
                    basis,
                    Measure.demand(daily, proved, "lb-in")));
        if (all > proved)
            notes.note(Checked.note(
                    "existing.unknown",
                    proved >= daily && proved > 0 ? Severity.CAUTION : Severity.CANNOT_SAY,
                    part,
                    "Post " + part + ": nobody saw how deep it stands, so whether the ground holds "
                            + DecimalText.whole(all / 12) + " lb-ft from a person or the wind is not said.",
                    basis));
    }
}
