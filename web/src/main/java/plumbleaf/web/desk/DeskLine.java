package plumbleaf.web.desk;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.store.JobLine;

/**
 * A job on the desk, as printed.
 *
 * @param severity of its verdict, as a mark shows it; empty where its file is wrong
 * @param next     the one next thing to do
 */
public record DeskLine(
        String id,
        String title,
        String customer,
        String price,
        String severity,
        String verdict,
        String next,
        String changed) {
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("MMM d, yyyy HH:mm 'UTC'", Locale.US).withZone(ZoneOffset.UTC);

    static DeskLine of(JobLine line, Rooms.Summary summary) {
        return new DeskLine(
                line.id().text(),
                line.title(),
                summary.customer(),
                summary.price(),
                summary.severity(),
                summary.verdict(),
                summary.next(),
                DAY.format(line.changedAt()));
    }
}
