package plumbleaf.engine.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.UsedMaterial;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.quantity.Force;

class ItemVarianceTest {
    @Test
    void usedIsHeldAgainstOrderedAndWhatIsLeftIsACredit() {
        Takeoff order = new Takeoff(List.of(line("concrete", 40, "6.35")), List.of(), List.of(), List.of());
        List<UsedMaterial> used = List.of(
                new UsedMaterial(Stated.open(), "concrete", 30, 0), new UsedMaterial(Stated.open(), "concrete", 14, 1));
        ItemVariance over = ItemVariance.of(order, used).get(0);
        assertThat(over.over()).isEqualTo(3);
        assertThat(over.worth()).isEqualTo(Money.cents(1905));
        ItemVariance left = ItemVariance.of(order, used.subList(0, 1)).get(0);
        assertThat(left.worth()).isEqualTo(Money.cents(-6350));
        assertThat(ItemVariance.of(order, List.of()).get(0).worth())
                .as("nothing is written down yet")
                .isEqualTo(Money.ZERO);
    }

    private static TakeoffLine line(String item, long units, String price) {
        Sold sold = new Sold(
                item,
                item,
                "yard",
                OrderUnit.BAG,
                1,
                NetUnit.PIECES,
                1,
                UnitPrice.of(price),
                true,
                0,
                Force.ZERO,
                "2027-03-01",
                "invented");
        Money cost = UnitPrice.of(price).times(BigDecimal.valueOf(units));
        return new TakeoffLine(PartGroup.FOOTINGS, List.of(), 40, 40, sold, units, cost, false, 0, List.of());
    }

    @Test
    void whatNobodyOrderedStandsWithNothingOrdered() {
        Takeoff none = new Takeoff(List.of(), List.of(), List.of(), List.of());
        List<ItemVariance> items = ItemVariance.of(
                none,
                List.of(
                        new UsedMaterial(Stated.open(), "shims", 6, 2),
                        new UsedMaterial(Stated.open(), "shims", 3, 0)));
        assertThat(items).hasSize(1);
        assertThat(items.get(0).used()).isEqualTo(7);
        assertThat(items.get(0).returned()).isEqualTo(2);
        assertThat(items.get(0).over()).isEqualTo(7);
        assertThat(items.get(0).worth()).isEqualTo(Money.ZERO);
    }
}
