package plumbleaf.engine.rule;

import java.time.LocalDate;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.job.NoDig;
import plumbleaf.engine.job.Overnight;
import plumbleaf.engine.job.PropertyLine;
import plumbleaf.engine.job.SightTriangle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** What the place asks of a fence: sight at corners, nothing that burns by a house, dig days of a ticket, shut at night. Check: SiteRulesTest. */
public final class PlaceRules {
    private PlaceRules() {}

    /**
     * The height of a fence in a sight triangle.
     *
     * @param from station where it enters the triangle
     */
    public static Finding sight(
            String part, SightTriangle sight, Offset highest, Offset from, Offset to, RuleTable rules) {
        Length height = Length.inches(Math.max(0, highest.inches()));
        return Checked.of(
                "sight.height",
                Severity.MUST_FIX,
                part,
                part + " stands " + rules.say().text(height) + " high in the sight triangle at the " + sight.what()
                        + ", from station " + rules.say().text(from.size()) + " to "
                        + rules.say().text(to.size()) + "; at most "
                        + rules.say().text(sight.height()) + " there.",
                rules.row("ST02").basis(),
                Measure.demand(height.inches(), sight.height().inches(), "in"));
    }

    /** No fence stands in it. */
    public static Finding sightClear(SightTriangle sight, RuleTable rules) {
        return rules.say()
                .right(
                        "sight.height",
                        "site",
                        "No fence and no gate stands in the sight triangle at the " + sight.what() + ".",
                        rules.row("ST02"));
    }

    /**
     * How near a fence that burns stands to a building.
     *
     * @param burns whether it is of wood
     * @param required whether the place asks for the strip
     */
    public static Finding nearHouse(
            String run,
            String building,
            Length nearest,
            boolean burns,
            Length strip,
            boolean required,
            RuleTable rules) {
        String start = run + " comes within " + rules.say().text(nearest) + " of the " + building;
        if (!burns) return rules.say().right("house.strip", run, start + " and does not burn.", rules.row("NH01"));
        return Checked.of(
                "house.strip",
                required ? Severity.MUST_FIX : Severity.CAUTION,
                run,
                start + ", and its wood burns; keep " + rules.say().text(strip)
                        + " clear, or build that stretch and its gate of metal.",
                rules.row("NH01").basis(),
                Measure.provided(nearest.inches(), strip.inches(), "in"));
    }

    /** How far the face of a fence stays off a lot line. */
    public static Finding setback(String run, PropertyLine line, Length face, RuleTable rules) {
        return Checked.of(
                "line.setback",
                Severity.MUST_FIX,
                run,
                "The face of " + run + " comes within " + rules.say().text(face) + " of the " + line.what() + "; "
                        + rules.say().text(line.setback()) + " at least. Local code governs.",
                Basis.job("set-back from the lot line"),
                Measure.provided(face.inches(), line.setback().inches(), "in"));
    }

    /** No set-back is asked, and posts stand on the line itself: half of each is the neighbor's. */
    public static Finding onLine(String run, PropertyLine line, Length over, RuleTable rules) {
        return Checked.note(
                "line.setback",
                Severity.CAUTION,
                run,
                run + " stands on the " + line.what() + ": its posts reach "
                        + rules.say().text(over)
                        + " over it, their footings further. Have the neighbor's word for it in writing, or move the run in."
                        + " Local code governs.",
                Basis.commonPractice("a fence on the line is agreed with the neighbor"));
    }

    /** A fence that crosses a lot line ends on somebody else's land. */
    public static Finding overLine(String run, PropertyLine line) {
        return Checked.note(
                "line.setback",
                Severity.MUST_FIX,
                run,
                run + " goes over the " + line.what() + ": beyond it the land is another's. Local code governs.",
                Basis.job("set-back from the lot line"));
    }

    /** Seen from its own yard. */
    public static Finding beyondLine(String run, PropertyLine line, Length face, RuleTable rules) {
        return Checked.note(
                "line.setback",
                Severity.MUST_FIX,
                run,
                run + " stands beyond the " + line.what() + ", " + rules.say().text(face)
                        + " over it: the line lies on the yard's side of the fence. Move the run, or say which of its sides is"
                        + " outside. Local code governs.",
                Basis.job("set-back from the lot line"));
    }

    /** Nobody stands for a line that the fence is measured from. */
    public static Finding vouched(PropertyLine line) {
        return line.certifiedBy()
                .match(
                        who -> Checked.note(
                                "line.certified",
                                who.is().equals("owner") ? Severity.CAUTION : Severity.PASS,
                                "site",
                                "The " + line.what() + " is certified by "
                                        + switch (who.is()) {
                                            case "pins" -> "the pins found on site.";
                                            case "survey" -> "a survey.";
                                            default -> "the owner's word: the proposal says so. Find the pins.";
                                        },
                                Basis.commonPractice("the line is the owner's to certify")),
                        unsaid -> Checked.note(
                                "line.certified",
                                Severity.CANNOT_SAY,
                                "site",
                                "Nobody has said who certifies the " + line.what() + ": pins, a survey, or the owner.",
                                Basis.commonPractice("the line is the owner's to certify")));
    }

    /** A task that digs on a day that no locate ticket covers. */
    public static Finding outsideTicket(String task, LocalDate first, LocalDate last, Optional<LocateTicket> nearest) {
        String ticket = nearest.map(near -> "Ticket " + near.number() + " holds from " + near.digFrom() + " through "
                        + near.validThrough() + ". Renew it before it ends, or move the work.")
                .orElse("No ticket is on file.");
        return Checked.note(
                "dig.window",
                Severity.MUST_FIX,
                "site",
                "\"" + task + "\" is planned from " + first + " to " + last
                        + ", and not every day of it lies in the days that a locate ticket allows. " + ticket,
                Basis.clause("state one-call law; the locate ticket; local law governs"));
    }

    /** A utility that was marked on another ticket than the one that covers the day: its paint and flags no longer hold. */
    public static Finding outsideMark(
            String run, NoDig marked, String task, LocalDate first, LocalDate last, LocateTicket ticket) {
        return Checked.note(
                "dig.window",
                Severity.MUST_FIX,
                run,
                "The " + marked.why() + " on " + run + " was marked on ticket " + ticket.number()
                        + ", which holds from "
                        + ticket.digFrom() + " through " + ticket.validThrough() + "; \"" + task + "\" is planned from "
                        + first + " to " + last + ". Have it marked again, or move the work.",
                Basis.clause("state one-call law; the locate ticket; local law governs"));
    }

    public static Finding insideTicket(String task, LocalDate first, LocalDate last, LocateTicket ticket) {
        return Checked.note(
                "dig.window",
                Severity.PASS,
                "site",
                "\"" + task + "\", " + first + " to " + last + ", lies in the days of locate ticket " + ticket.number()
                        + " (" + ticket.digFrom() + " through " + ticket.validThrough() + ").",
                Basis.clause("state one-call law; the locate ticket; local law governs"));
    }

    /** What must stay shut while the fence is down. */
    public static Finding overnight(Overnight kept, Length needed, double days, RuleTable rules) {
        String start = "While the fence is down, " + kept.what() + " must stay shut in or out overnight for about "
                + days(days) + ": ";
        if (kept.temporaryFence().isZero())
            return Checked.note(
                    "contain.overnight",
                    Severity.CANNOT_SAY,
                    "site",
                    start + "nobody has said how much temporary fence there will be; "
                            + rules.say().text(needed) + " closes the line.",
                    Basis.commonPractice("never left open overnight"));
        return Checked.of(
                "contain.overnight",
                Severity.CAUTION,
                "site",
                start + rules.say().text(kept.temporaryFence()) + " of temporary fence, "
                        + rules.say().text(needed) + " of line to close.",
                Basis.commonPractice("never left open overnight"),
                Measure.provided(kept.temporaryFence().inches(), needed.inches(), "in"));
    }

    /** A pool's barrier is never open overnight. */
    public static Finding poolOvernight(Length line, double days, RuleTable rules) {
        return Checked.note(
                "contain.overnight",
                Severity.CAUTION,
                "site",
                "A pool's barrier is never open overnight: " + rules.say().text(line) + " of line, about " + days(days)
                        + " of work. Close it each evening, or say under rules.overnight how much temporary fence stands.",
                Basis.commonPractice("a pool is never left open overnight; local code governs"));
    }

    private static String days(double days) {
        return Math.ceil(days) <= 1 ? "a day" : (long) Math.ceil(days) + " days";
    }
}
