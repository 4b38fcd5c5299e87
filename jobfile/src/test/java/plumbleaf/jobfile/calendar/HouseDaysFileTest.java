package plumbleaf.jobfile.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.schedule.DayOff;
import plumbleaf.engine.schedule.HouseDays;
import plumbleaf.engine.schedule.Machine;
import plumbleaf.jobfile.input.InputError;

class HouseDaysFileTest {
    private static final LocalDate DAY = LocalDate.of(2027, 7, 5);

    @Test
    void whatIsWrittenIsRead() {
        HouseDays house = new HouseDays(
                2,
                7,
                0.125,
                List.of(new Machine("auger, big", 1, List.of(Phase.TEAR_OUT, Phase.SET))),
                List.of(
                        new DayOff(DayOff.EVERYONE, DAY, DAY, "holiday"),
                        new DayOff("auger, big", DAY, DAY.plusDays(3), "")));
        HouseDaysFile.Answer answer = HouseDaysFile.read("days.csv", HouseDaysFile.write(house));
        assertThat(answer.errors()).isEmpty();
        assertThat(answer.house()).containsExactly(house);
    }

    @Test
    void everyBadRowIsNamed() {
        String text = """
                kind,name,count,for,from,through,why
                house,crews,2.5,,,,
                machine,auger,0,set,,,
                machine,truck,1,set hoist,,,
                off,crew 9,,,2027-07-05,,
                off,everyone,,,2027-07-05,2027-07-01,
                off,everyone,,,July,,
                """;
        assertThat(HouseDaysFile.read("days.csv", text).errors())
                .extracting(InputError::text)
                .hasSize(6)
                .anyMatch(line -> line.contains("crew 9"))
                .anyMatch(line -> line.contains("hoist"))
                .anyMatch(line -> line.contains("before its first day"));
    }

    @Test
    void anEmptyFileIsTheUsualHouseWithoutMachines() {
        HouseDays house = HouseDaysFile.read("days.csv", "kind,name,count,for,from,through,why\n")
                .house()
                .get(0);
        assertThat(house.crews()).isEqualTo(1);
        assertThat(house.machines()).isEmpty();
    }
}
