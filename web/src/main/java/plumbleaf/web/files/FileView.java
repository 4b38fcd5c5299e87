package plumbleaf.web.files;

import java.util.Locale;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.web.page.Moment;

/** A file as printed. */
public record FileView(String id, String name, String part, String size, String who, String at, boolean shown) {
    private static final double KILOBYTE = 1024;

    static FileView of(JobFiles.Line line) {
        return new FileView(
                line.id(),
                line.name(),
                switch (line.part().toLowerCase(Locale.ROOT)) {
                    case "job" -> "the job";
                    case "office" -> "the office only";
                    default -> line.part();
                },
                size(line.size()),
                line.who(),
                Moment.of(line.at()),
                line.kind().isShown());
    }

    private static String size(long bytes) {
        double kilobytes = Math.max(1, bytes / KILOBYTE);
        return kilobytes < KILOBYTE
                ? DecimalText.fixed(kilobytes, 0) + " KB"
                : DecimalText.fixed(kilobytes / KILOBYTE, 1) + " MB";
    }
}
