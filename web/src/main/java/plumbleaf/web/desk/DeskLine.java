package plumbleaf.web.desk;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import plumbleaf.web.store.JobLine;

/** A job on the desk, as printed. */
public record DeskLine(String id, String title, String stage, String changed) {
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("MMM d, yyyy HH:mm 'UTC'", Locale.US).withZone(ZoneOffset.UTC);

    static DeskLine of(JobLine line) {
        return new DeskLine(line.id().text(), line.title(), line.stage(), DAY.format(line.changedAt()));
    }
}
