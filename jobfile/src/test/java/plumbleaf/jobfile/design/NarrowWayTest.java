package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.labour.TaskHours;
import plumbleaf.engine.schedule.Quote;

/** A side yard no machine gets through, and a long way for the barrow. */
class NarrowWayTest {
    private static final Quote OPEN = quote("");

    @Test
    void throughANarrowWayTheSameFeetOfHoleAreDugByHandForLonger() {
        Labour hand = quote("\"access\": { \"passage\": \"30\\\"\" }, ").labour();
        assertThat(quantity(hand, "dig-hand")).isEqualTo(quantity(OPEN.labour(), "dig"));
        assertThat(quantity(hand, "dig")).isZero();
        assertThat(hand.hours(Phase.SET)).isGreaterThan(OPEN.labour().hours(Phase.SET));
    }

    @Test
    void whereTheDiggerFitsNothingChanges() {
        Quote wide = quote("\"access\": { \"passage\": \"30\\\"\", \"machine\": \"30\\\"\" }, ");
        assertThat(wide.labour()).isEqualTo(OPEN.labour());
        assertThat(wide.price().total()).isEqualTo(OPEN.price().total());
    }

    @Test
    void twiceTheWayIsTwiceTheCarryingAndTheScheduleSaysSo() {
        Quote near = quote("\"access\": { \"carry\": \"60'\" }, ");
        Quote far = quote("\"access\": { \"carry\": \"120'\" }, ");
        assertThat(quantity(near.labour(), "carry")).isPositive();
        assertThat(quantity(far.labour(), "carry")).isCloseTo(2 * quantity(near.labour(), "carry"), offset(1e-9));
        assertThat(far.price().total()).isGreaterThan(near.price().total());
        assertThat(far.schedule().siteDays())
                .isGreaterThanOrEqualTo(OPEN.schedule().siteDays());
        assertThat(far.findings())
                .filteredOn(finding -> finding.id().equals("schedule.access"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("carried 120'", "instead of"));
    }

    private static Quote quote(String access) {
        return Yard.nursery()
                .with("\"site\": {", "\"site\": { " + access)
                .design()
                .quote();
    }

    private static double quantity(Labour labour, String task) {
        return labour.tasks().stream()
                .filter(each -> each.rate().task().equals(task))
                .mapToDouble(TaskHours::quantity)
                .sum();
    }
}
