package plumbleaf.web.page;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A point in time as pages print it. */
public final class Moment {
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("MMM d, yyyy HH:mm 'UTC'", Locale.US).withZone(ZoneOffset.UTC);

    private Moment() {}

    public static String of(Instant at) {
        return MINUTE.format(at);
    }
}
