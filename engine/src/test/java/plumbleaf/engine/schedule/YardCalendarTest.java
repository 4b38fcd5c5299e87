package plumbleaf.engine.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.FrostMonths;
import plumbleaf.engine.job.LocateTicket;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.Phase;

class YardCalendarTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 4, 19);

    @Test
    void aCrewWorksElsewhereWhileConcreteCures() {
        List<Booking> plan = YardCalendar.of(List.of(job("A", 1, 3, 1), job("B", 1, 3, 1)), plain(1), MONDAY);
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
                YardCalendar.of(List.of(job("A", 2, 0, 0)), plain(1).alsoOff(List.of(MONDAY.plusDays(1))), MONDAY);
        assertThat(plan.get(0).last()).isEqualTo(MONDAY.plusDays(2));
    }

    @Test
    void oneAugerIsNotOnTwoJobsTheSameDay() {
        Machine auger = new Machine("auger", 1, List.of(Phase.SET));
        HouseDays house = new HouseDays(2, 6, 0, List.of(auger), List.of());
        List<Booking> plan = YardCalendar.of(List.of(job("A", 1.5, 0, 0), job("B", 1, 0, 0)), house, MONDAY);
        assertThat(plan.stream().map(YardCalendarTest::line))
                .containsExactly("A set crew 1 2027-04-19 to 2027-04-20", "B set crew 1 2027-04-21 to 2027-04-21");
    }

    @Test
    void aCrewOnVacationIsPassedOverAndABrokenMachineWaitedFor() {
        HouseDays house = new HouseDays(
                2,
                6,
                0,
                List.of(new Machine("auger", 2, List.of(Phase.SET))),
                List.of(
                        new DayOff("crew 1", MONDAY, MONDAY.plusDays(1), "vacation"),
                        new DayOff("auger", MONDAY.plusDays(1), MONDAY.plusDays(1), "repair"),
                        new DayOff("auger", MONDAY.plusDays(1), MONDAY.plusDays(1), "repair")));
        List<Booking> plan = YardCalendar.of(List.of(job("A", 2, 0, 0)), house, MONDAY);
        assertThat(line(plan.get(0))).isEqualTo("A set crew 2 2027-04-19 to 2027-04-21");
    }

    @Test
    void inAFrostMonthConcreteWaitsLongerAndTheDiggersAreTold() {
        JobPlan winter = withSite(job("A", 1, 3, 1), List.of(), FrostMonths.of(Month.NOVEMBER, Month.APRIL));
        List<Booking> plan = YardCalendar.of(List.of(winter), plain(1), MONDAY);
        assertThat(plan.get(1).last()).isEqualTo(MONDAY.plusDays(6));
        assertThat(plan.get(0).notes().get(0)).contains("55 F", "6 days", "ACI 306R");
        JobPlan summer = withSite(job("A", 1, 3, 1), List.of(), FrostMonths.of(Month.NOVEMBER, Month.MARCH));
        assertThat(YardCalendar.of(List.of(summer), plain(1), MONDAY).get(1).last())
                .isEqualTo(MONDAY.plusDays(3));
    }

    @Test
    void diggingTakesTheTicketThatHoldsUntilItIsDone() {
        LocateTicket first = new LocateTicket("71", MONDAY, MONDAY.plusDays(1));
        LocateTicket second = new LocateTicket("72", MONDAY.plusDays(7), MONDAY.plusDays(20));
        JobPlan both = withSite(job("A", 3, 0, 0), List.of(first, second), FrostMonths.UNSAID);
        Booking dug = YardCalendar.of(List.of(both), plain(1), MONDAY).get(0);
        assertThat(dug.first()).isEqualTo(MONDAY.plusDays(7));
        assertThat(dug.notes()).containsExactly("Locate ticket 72 holds from 2027-04-26 through 2027-05-09.");
        JobPlan one = withSite(job("A", 3, 0, 0), List.of(first), FrostMonths.UNSAID);
        assertThat(YardCalendar.of(List.of(one), plain(1), MONDAY)
                        .get(0)
                        .notes()
                        .get(0))
                .contains("renew it before 2027-04-20, or do not dig");
    }

    @Test
    void daysKeptForRainAreBookedForNobody() {
        HouseDays house = new HouseDays(1, 6, 0.1, List.of(), List.of());
        List<Booking> plan = YardCalendar.of(List.of(job("A", 4, 0, 0), job("B", 1, 0, 0)), house, MONDAY);
        Booking rain = plan.get(1);
        assertThat(rain.key() + rain.first() + rain.last()).isEqualTo("rain2027-04-232027-04-23");
        assertThat(rain.isWait()).isTrue();
        assertThat(rain.notes())
                .containsExactly("Done on 2027-04-22, and by 2027-04-23 if rain takes no more than that.");
        assertThat(plan.get(2).first()).isEqualTo(MONDAY.plusDays(4));
    }

    @Test
    void aMachineTheHouseHasNoneOfIsSaidAndNotWaitedForForever() {
        HouseDays house = new HouseDays(1, 6, 0, List.of(new Machine("auger", 0, List.of(Phase.SET))), List.of());
        assertThatThrownBy(() -> YardCalendar.of(List.of(job("A", 1, 0, 0)), house, MONDAY))
                .hasMessageContaining("never finds the days");
    }

    @Test
    void nobodyAndNothingIsInTwoPlacesAndNothingHangsTooEarly() {
        Random random = new Random(61);
        for (int round = 0; round < 300; round++) {
            List<JobPlan> jobs = new ArrayList<>();
            for (int i = random.nextInt(8); i >= 0; i--)
                jobs.add(job("J" + i, 0.5 * (1 + random.nextInt(6)), random.nextInt(5), 0.5 * (1 + random.nextInt(3))));
            int crews = 1 + random.nextInt(3);
            Machine auger = new Machine("auger", 1 + random.nextInt(2), List.of(Phase.SET));
            Machine truck = new Machine("truck", 1 + random.nextInt(crews), List.of(Phase.SET, Phase.HANG));
            List<DayOff> off = new ArrayList<>();
            for (String who : List.of(DayOff.EVERYONE, "crew 1", "crew 2", "auger", "truck")) {
                LocalDate from = MONDAY.plusDays(random.nextInt(10));
                off.add(new DayOff(who, from, from.plusDays(random.nextInt(3)), ""));
            }
            HouseDays house = new HouseDays(crews, 6, 0.1 * random.nextInt(3), List.of(auger, truck), off);
            List<Booking> plan = YardCalendar.of(jobs, house, MONDAY);
            Set<String> taken = new TreeSet<>();
            Map<String, Set<String>> held = new TreeMap<>();
            for (Booking booking : plan) {
                if (booking.isWait()) continue;
                for (LocalDate day : worked(house, booking)) {
                    if (!(day.equals(booking.first()) && booking.afternoon()))
                        assertThat(taken.add(booking.who() + day + "am")).isTrue();
                    if (!(day.equals(booking.last()) && booking.untilNoon()))
                        assertThat(taken.add(booking.who() + day + "pm")).isTrue();
                    for (String machine : booking.machines())
                        held.computeIfAbsent(machine + " " + day, none -> new TreeSet<>())
                                .add(booking.job());
                }
                assertThat(house.isOff(booking.who(), booking.first())).isFalse();
                assertThat(house.isOff(DayOff.EVERYONE, booking.last())).isFalse();
            }
            held.forEach((onDay, there) -> {
                Machine machine = onDay.startsWith("auger") ? auger : truck;
                LocalDate day = LocalDate.parse(onDay.substring(onDay.indexOf(' ') + 1));
                assertThat(there.size()).as(onDay).isLessThanOrEqualTo(house.fit(machine, day));
            });
            for (JobPlan job : jobs) {
                LocalDate cured = last(plan, job.job(), "cure", MONDAY.minusDays(1));
                assertThat(first(plan, job.job(), "hang")).isAfter(cured);
            }
        }
    }

    /** Days of a booking on which its worker and its machines are there. */
    private static List<LocalDate> worked(HouseDays house, Booking booking) {
        return house.working(MONDAY).between(booking.first(), booking.last()).stream()
                .filter(day -> !house.isOff(booking.who(), day))
                .filter(day -> house.machines().stream()
                        .filter(machine -> booking.machines().contains(machine.name()))
                        .allMatch(machine -> house.fit(machine, day) > 0))
                .toList();
    }

    private static HouseDays plain(int crews) {
        return new HouseDays(crews, 6, 0, List.of(), List.of());
    }

    private static JobPlan withSite(JobPlan job, List<LocateTicket> tickets, FrostMonths frost) {
        return new JobPlan(job.job(), job.schedule(), job.notBefore(), tickets, false, frost);
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
        return new JobPlan(
                name, new Schedule(tasks, setDays + hangDays, cureDays), MONDAY, List.of(), false, FrostMonths.UNSAID);
    }

    private static PlannedTask task(String key, double days) {
        return new PlannedTask(key, key, key.equals("cure") ? 0 : days * 16, days, Stated.open(), Stated.open());
    }

    private static String line(Booking booking) {
        return booking.job() + " " + booking.key() + " " + booking.who() + " " + booking.first() + " to "
                + booking.last();
    }
}
