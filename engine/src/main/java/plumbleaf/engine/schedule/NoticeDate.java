package plumbleaf.engine.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Notice;
import plumbleaf.engine.job.NoticeFrom;
import plumbleaf.engine.job.Stated;

/**
 * The last day for a notice: {@code day counted from + days}, calendar days, the day counted from not among them. Whether the place counts so, and whether a day that
 * falls on a weekend moves, is local law, which governs; this is a reminder and no legal advice.
 *
 * @param due open while nobody knows when the work begins or ends
 * @param planned whether it is counted from a plan and may move
 */
public record NoticeDate(Notice notice, Stated<LocalDate> due, boolean planned) {
    public static List<NoticeDate> of(List<Notice> notices, WorkSpan span) {
        List<NoticeDate> dates = new ArrayList<>();
        for (Notice notice : notices) {
            boolean first = notice.from() == NoticeFrom.FIRST_WORK;
            Stated<LocalDate> from = first ? span.first() : span.last();
            dates.add(new NoticeDate(
                    notice,
                    from.match(said -> Stated.of(said.is().plusDays(notice.days())), open -> Stated.open()),
                    !(first && span.begun())));
        }
        return dates;
    }

    /** As people read it: by when, counted from what, and whether it has gone out. */
    public String words() {
        String when = due.match(said -> "by " + said.is() + (planned ? " as planned" : ""), open -> "no day yet");
        String counted = notice.days() + (notice.days() == 1 ? " day" : " days") + " from "
                + notice.from().words();
        return notice.sent()
                .match(
                        said -> "sent " + said.is() + " (" + when + ", " + counted + ")",
                        open -> when + " (" + counted + ")");
    }
}
