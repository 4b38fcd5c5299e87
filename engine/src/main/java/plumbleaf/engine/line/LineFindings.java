package plumbleaf.engine.line;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Arc;
import plumbleaf.engine.job.CheckTape;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.GapRule;
import plumbleaf.engine.job.HeightRule;
import plumbleaf.engine.job.Keeping;
import plumbleaf.engine.job.MeasuredFrom;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.job.Taped;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * What can be said about a line of fence, in the words of the trade.
 *
 * @param display units that lengths are told in
 */
record LineFindings(DisplayUnits display) {
    Finding noLayout(String run, ClosedStretch at, Length forced, Length allowed) {
        return new Checked(
                "line.no-layout",
                Severity.MUST_FIX,
                run,
                "No post of " + run + " may stand from station " + text(new Offset(at.fromIn())) + " to "
                        + text(new Offset(at.toIn())) + " (" + at.why() + ", hole counted): that forces a bay of "
                        + text(forced)
                        + ", " + text(allowed)
                        + " is the most there. Move the line, span it with a longer rail, or dig there by hand.",
                Basis.job("longest bay"),
                Optional.of(Measure.demand(forced.inches(), allowed.inches(), "in")),
                pulled(at));
    }

    Finding fixedInNoDig(String part, PostRole role, Offset station, ClosedStretch at) {
        return new Checked(
                "line.no-dig",
                Severity.MUST_FIX,
                part,
                "The " + role.key() + " post of " + part + " at station " + text(station)
                        + " stands where no hole may be: " + text(new Offset(at.fromIn())) + " to "
                        + text(new Offset(at.toIn())) + ", " + at.why() + ", hole counted.",
                Basis.job("no-dig stretch"),
                Optional.empty(),
                pulled(at));
    }

    /** Where old concrete alone is in the way it can be pulled, and then nothing closes the stretch. */
    private static List<Remedy> pulled(ClosedStretch at) {
        if (at.pulled().isEmpty()) return List.of();
        boolean all = at.pulled().stream().anyMatch(edit -> edit.contains(".fences["));
        String words = "pull the old concrete there and haul it off" + (all ? ", with all of its fence's" : "");
        return List.of(Remedy.ofEdit("pull-plug", words, String.join(Remedy.AND_THEN, at.pulled())));
    }

    /** A post that stands already is not where a search puts it. */
    Finding standsSomewhere(String run, Stop stop) {
        return Checked.note(
                "line.stands",
                Severity.CANNOT_SAY,
                run,
                "A post of " + run + " near station " + text(new Offset(stop.stationIn()))
                        + " stands already, and nobody said where: its bays are reckoned from there. Measure it from the start"
                        + " of the run and put it where it is.",
                Basis.job("posts that stand"));
    }

    Finding gateOffLeg(String gate, String run) {
        return Checked.note(
                "line.gate-place",
                Severity.MUST_FIX,
                gate,
                "The opening of " + gate + " does not lie on one leg of " + run + ". Move it or lengthen the leg.",
                Basis.job("gate station"));
    }

    /** Within one line of sight two ways side by side look like a mistake; at a corner or a gate they do not. */
    Finding fitChanges(String run, Stop at, Fit before, Fit after, Offset step) {
        boolean clean = at.role() == PostRole.CORNER;
        return Checked.note(
                "line.fit-changes",
                clean ? Severity.PASS : Severity.CAUTION,
                run,
                run + " goes from " + before.key().replace('-', ' ') + " to "
                        + after.key().replace('-', ' ') + " at station " + text(new Offset(at.stationIn()))
                        + ", its top "
                        + text(new Length(Math.abs(step.inches()))) + (step.inches() < 0 ? " lower" : " higher")
                        + " from there"
                        + (clean
                                ? ", at a corner, where it does not show."
                                : ", in the middle of a line of sight: it shows. Change at a corner or a gate."),
                Basis.commonPractice("one way of following the ground within a line of sight"));
    }

    /** What a mixed fit comes to in one line of sight. */
    Finding settled(String run, Length from, Length to, Fit fit, double steepest, double most) {
        String limit = most > 19 ? "" : "; its panels and brackets take " + DecimalText.upTo(most * 100, 1) + " %";
        return settled(
                run, from, to, fit, ": its steepest bay is " + DecimalText.upTo(steepest * 100, 1) + " %" + limit);
    }

    /**
     * The same where no fair line keeps the gap to the ground.
     *
     * @param racked by how much bays on the ground's own chords miss that gap
     * @param stepped by how much steps do
     */
    Finding settledByGap(String run, Length from, Length to, Fit fit, Length racked, Length stepped) {
        return settled(
                run,
                from,
                to,
                fit,
                ": no fair line, with bends at its posts alone, keeps the gap to the ground; "
                        + missed("steps", stepped) + ", " + missed("bays on the ground's own chords", racked));
    }

    private String missed(String what, Length by) {
        return what + (by.isZero() ? " keep it" : " miss it by " + text(by));
    }

    private Finding settled(String run, Length from, Length to, Fit fit, String why) {
        return Checked.note(
                "line.mixed",
                Severity.PASS,
                run,
                "From station " + text(from) + " to " + text(to) + " " + run
                        + (fit == Fit.RACKED ? " is racked" : " is stepped") + why + ".",
                Basis.commonPractice("one way of following the ground within a line of sight"));
    }

    Optional<Finding> steps(String run, List<Bay> bays, Length step, String words) {
        int count = 0;
        double most = 0;
        for (Bay bay : bays) {
            if (bay.fit() != Fit.STEPPED || bay.step().isZero()) continue;
            count++;
            most = Math.max(most, bay.step().size().inches());
        }
        if (count == 0) return Optional.empty();
        return Optional.of(Checked.note(
                "line.steps",
                Severity.PASS,
                run,
                run + " steps " + count + (count == 1 ? " time" : " times") + " in whole multiples of " + text(step)
                        + " (" + words + "), at most " + text(new Length(most)) + ".",
                Basis.commonPractice("steps in whole sizes")));
    }

    Finding keeps(Bay bay, Keeping keeping) {
        return Checked.of(
                "line.keeps",
                Severity.MUST_FIX,
                bay.id(),
                "The gap under " + bay.run() + " reaches " + text(bay.groundGapMax()) + " at " + bay.id() + "; to keep "
                        + keeping.what().words() + " it may be " + text(keeping.gap()) + ".",
                keeping.largest().isSaid()
                        ? Basis.job("gap for what it keeps")
                        : Basis.commonPractice("gap under a fence by what it keeps"),
                demand(bay.groundGapMax(), keeping.gap()));
    }

    Finding curve(String run, Arc arc, int chords, Length chord) {
        Length off = arc.off(chords);
        return Checked.of(
                "line.curve",
                Severity.CAUTION,
                run,
                "The curve of " + run + ", radius " + text(arc.radius()) + ", is set out in " + chords
                        + (chords == 1 ? " chord of " : " chords of ") + text(chord) + ", each " + text(off)
                        + " off the curve in its middle; at most " + text(arc.sagitta())
                        + ". Its posts stand on the bisectors; the wind takes it as one wall of its length.",
                Basis.job("sagitta of the curve"),
                Measure.demand(off.inches(), arc.sagitta().inches(), "in"));
    }

    Finding holesMeet(String run, Offset station, Length apart) {
        return Checked.note(
                "line.holes-meet",
                Severity.CAUTION,
                run,
                "Two posts of " + run + " at station " + text(station) + " stand " + text(apart)
                        + " apart: their holes run into each other. Dig one, or move the gate.",
                Basis.commonPractice("one hole a post"));
    }

    Finding closure(String run, Length off, Length round, Length allowed) {
        return Checked.of(
                "line.closure",
                Severity.CAUTION,
                run,
                run + " comes back to its start " + text(off) + " off after " + text(round) + outOf(off, round)
                        + ". The crew meets that gap: tape one more diagonal before the posts are set out.",
                Basis.commonPractice("1 in 500 with a tape"),
                Measure.demand(off.inches(), allowed.inches(), "in"));
    }

    private static String outOf(Length off, Length round) {
        double parts = off.isZero() ? 0 : round.inches() / off.inches();
        return parts > 0 && parts < 100_000 ? ", 1 in " + DecimalText.upTo(parts, 0) : "";
    }

    Finding checkTape(String run, CheckTape tape, Length drawn, Length allowed) {
        Length off = drawn.asOffset().minus(tape.taped().asOffset()).size();
        return Checked.of(
                "line.check-tape",
                Severity.CAUTION,
                run,
                "Straight across from station " + text(tape.from()) + " to " + text(tape.to()) + " of " + run
                        + " the tape read " + text(tape.taped()) + "; its legs and corners make " + text(drawn) + ", "
                        + text(off) + " off.",
                Basis.commonPractice("1 in 500 with a tape"),
                Measure.demand(off.inches(), allowed.inches(), "in"));
    }

    /** @param leg from 0 */
    Finding tapedAlong(String run, int leg, Length tape, Length level) {
        return Checked.note(
                "line.tape",
                Severity.PASS,
                run,
                "Leg " + run + "." + (leg + 1) + " was taped along the ground: " + text(tape) + " on the tape are "
                        + text(level) + " in plan, " + text(TapedLegs.less(tape, level))
                        + " less, reckoned with the shots under it.",
                Basis.clause("plane geometry, L = sqrt(S^2 - dz^2) from shot to shot"));
    }

    /** Nobody said, and it matters: the question, with both answers to press. */
    Finding tapeUnsaid(String run, int leg, Length tape, Length along) {
        String edit = "runs[" + run + "].legs[" + leg + "].taped=";
        return new Checked(
                "line.tape",
                Severity.CAUTION,
                run,
                "How was the tape held on leg " + run + "." + (leg + 1)
                        + "? Nobody said: it is taken as level. Had it lain along the"
                        + " ground, its " + text(tape) + " would be " + text(along) + " in plan, "
                        + text(TapedLegs.less(tape, along)) + " less.",
                Basis.commonPractice("1 in 500 with a tape"),
                Optional.empty(),
                List.of(
                        Remedy.ofEdit("tape-level", "it was held level", edit + Taped.LEVEL.key()),
                        Remedy.ofEdit("tape-slope", "it lay along the ground", edit + Taped.SLOPE.key())));
    }

    Finding tieIn(String run, Offset station, RunEnd.Neighbour theirs) {
        boolean agreed = theirs.agreed().or(false);
        return Checked.note(
                "line.tie-in",
                agreed ? Severity.PASS : theirs.agreed().isSaid() ? Severity.MUST_FIX : Severity.CANNOT_SAY,
                run,
                run + " meets a fence that is not ours at station " + text(station)
                        + (theirs.fence().isEmpty() ? "" : " (" + theirs.fence() + ")")
                        + ", on a post of its own with nothing hung on theirs; its owner "
                        + (agreed
                                ? "has agreed."
                                : theirs.agreed().isSaid()
                                        ? "has not agreed: stop short of it, or ask again."
                                        : "was not asked yet, or nobody wrote it down."),
                Basis.commonPractice("consent before anything touches a neighbor's fence"));
    }

    Finding tieInHeight(String run, Offset station, Offset ours, Length theirs) {
        Length apart = ours.minus(theirs.asOffset()).size();
        return Checked.of(
                "line.tie-in-height",
                Severity.CAUTION,
                run,
                "Where " + run + " meets the other fence, at station " + text(station) + ", its top is " + text(ours)
                        + " over the ground and theirs " + text(theirs) + ".",
                Basis.judgement("tops that meet within 2 in."),
                Measure.demand(apart.inches(), 2, "in"));
    }

    Finding joinMissed(String run, String other, Length away) {
        return Checked.note(
                "line.join",
                Severity.MUST_FIX,
                run,
                run + " is to join " + other + ", but ends " + text(away) + " from it.",
                Basis.job("run ends"));
    }

    Finding longestBay(String run, Bay bay, Length limit) {
        double most = limit.inches();
        double slope = bay.slopeLength().inches();
        return Checked.of(
                "line.bay",
                Severity.MUST_FIX,
                run,
                "The longest bay of " + run + ", " + bay.id() + ", is " + text(bay.slopeLength()) + " along the slope, "
                        + text(limit) + " allowed.",
                Basis.job("longest bay"),
                Measure.demand(slope > most + RailReach.ROUNDING_IN ? slope : Math.min(slope, most), most, "in"));
    }

    Finding gap(Bay bay, GapRule rule) {
        return Checked.of(
                "line.gap",
                Severity.MUST_FIX,
                bay.id(),
                "The gap under " + bay.id() + " of " + bay.run() + " reaches " + text(bay.groundGapMax()) + ", "
                        + text(rule.largest()) + " allowed.",
                Basis.job(rule.why()),
                demand(bay.groundGapMax(), rule.largest()));
    }

    Finding digsIn(Bay bay) {
        return Checked.note(
                "line.digs-in",
                Severity.MUST_FIX,
                bay.id(),
                "The infill of " + bay.id() + " of " + bay.run() + " reaches "
                        + text(bay.groundGapMin().negated())
                        + " into the ground. Grade the crest, raise the fence or step it there.",
                Basis.job("gap under the fence"));
    }

    Finding height(Bay bay, Offset most, HeightRule rule) {
        return Checked.of(
                "line.height",
                Severity.MUST_FIX,
                bay.id(),
                "The fence stands " + text(most) + " at its highest, " + bay.id() + " of " + bay.run()
                        + ", measured from the " + words(rule.from()) + "; " + text(rule.limit()) + " allowed.",
                Basis.job("height rule; local code governs"),
                demand(most, rule.limit()));
    }

    Finding sideUnknown(String run) {
        return Checked.note(
                "line.height-side",
                Severity.CAUTION,
                run,
                "The ground beside " + run
                        + " was not shot everywhere: there its height is measured from the ground on its line alone.",
                Basis.job("height rule; local code governs"));
    }

    Finding noFairTop(String run, Offset from, Offset to) {
        return Checked.note(
                "line.top",
                Severity.CAUTION,
                run,
                "Between stations " + text(from) + " and " + text(to) + " of " + run
                        + " no line with bends at its posts alone keeps the gap to the ground: each bay follows its"
                        + " own chord. Grade the ground, add a post at the crest or step it.",
                Basis.commonPractice("a fence is faired at its posts"));
    }

    /** With its proof: what the line does, and that none does better. */
    Finding fairTop(String run, Shaping.FairTop top) {
        String bends = DecimalText.upTo(top.change() * 100, 2);
        String message = bends.equals("0")
                ? "The top of " + run + " bends at no post between its ends, gates and corners: no line is straighter."
                : "The top of " + run + " changes grade by " + bends + " % at most at a post, at station "
                        + text(top.station()) + ". Of all lines that are straight from post to post and keep "
                        + text(top.least()) + " to " + text(top.most())
                        + " to the ground, none changes by less than "
                        + DecimalText.upTo(top.atLeast() * 100, 2) + " % at its sharpest.";
        return Checked.note("line.top", Severity.PASS, run, message, Basis.judgement("least largest change of slope"));
    }

    Finding picketsMisfit(String run, Offset from, Offset to, Offset gap) {
        return Checked.note(
                "line.pickets",
                Severity.CAUTION,
                run,
                "Between stations " + text(from) + " and " + text(to) + " of " + run
                        + " neither whole pickets nor two ripped ones fit within the style's gaps; the gap would be "
                        + text(gap) + ".",
                Basis.commonPractice("picket layout"));
    }

    Finding pressing(String run, BayPickets pickets) {
        return Checked.note(
                "line.pickets-press",
                Severity.CAUTION,
                run,
                "At their wettest the pickets of " + run + " press on each other by "
                        + text(pickets.gapWettest().negated()) + ". Set them further apart.",
                Basis.clause("USDA Wood Handbook FPL-GTR-190, equation 13-2"));
    }

    Finding unknownStyle(String run, String style) {
        return Checked.note(
                "line.style",
                Severity.CANNOT_SAY,
                run,
                "The catalog has no style " + style + ": " + run + " has posts but no rails or pickets.",
                Basis.job("style"));
    }

    /** At the limit but for the solver's rounding counts as at the limit. */
    private static Measure demand(Offset reached, Length limit) {
        double over = reached.inches() - limit.inches();
        boolean at = over > 0 && over <= Fairing.GAP_ROUNDING_IN;
        return Measure.demand(at ? limit.inches() : reached.inches(), limit.inches(), "in");
    }

    private static String words(MeasuredFrom from) {
        return from.key().replace('-', ' ');
    }

    private String text(Length length) {
        return display.length(length);
    }

    private String text(Offset offset) {
        return display.length(offset);
    }
}
