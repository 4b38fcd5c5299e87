package plumbleaf.engine.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

class LoadListTest {
    private static final Truck SMALL = Truck.of(Force.pounds(1000), Length.feet(10), Length.feet(2));

    private static LoadList day(double pounds, double feet, Truck truck) {
        LoadList.LoadLine line =
                new LoadList.LoadLine("bar", "bars", 1, "each", Force.pounds(pounds), Length.feet(feet));
        return new LoadList(List.of(new LoadList.Load(LoadStage.SET, List.of(line))), truck);
    }

    @Test
    void aLoadTheTruckCarriesIsNotSpokenOf() {
        assertThat(day(1000, 12, SMALL).findings()).isEmpty();
    }

    @Test
    void aPoundTooMuchIsAnotherTripAndAnInchTooLongIsSaid() {
        List<Finding> findings = day(1001, 12.1, SMALL).findings();
        assertThat(findings).extracting(Finding::id).containsExactly("truck.load", "truck.length");
        assertThat(findings.get(0).message()).contains("2 trips");
        assertThat(findings.get(1).message()).contains("12.1 ft", "together are 12 ft");
        assertThat(findings)
                .allSatisfy(finding ->
                        assertThat(finding.basis().words()).contains("vehicle's own plate and state law govern"));
    }

    @Test
    void aTruckNobodyDescribedIsSaidToBeAssumed() {
        assertThat(day(10, 1, Truck.USUAL).findings()).extracting(Finding::id).containsExactly("truck.assumed");
        assertThat(new LoadList(List.of(), Truck.USUAL).findings()).isEmpty();
    }

    @Test
    void aDayUnloadsInTheOrderItWorks() {
        assertThat(List.of("post-cap-2x2", "concrete", "TUBE-2x2x0.12", "gravel"))
                .isSortedAccordingTo(Comparator.comparingInt((String item) -> OrderOfUse.of(LoadStage.SET, item))
                        .reversed());
        assertThat(List.of("rail-bracket", "rail-2x4/western_redcedar", "picket-1x6/western_redcedar", "picket-screw"))
                .isSortedAccordingTo(Comparator.comparingInt(item -> OrderOfUse.of(LoadStage.BUILD, item)));
        assertThat(List.of("fabric-72-0.148x2", "tension-bar-72", "tension-band-2.875", "fabric-tie"))
                .isSortedAccordingTo(Comparator.comparingInt(item -> OrderOfUse.of(LoadStage.BUILD, item)));
        assertThat(List.of("HINGE-ADJ-0.625", "bolt-0.5x3", OrderOfUse.LEAF, "LATCH-THUMB", "cane-bolt", "zinc-paint"))
                .isSortedAccordingTo(Comparator.comparingInt(item -> OrderOfUse.of(LoadStage.HANG, item)));
    }

    @Test
    void readyMixComesByItselfAndAWholeStickOfRailIsAsLongAsItIs() {
        Takeoff takeoff = new Takeoff(
                List.of(
                        line(PartGroup.FOOTINGS, "concrete", OrderUnit.YARD, 27, NetUnit.CUBIC_FEET, 2, 4050),
                        line(PartGroup.FENCE, "SWAGED-LIGHT-1.375x0.065", OrderUnit.STICK, 21, NetUnit.FEET, 3, 19)),
                List.of(),
                List.of(),
                List.of());
        LoadList list = LoadList.of(takeoff, List.of(), SMALL);
        assertThat(list.loads()).hasSize(2);
        assertThat(list.loads().get(0).weight().isZero()).isTrue();
        assertThat(list.loads().get(0).lines().get(0).what()).endsWith(": comes to the site, not loaded");
        assertThat(list.loads().get(1).weight()).isEqualTo(Force.pounds(57));
        assertThat(list.findings()).extracting(Finding::id).containsExactly("truck.length");
    }

    private static TakeoffLine line(
            PartGroup group, String item, OrderUnit unit, double contents, NetUnit of, long units, double pounds) {
        Sold sold = new Sold(
                item,
                item,
                "",
                unit,
                contents,
                of,
                1,
                UnitPrice.of("10"),
                true,
                0,
                Force.pounds(pounds),
                "2027-03-01",
                "invented");
        return new TakeoffLine(
                group,
                List.of(new Cause("B1", contents)),
                contents,
                contents,
                sold,
                units,
                sold.costOf(units),
                false,
                0,
                List.of());
    }
}
