package plumbleaf.engine.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Stated;

class YardCalendarTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 4, 19);

    @Test
    void aCrewWorksElsewhereWhileConcreteCures() {
        List<Booking> plan =
                YardCalendar.of(List.of(job("A", 1, 3, 1), job("B", 1, 3, 1)), new WorkingDays(MONDAY, List.of()), 1);
        assertThat(plan.stream().map(YardCalendarTest::line))
                .containsExactly(
                        "A set crew 1 2027-04-19 to 2027-04-19",
                        "A cure  2027-04-20 to 2027-04-22",
                        "A hang crew 1 2027-04-23 to 2027-04-23",
                        "B set crew 1 2027-04-20 to 2027-04-20",
                        "B cure  2027-04-21 to 2027-04-23",
                        "B hang crew 1 2027-04-26 to 2027-04-26");
    }

    @Test
    void nobodyWorksOnADayOff() {
        List<Booking> plan =
                YardCalendar.of(List.of(job("A", 2, 0, 0)), new WorkingDays(MONDAY, List.of(MONDAY.plusDays(1))), 1);
        assertThat(plan.get(0).last()).isEqualTo(MONDAY.plusDays(2));
    }

    @Test
    void nobodyIsInTwoPlacesAndNothingHangsTooEarly() {
        Random random = new Random(61);
        for (int round = 0; round < 300; round++) {
            List<JobPlan> jobs = new ArrayList<>();
            for (int i = random.nextInt(8); i >= 0; i--)
                jobs.add(job("J" + i, 0.5 * (1 + random.nextInt(6)), random.nextInt(5), 0.5 * (1 + random.nextInt(3))));
            WorkingDays days = new WorkingDays(MONDAY, List.of(MONDAY.plusDays(random.nextInt(10))));
            List<Booking> plan = YardCalendar.of(jobs, days, 1 + random.nextInt(3));
            Set<String> taken = new TreeSet<>();
            for (Booking booking : plan) {
                if (booking.who().isEmpty()) continue;
                for (LocalDate day : days.between(booking.first(), booking.last())) {
                    if (!(day.equals(booking.first()) && booking.afternoon()))
                        assertThat(taken.add(booking.who() + day + "am")).isTrue();
                    if (!(day.equals(booking.last()) && booking.untilNoon()))
                        assertThat(taken.add(booking.who() + day + "pm")).isTrue();
                }
            }
            for (JobPlan job : jobs) {
                LocalDate cured = last(plan, job.job(), "cure", MONDAY.minusDays(1));
                assertThat(first(plan, job.job(), "hang")).isAfter(cured);
            }
        }
    }

    private static LocalDate last(List<Booking> plan, String job, String key, LocalDate none) {
        return plan.stream()
                .filter(booking -> booking.job().equals(job) && booking.key().equals(key))
                .map(Booking::last)
                .findFirst()
                .orElse(none);
    }

    private static LocalDate first(List<Booking> plan, String job, String key) {
        return plan.stream()
                .filter(booking -> booking.job().equals(job) && booking.key().equals(key))
                .map(Booking::first)
                .findFirst()
                .orElseThrow();
    }

    private static JobPlan job(String name, double setDays, int cureDays, double hangDays) {
        List<PlannedTask> tasks = new ArrayList<>();
        tasks.add(task("set", setDays));
        if (cureDays > 0) tasks.add(task("cure", cureDays));
        if (hangDays > 0) tasks.add(task("hang", hangDays));
        return new JobPlan(name, new Schedule(tasks, setDays + hangDays), MONDAY, MONDAY);
    }

    private static PlannedTask task(String key, double days) {
        return new PlannedTask(key, key, key.equals("cure") ? 0 : days * 16, days, Stated.open(), Stated.open());
    }

    private static String line(Booking booking) {
        return booking.job() + " " + booking.key() + " " + booking.who() + " " + booking.first() + " to "
                + booking.last();
    }
}
