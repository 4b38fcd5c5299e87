package plumbleaf.engine.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Volume;

class PourDaysTest {
    private static PlannedTask task(String key, double days, String first, String last) {
        return new PlannedTask(key, key, 1, days, Stated.of(LocalDate.parse(first)), Stated.of(LocalDate.parse(last)));
    }

    private static Schedule schedule(PlannedTask... tasks) {
        return new Schedule(List.of(tasks), 1, 3);
    }

    private static List<PourDays.Hole> holes(double... cubicFeet) {
        return IntStream.range(0, cubicFeet.length)
                .mapToObj(i -> new PourDays.Hole("P" + (i + 1), false, Volume.cubicFeet(cubicFeet[i])))
                .toList();
    }

    /** A day and a half, Friday to Monday noon: two thirds of the concrete on the first day. */
    @Test
    void theDaysShareTheHolesByTheirConcrete() {
        List<PourDay> days = PourDays.of(schedule(task("set", 1.5, "2027-05-07", "2027-05-10")), holes(2, 1, 1, 1, 1));
        assertThat(days)
                .containsExactly(
                        new PourDay(1, Stated.of(LocalDate.parse("2027-05-07")), List.of("P1", "P2", "P3")),
                        new PourDay(2, Stated.of(LocalDate.parse("2027-05-10")), List.of("P4", "P5")));
    }

    @Test
    void whereTheOldFenceComesDownUntilNoonTheFirstDayIsHalfAsLong() {
        List<PourDay> days = PourDays.of(
                schedule(
                        task("tear-out", 0.5, "2027-05-03", "2027-05-03"),
                        task("set", 1.5, "2027-05-03", "2027-05-04")),
                holes(1, 1, 1));
        assertThat(days.get(0).posts()).containsExactly("P1");
        assertThat(days.get(1).posts()).containsExactly("P2", "P3");
        assertThat(days.get(1).date()).isEqualTo(Stated.of(LocalDate.parse("2027-05-04")));
    }

    @Test
    void everyHoleIsPouredOnceAndWithoutAPlanAllOnOneDay() {
        List<PourDay> days = PourDays.of(schedule(), holes(3, 1, 2));
        assertThat(days).containsExactly(new PourDay(1, Stated.open(), List.of("P1", "P2", "P3")));
        assertThat(PourDays.of(schedule(), List.of())).isEmpty();
    }

    @Test
    void gatePostsAreFilledFirst() {
        List<PourDays.Hole> walk = List.of(
                new PourDays.Hole("P1", false, Volume.cubicFeet(1)),
                new PourDays.Hole("P2", true, Volume.cubicFeet(1)),
                new PourDays.Hole("P3", false, Volume.cubicFeet(1)));
        List<PourDay> days = PourDays.of(schedule(task("set", 1, "2027-05-03", "2027-05-03")), walk);
        assertThat(days.get(0).posts()).containsExactly("P2", "P1", "P3");
    }
}
