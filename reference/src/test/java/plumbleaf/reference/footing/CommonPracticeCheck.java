package plumbleaf.reference.footing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.footing.BagSize;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.Interaction;
import plumbleaf.jobfile.catalogue.StandardCatalogue;

/**
 * Two rules of the trade, held against the engine: a 24 in. hole of 8 to 10 in. takes 100 to 120 lb of concrete mix, and a thin-wall post lets a heavy leaf
 * bend it over where schedule 40 of the same outside size does not.
 * Source: common practice, no source.
 * Tolerance: the rule's own span; the second is a verdict.
 */
class CommonPracticeCheck {
    private static final double POST_OD_IN = 2.375;

    private static Force mixFor(double holeIn) {
        Area post = Area.squareInches(Math.PI * POST_OD_IN * POST_OD_IN / 4);
        Pour pour = Pour.of(new HoleSize(Length.inches(holeIn), Length.inches(24)), post);
        BagSize bag = BagSize.EIGHTY_POUND;
        return bag.weight().times(pour.volume().cubicFeet() / bag.yield().cubicFeet());
    }

    @Test
    void concreteMixOfAShallowHole() {
        assertThat(mixFor(9).pounds()).isBetween(100.0, 120.0);
        assertThat(mixFor(8).pounds()).isLessThan(100);
        assertThat(mixFor(10).pounds()).isGreaterThan(120);
    }

    private static double ratio(String id, Moment moment) {
        Section post = StandardCatalogue.load().section(id).orElseThrow();
        BaseAction action = new BaseAction(Force.ZERO, Force.ZERO, Force.ZERO, moment, Moment.ZERO, Moment.ZERO);
        return Interaction.ratio(post, action, Length.feet(6));
    }

    /** A 200 lb leaf, 8 ft wide: its weight stands 50 in. off the post. */
    @Test
    void aHeavyLeafOnThinWallAndOnScheduleForty() {
        Moment dead = Moment.poundInches(200 * 50);
        assertThat(ratio("LIGHT-2.375x0.065", dead)).isGreaterThan(1);
        assertThat(ratio("F1083-REG-2", dead)).isLessThan(0.8);
    }
}
