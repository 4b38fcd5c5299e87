package plumbleaf.jobfile.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.schedule.NoticeDate;
import plumbleaf.engine.schedule.WorkSpan;

/**
 * A day that somebody has to keep, though nobody works for it: a ticket that begins or runs out, a notice that has to go out.
 *
 * @param isMoney whether only those who see money see it
 */
public record CalendarDate(String job, LocalDate day, String words, boolean isMoney) {
    /** Those of a job, in order. */
    public static List<CalendarDate> of(Design design) {
        Job job = design.job();
        List<CalendarDate> dates = new ArrayList<>();
        for (LocateTicket ticket : job.existing().tickets()) {
            dates.add(new CalendarDate(
                    job.title(), ticket.digFrom(), "locate ticket " + ticket.number() + ": dig from today", false));
            dates.add(new CalendarDate(
                    job.title(),
                    ticket.validThrough(),
                    "locate ticket " + ticket.number() + " holds for the last day; renew it before any more digging",
                    false));
        }
        WorkSpan span = WorkSpan.of(design.quote().schedule(), job.log().hours());
        for (NoticeDate notice : NoticeDate.of(job.money().billing().notices(), span)) {
            if (notice.notice().sent().isSaid()) continue;
            notice.due()
                    .value()
                    .ifPresent(day -> dates.add(new CalendarDate(
                            job.title(), day, notice.notice().what() + ": the last day, " + notice.words(), true)));
        }
        job.money()
                .validUntil()
                .value()
                .ifPresent(
                        day -> dates.add(new CalendarDate(job.title(), day, "the price holds for the last day", true)));
        dates.sort(Comparator.comparing(CalendarDate::day));
        return dates;
    }
}
