package plumbleaf.engine.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Actual;
import plumbleaf.engine.job.Notice;
import plumbleaf.engine.job.NoticeFrom;
import plumbleaf.engine.job.Stated;

class NoticeDateTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 4, 19);
    private static final Notice PRELIMINARY =
            new Notice("preliminary notice", 20, NoticeFrom.FIRST_WORK, Stated.open());
    private static final Notice LIEN = new Notice("claim of lien", 90, NoticeFrom.LAST_WORK, Stated.open());
    private static final Schedule PLAN = new Schedule(
            List.of(
                    task("set", 16, MONDAY, MONDAY.plusDays(1)),
                    task("cure", 0, MONDAY.plusDays(2), MONDAY.plusDays(4)),
                    task("hang", 8, MONDAY.plusDays(7), MONDAY.plusDays(7))),
            3,
            3);

    @Test
    void isCountedFromThePlanUntilWorkBegins() {
        List<NoticeDate> dates = NoticeDate.of(List.of(PRELIMINARY, LIEN), WorkSpan.of(PLAN, List.of()));
        assertThat(dates)
                .extracting(NoticeDate::words)
                .containsExactly(
                        "by 2027-05-09 as planned (20 days from the first day of work)",
                        "by 2027-07-25 as planned (90 days from the last day of work)");
    }

    @Test
    void hoursWrittenDownGoBeforeThePlan() {
        WorkSpan begun = WorkSpan.of(PLAN, List.of(worked(MONDAY.plusDays(2))));
        assertThat(begun.first()).isEqualTo(Stated.of(MONDAY.plusDays(2)));
        assertThat(begun.last()).isEqualTo(Stated.of(MONDAY.plusDays(7)));
        WorkSpan over = WorkSpan.of(PLAN, List.of(worked(MONDAY.plusDays(9)), worked(MONDAY)));
        assertThat(over.last()).isEqualTo(Stated.of(MONDAY.plusDays(9)));
        assertThat(NoticeDate.of(List.of(PRELIMINARY), over).get(0).words())
                .isEqualTo("by 2027-05-09 (20 days from the first day of work)");
    }

    @Test
    void withoutAnyDayThereIsNone() {
        WorkSpan none = WorkSpan.of(new Schedule(List.of(), 0, 3), List.of());
        assertThat(NoticeDate.of(List.of(LIEN), none).get(0).words()).startsWith("no day yet");
    }

    private static Actual worked(LocalDate day) {
        return new Actual(Stated.of(day), "dig", "", 1, 1, "");
    }

    private static PlannedTask task(String key, double hours, LocalDate first, LocalDate last) {
        return new PlannedTask(key, key, hours, 1, Stated.of(first), Stated.of(last));
    }
}
