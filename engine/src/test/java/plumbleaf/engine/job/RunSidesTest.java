package plumbleaf.engine.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;

class RunSidesTest {
    private static final RunSide STREET = new RunSide(
            Length.feet(10),
            Length.feet(30),
            Stated.of(DesignBasis.ENGINEERED),
            Stated.open(),
            Stated.of(Length.inches(12)),
            Stated.open(),
            Stated.open());

    private static List<RunSide> changed(double fromFeet, double toFeet) {
        return RunSides.changed(
                List.of(STREET), Length.feet(fromFeet), Length.feet(toFeet), side -> side.withPost("X-3"));
    }

    private static String spans(List<RunSide> sides) {
        StringBuilder words = new StringBuilder();
        for (RunSide side : sides)
            words.append(Math.round(side.from().inFeet()))
                    .append('-')
                    .append(Math.round(side.to().inFeet()))
                    .append(side.basis().isSaid() ? "e" : "")
                    .append(side.post().isSaid() ? "p " : " ");
        return words.toString().strip();
    }

    /** Wherever the change lies over the side from 10 to 30 ft, the side keeps its basis and nothing is said twice. */
    @Test
    void aChangeLaidOverASideCutsIt() {
        assertThat(spans(changed(0, 5))).isEqualTo("0-5p 10-30e");
        assertThat(spans(changed(0, 15))).isEqualTo("0-10p 10-15ep 15-30e");
        assertThat(spans(changed(15, 20))).isEqualTo("10-15e 15-20ep 20-30e");
        assertThat(spans(changed(10, 30))).isEqualTo("10-30ep");
        assertThat(spans(changed(25, 40))).isEqualTo("10-25e 25-30ep 30-40p");
        assertThat(spans(changed(0, 40))).isEqualTo("0-10p 10-30ep 30-40p");
        assertThat(spans(changed(40, 50))).isEqualTo("10-30e 40-50p");
    }

    @Test
    void theWordsOfAnEditAreReadAgain() {
        List<RunSide> sides = RunSides.changed(
                List.of(STREET), Length.inches(6.5), Length.feet(20), side -> side.withDepth(Length.inches(42)));
        String text = RunSides.text(sides);
        assertThat(text)
                .isEqualTo("6-1/2\" to 10': depth 3' 6\" | 10' to 20': basis engineered hole 1' depth 3' 6\""
                        + " | 20' to 30': basis engineered hole 1'");
        assertThat(RunSides.of(text)).contains(sides);
        List<RunSide> closer = List.of(RunSide.open(Length.ZERO, Length.feet(8))
                .withDepth(Length.feet(3))
                .withMaxBay(Length.inches(66)));
        assertThat(RunSides.text(closer)).isEqualTo("0\" to 8': depth 3' bays 5' 6\"");
        assertThat(RunSides.of(RunSides.text(closer))).contains(closer);
        for (String other :
                List.of("somewhere", "0' to 8': basis fancy", "0' to 8': hole wide", "0' to 8': depth deep"))
            assertThat(RunSides.of(other)).as(other).isEmpty();
    }
}
