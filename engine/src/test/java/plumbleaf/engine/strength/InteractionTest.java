package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.Section;

class InteractionTest {
    private static final Length POST = Length.feet(6);

    private static BaseAction action(double alongLbIn, double acrossLbIn, double torsionLbIn) {
        return new BaseAction(
                Force.ZERO,
                Force.ZERO,
                Force.ZERO,
                Moment.poundInches(alongLbIn),
                Moment.poundInches(acrossLbIn),
                Moment.poundInches(torsionLbIn));
    }

    @Test
    void aSquarePostIsWorstAtFortyFiveDegreesByRootTwo() {
        Section post = Examples.square(2, 0.12, "looked-up");
        double worst = 0;
        double worstAt = 0;
        for (int degrees = 0; degrees <= 90; degrees++) {
            double a = Math.toRadians(degrees);
            double ratio = Interaction.ratio(post, action(5000 * Math.cos(a), 5000 * Math.sin(a), 0), POST);
            if (ratio > worst) {
                worst = ratio;
                worstAt = degrees;
            }
        }
        assertThat(worstAt).isEqualTo(45);
        assertThat(worst / Interaction.ratio(post, action(5000, 0, 0), POST)).isCloseTo(Math.sqrt(2), within(1e-12));
    }

    @Test
    void aRoundPostDoesNotCareWhichWay() {
        Section post = Examples.pipe(2.375, 0.154);
        double straight = Interaction.ratio(post, action(5000, 0, 0), POST);
        assertThat(Interaction.ratio(post, action(3000, -4000, 0), POST)).isCloseTo(straight, within(1e-12));
    }

    @Test
    void littleTorsionIsLeftOutMuchIsSquared() {
        Section post = Examples.pipe(2.375, 0.154);
        double limit = TubeStrength.of(post).allowableTorsion().poundInches();
        double bending = Interaction.ratio(post, action(5000, 0, 0), POST);
        assertThat(Interaction.ratio(post, action(5000, 0, 0.19 * limit), POST)).isEqualTo(bending);
        assertThat(Interaction.ratio(post, action(5000, 0, 0.5 * limit), POST))
                .isCloseTo(bending + 0.25, within(1e-12));
    }

    @Test
    void littleWeightCountsHalfUnlessTorsionIsThere() {
        Section post = Examples.pipe(2.375, 0.154);
        double limit = TubeStrength.of(post).allowableTorsion().poundInches();
        double critical = TubeStrength.compression(post, POST.times(2.1)).pounds() / TubeStrength.SAFETY;
        BaseAction heavy = action(5000, 0, 0).plus(BaseAction.weight(Force.pounds(0.1 * critical)));
        double bending = Interaction.ratio(post, action(5000, 0, 0), POST);
        assertThat(Interaction.ratio(post, heavy, POST)).isCloseTo(bending + 0.05, within(1e-12));
        BaseAction turned = heavy.plus(action(0, 0, 0.3 * limit));
        assertThat(Interaction.ratio(post, turned, POST)).isCloseTo(bending + 0.1 + 0.09, within(1e-12));
    }
}
