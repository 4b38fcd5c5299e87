package plumbleaf.web.desk;

import java.util.Locale;
import java.util.OptionalLong;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.pricing.Statement;
import plumbleaf.web.room.Verdicts;

/**
 * What the desk says of a job, kept beside it so that a desk of thousands opens without designing one. Days are as written, empty where
 * nobody said.
 *
 * @param standing   by the job alone
 * @param cents      of the price with tax; nothing where there is none
 * @param severity   of its verdict, as a mark shows it
 * @param next       the one next thing to do
 * @param priceHolds until this day
 * @param digFrom    the first day of the locate ticket
 * @param digThrough its last
 * @param words      what a search looks through, in small letters
 */
record DeskCard(
        Standing standing,
        String customer,
        String place,
        OptionalLong cents,
        String severity,
        String verdict,
        String next,
        String priceHolds,
        String digFrom,
        String digThrough,
        String words) {

    static DeskCard unreadable(String title) {
        return new DeskCard(
                Standing.SETTLE,
                "",
                "",
                OptionalLong.empty(),
                "must-fix",
                "cannot be read",
                "open its file and put it right",
                "",
                "",
                "",
                title.toLowerCase(Locale.ROOT));
    }

    static DeskCard of(String title, Design design) {
        Standing standing = Standing.of(design);
        String customer = design.job().site().customer();
        String place = design.job().site().address();
        String holds = design.job().money().validUntil().match(said -> said.is().toString(), unsaid -> "");
        return new DeskCard(
                standing,
                customer,
                place,
                OptionalLong.of(design.quote().price().total().cents()),
                Verdicts.severity(design.verdict()),
                Verdicts.words(design.verdict()),
                next(design, standing),
                holds,
                ticket(design, true),
                ticket(design, false),
                (title + " " + customer + " " + place).toLowerCase(Locale.ROOT));
    }

    private static String next(Design design, Standing standing) {
        return switch (standing) {
            case SETTLE, OFFERED -> firstFinding(design, "send the offer");
            case OFFER -> "send the offer";
            case SOLD -> firstFinding(design, "order, cut and weld");
            case BUILDING -> firstFinding(design, "write down hours; bill what is done");
            case OWED ->
                Statement.of(
                                        design.quote().price(),
                                        design.job().log().changes(),
                                        design.job().money().billing())
                                .balance()
                                .text()
                        + " to come in";
            case PAID ->
                design.job().log().complaints().isEmpty()
                        ? "look at hinges and finish by the care card"
                        : "see to what was called in";
        };
    }

    private static String firstFinding(Design design, String otherwise) {
        return design.findings().stream()
                .filter(finding -> finding.severity() == Severity.MUST_FIX || finding.severity() == Severity.CANNOT_SAY)
                .map(Finding::message)
                .findFirst()
                .orElse(otherwise);
    }

    private static String ticket(Design design, boolean first) {
        for (LocateTicket ticket : design.job().existing().tickets())
            return (first ? ticket.digFrom() : ticket.validThrough()).toString();
        return "";
    }
}
