package plumbleaf.engine.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.FrostMonths;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.labour.LabourRate;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.labour.TaskHours;
import plumbleaf.engine.quantity.Length;

class SchedulesTest {
    private static final Pace TWO_PEOPLE = new Pace(2, 8, 3);

    @Test
    void cureStandsBetweenSettingAndBuildingAndWeekendsAreFree() {
        // 12 hours of two people are a day (12 / 16 to the next half); set on Thursday 6 May 2027.
        Schedule plan = Schedules.of(
                labour(hours(Phase.SET, 12), hours(Phase.BUILD, 20), hours(Phase.HANG, 4)),
                TWO_PEOPLE,
                Stated.of(LocalDate.of(2027, 5, 6)),
                true,
                ColdWeather.none());
        assertThat(plan.tasks()).extracting(PlannedTask::key).containsExactly("set", "cure", "build", "hang");
        assertThat(day(plan.tasks().get(0).first())).isEqualTo("2027-05-06");
        // Friday to Sunday it cures; Monday and half of Tuesday rails and pickets, then the gate.
        assertThat(day(plan.tasks().get(1).last())).isEqualTo("2027-05-09");
        assertThat(day(plan.tasks().get(2).first())).isEqualTo("2027-05-10");
        assertThat(day(plan.tasks().get(2).last())).isEqualTo("2027-05-11");
        assertThat(day(plan.tasks().get(3).first())).isEqualTo("2027-05-11");
        assertThat(plan.siteDays()).isEqualTo(1 + 1.5 + 0.5);
    }

    @Test
    void aStartOnAWeekendWaitsForMonday() {
        Schedule plan = Schedules.of(
                labour(hours(Phase.BUILD, 8)),
                TWO_PEOPLE,
                Stated.of(LocalDate.of(2027, 5, 8)),
                true,
                ColdWeather.none());
        assertThat(day(plan.tasks().get(0).first())).isEqualTo("2027-05-10");
    }

    @Test
    void theShopWorksBesideTheCrewAndTheGateWaitsForItsLeaf() {
        Schedule plan = Schedules.of(
                labour(hours(Phase.SHOP, 16 * 9), hours(Phase.SET, 16), hours(Phase.HANG, 8)),
                TWO_PEOPLE,
                Stated.of(LocalDate.of(2027, 5, 3)),
                true,
                ColdWeather.none());
        assertThat(day(plan.tasks().get(0).first())).isEqualTo("2027-05-03");
        assertThat(day(plan.tasks().get(1).first())).isEqualTo("2027-05-03");
        // Nine days of shop end on Thursday 13 May; cured it was on the 6th.
        assertThat(day(plan.tasks().get(3).first())).isEqualTo("2027-05-14");
    }

    @Test
    void wetWoodWaitsForItsFinishUntilAMeterSaysItIsDry() {
        Labour labour = labour(hours(Phase.BUILD, 16), hours(Phase.FINISH, 8));
        Stated<LocalDate> start = Stated.of(LocalDate.of(2027, 5, 3));
        Schedule wet = Schedules.of(labour, TWO_PEOPLE, start, false, ColdWeather.none());
        assertThat(wet.tasks()).extracting(PlannedTask::key).containsExactly("build", "dry", "finish");
        assertThat(day(wet.tasks().get(2).first())).isEqualTo("2027-06-01");
        Schedule dry = Schedules.of(labour, TWO_PEOPLE, start, true, ColdWeather.none());
        assertThat(day(dry.tasks().get(1).first())).isEqualTo("2027-05-04");
    }

    @Test
    void concretePouredInAFrostMonthWaitsTheLongerCure() {
        Labour labour = labour(hours(Phase.SET, 16), hours(Phase.HANG, 8));
        ColdWeather winter = new ColdWeather(FrostMonths.of(Month.NOVEMBER, Month.MARCH), 6);
        Stated<LocalDate> lateOctober = Stated.of(LocalDate.of(2027, 10, 29));
        assertThat(Schedules.of(labour, TWO_PEOPLE, lateOctober, true, winter).tasks())
                .as("poured in October, young in November")
                .extracting(PlannedTask::days)
                .containsExactly(1.0, 6.0, 0.5);
        assertThat(Schedules.of(labour, TWO_PEOPLE, Stated.of(LocalDate.of(2027, 10, 27)), true, winter)
                        .tasks()
                        .get(1)
                        .days())
                .isEqualTo(3.0);
        assertThat(Schedules.of(labour, TWO_PEOPLE, Stated.open(), true, winter)
                        .tasks()
                        .get(1)
                        .days())
                .as("nobody said when")
                .isEqualTo(3.0);
    }

    @Test
    void withoutAStartThereAreDaysButNoDates() {
        Schedule plan = Schedules.of(
                labour(hours(Phase.SHOP, 8), hours(Phase.SET, 17)),
                TWO_PEOPLE,
                Stated.open(),
                true,
                ColdWeather.none());
        assertThat(plan.tasks()).extracting(PlannedTask::days).containsExactly(0.5, 1.5, 3.0);
        assertThat(plan.tasks()).noneMatch(task -> task.first().isSaid());
    }

    private static String day(Stated<LocalDate> date) {
        return date.match(said -> said.is().toString(), unsaid -> "none");
    }

    private static Labour labour(TaskHours... tasks) {
        return new Labour(List.of(tasks), List.of());
    }

    private static TaskHours hours(Phase phase, double hours) {
        LabourRate rate = new LabourRate("x", "x", phase, "", Length.ZERO, "x", 1, "test");
        return new TaskHours(rate, hours, hours, List.of("P1"));
    }
}
