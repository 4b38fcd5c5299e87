package plumbleaf.engine.labour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;

class LaboursTest {
    private static final List<LabourRate> RATES = List.of(
            rate("dig", "", 0, 1), rate("dig", "clay", 12, 2), rate("dig", "clay", 24, 3), rate("picket", "", 0, 0.1));

    @Test
    void theRateOfThatSoilAndTheLeastSizeThatIsEnoughGoesFirst() {
        Labour labour = Labours.of(
                List.of(dig("clay", 10, "P1"), dig("clay", 12, "P2"), dig("clay", 16, "P3"), dig("sand", 10, "P4")),
                RATES);
        assertThat(labour.tasks()).extracting(TaskHours::hours).containsExactly(4.0, 3.0, 1.0);
        assertThat(labour.tasks().get(0).causes()).containsExactly("P1", "P2");
    }

    @Test
    void whatHasNoRateIsSaidNotLeftOut() {
        Labour labour = Labours.of(List.of(Work.of("weld", 40, "G1a"), Work.of("picket", 10, "B1")), RATES);
        assertThat(labour.hours()).isEqualTo(1);
        assertThat(labour.findings()).hasSize(1);
        assertThat(labour.findings().get(0).message()).startsWith("No hours in the price book for weld");
    }

    private static Work dig(String soil, double inches, String cause) {
        return new Work("dig", soil, Length.inches(inches), 1, cause);
    }

    private static LabourRate rate(String task, String soil, double upTo, double hours) {
        return new LabourRate(task, task, Phase.SET, soil, Length.inches(upTo), "one", hours, "test");
    }
}
