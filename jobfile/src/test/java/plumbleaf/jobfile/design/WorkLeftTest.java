package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.schedule.JobPlan;
import plumbleaf.engine.schedule.PlannedTask;
import plumbleaf.engine.schedule.Schedule;

/** What a job still wants of the calendar: nothing once it is billed to the end, and of one under way what nobody wrote down as done. */
class WorkLeftTest {
    private static final LocalDate DUG = LocalDate.of(2027, 5, 3);
    private static final Yard YARD = Yard.nursery();
    private static final Design DESIGN = YARD.design();

    @Test
    void aJobBilledToTheEndTakesNoDayAndOneBilledInPartAll() {
        String total = DESIGN.quote().price().total().text();
        assertThat(left(bill("bills", total), DUG).tasks()).isEmpty();
        assertThat(left(bill("bills", total), DUG).siteDays()).isZero();
        assertThat(left(bill("paid", total), DUG).tasks()).isEmpty();
        assertThat(left(bill("bills", "$100.00"), DUG).tasks())
                .isEqualTo(DESIGN.quote().schedule().tasks());
    }

    @Test
    void postsThatStandAreNotSetAgainAndTheirConcreteCuresFromTheDayItWasPoured() {
        int cure = DESIGN.quote().schedule().cureDays();
        Yard set = done(Phase.SET, 1);
        assertThat(keys(left(set, DUG.plusDays(1)))).doesNotContain("set").contains("cure", "hang");
        assertThat(keys(left(set, DUG.plusDays(cure + 1))))
                .doesNotContain("set", "cure")
                .contains("hang");
    }

    @Test
    void halfTheHolesLeaveHalfTheHours() {
        PlannedTask whole = task(DESIGN.quote().schedule(), "set");
        PlannedTask half = task(left(done(Phase.SET, 0.5), DUG), "set");
        assertThat(half.hours()).isCloseTo(whole.hours() / 2, offset(1e-9));
        assertThat(half.days()).isLessThan(whole.days()).isGreaterThanOrEqualTo(whole.days() / 2);
        assertThat(task(left(done(Phase.SET, 0.5), DUG), "hang"))
                .isEqualTo(task(DESIGN.quote().schedule(), "hang"));
    }

    private static Schedule left(Yard yard, LocalDate from) {
        Design design = yard.design();
        return JobPlan.of(design.job(), design.quote(), from).schedule();
    }

    private static Yard bill(String list, String amount) {
        String what = list.equals("bills") ? "what" : "how";
        return YARD.with(
                "\"stages\": [",
                "\"billing\": { \"" + list + "\": [ { \"date\": \"2027-06-01\", \"" + what
                        + "\": \"all of it\", \"amount\": \"" + amount + "\" } ] }, \"stages\": [");
    }

    /** The same share of everything in a phase, written down on one day. */
    private static Yard done(Phase phase, double share) {
        List<String> rows = DESIGN.quote().labour().tasks().stream()
                .filter(task -> task.phase() == phase)
                .map(task -> "{ \"date\": \"" + DUG + "\", \"task\": \""
                        + task.rate().task() + "\", \"quantity\": " + task.quantity() * share + ", \"hours\": 1 }")
                .toList();
        return YARD.with("\"money\": {", "\"actuals\": [" + String.join(", ", rows) + "], \"money\": {");
    }

    private static PlannedTask task(Schedule schedule, String key) {
        return schedule.tasks().stream()
                .filter(task -> task.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> keys(Schedule schedule) {
        return schedule.tasks().stream().map(PlannedTask::key).toList();
    }
}
