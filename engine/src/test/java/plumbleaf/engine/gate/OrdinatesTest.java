package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

class OrdinatesTest {
    /** Seven thirds of an inch: rounded alone each is 5/16 and they add to 2-3/16; from one datum they add to 2-5/16, the rounded whole. */
    @Test
    void roundedPartsAddUpToTheRoundedWhole() {
        List<Offset> thirds = new ArrayList<>();
        for (int i = 0; i <= 7; i++) thirds.add(Offset.inches(i / 3.0));
        Ordinates ordinates = new Ordinates(thirds);
        double sum = ordinates.between().stream().mapToDouble(Length::inches).sum();
        assertThat(sum).isCloseTo(2.3125, within(1e-12));
        assertThat(ordinates.rounded().get(7)).isEqualTo(Offset.inches(2.3125));
    }

    @Test
    void halvesGoAwayFromZero() {
        Ordinates ordinates = new Ordinates(List.of(Offset.inches(0.03125), Offset.inches(-0.03125)));
        assertThat(ordinates.rounded()).containsExactly(Offset.inches(0.0625), Offset.inches(-0.0625));
    }
}
