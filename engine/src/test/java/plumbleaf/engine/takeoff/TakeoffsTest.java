package plumbleaf.engine.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.quantity.Force;

class TakeoffsTest {
    private static final CutPlanner NONE = task -> new CutAnswer.TooFewBars(true, 0);

    @Test
    void wasteIsAddedOnceAndRoundingShown() {
        Takeoff order =
                order(List.of(box("screw", 100, 5, 18.40)), pieces("screw", 150, "B1"), pieces("screw", 145, "B2"));
        TakeoffLine line = order.lines().get(0);
        assertThat(line.net()).isEqualTo(295);
        assertThat(line.withWaste()).isEqualTo(295 * 1.05);
        assertThat(line.units()).isEqualTo(4);
        assertThat(line.cost()).isEqualTo(Money.cents(7360));
        assertThat(line.causes()).containsExactly(new Cause("B1", 150), new Cause("B2", 145));
        assertThat(order.causedBy("B2")).containsExactly(line);
    }

    @Test
    void aHairOverAWholeUnitBuysNoOther() {
        double third = 1 / 3.0;
        Need need = new Need("paint", "paint", PartGroup.FINISH, NetUnit.GALLONS, third + third + third + 1e-15, "G1");
        Sold can = sold("paint", OrderUnit.CAN, 1, NetUnit.GALLONS, 1, 0, 50);
        assertThat(order(List.of(can), need).lines().get(0).units()).isEqualTo(1);
    }

    @Test
    void theCheapestWayToBuyIsTaken() {
        // 30 ft3 with 10 %: 55 bags at 6.85 are 376.75; two yards at 215 are 430. At 60 ft3 the yards win.
        Sold bag = sold("concrete", OrderUnit.BAG, 0.6, NetUnit.CUBIC_FEET, 1, 0.1, 6.85);
        Sold yard = sold("concrete", OrderUnit.YARD, 27, NetUnit.CUBIC_FEET, 2, 0.1, 215);
        assertThat(order(List.of(bag, yard), concrete(30)).lines().get(0).sold().unit())
                .isEqualTo(OrderUnit.BAG);
        TakeoffLine much = order(List.of(bag, yard), concrete(60)).lines().get(0);
        assertThat(much.sold().unit()).isEqualTo(OrderUnit.YARD);
        assertThat(much.units()).isEqualTo(3);
    }

    @Test
    void whatHasNoPriceIsSaid() {
        Takeoff order = order(List.of(), pieces("latch", 1, "G1a"));
        assertThat(order.lines()).isEmpty();
        assertThat(order.findings().get(0).message())
                .isEqualTo("latch (latch) has no price in the price book; the total is without it. Add a row.");
    }

    @Test
    void bagsAgainstReadyMixSayWhatTheOtherCostsAndFromWhereItPays() {
        // Bags 6.85 for 0.6 ft3, yards 215 for 27 ft3, two at least, both with 10 % over: two yards are 430, 62 bags
        // 424.70, 63 bags 431.55. So ready-mix pays
        // from 62 x 0.6 / 1.1 = 33.8 ft3 up; in steps of a bag's 0.6 that is 34.2.
        Sold bag = sold("concrete", OrderUnit.BAG, 0.6, NetUnit.CUBIC_FEET, 1, 0.1, 6.85);
        Sold yard = sold("concrete", OrderUnit.YARD, 27, NetUnit.CUBIC_FEET, 2, 0.1, 215);
        OtherWay other =
                order(List.of(bag, yard), concrete(30)).lines().get(0).others().get(0);
        assertThat(other.sold()).isEqualTo(yard);
        assertThat(other.units()).isEqualTo(2);
        assertThat(other.cost()).isEqualTo(Money.dollars(430));
        assertThat(other.cheaperFrom()).isCloseTo(34.2, within(1e-9));
    }

    /** 1,500 ft3 of concrete are 2,500 bags for 15,000; by the yard it is sold from so many up. */
    private static OtherWay otherThanTaken(int leastYards) {
        Sold bag = sold("concrete", OrderUnit.BAG, 0.6, NetUnit.CUBIC_FEET, 1, 0, 6);
        Sold yard = sold("concrete", OrderUnit.YARD, 27, NetUnit.CUBIC_FEET, leastYards, 0, 215);
        return order(List.of(bag, yard), concrete(1500)).lines().get(0).others().get(0);
    }

    /** Eighty yards are 17,200, 2,866 bags 17,196 and one more 17,202: ready-mix pays from 2,867 x 0.6 = 1,720.2 ft3, far above the first two thousand bags. */
    @Test
    void theOtherWayIsComparedFromTheNeedUpHoweverLargeItIs() {
        OtherWay later = otherThanTaken(80);
        assertThat(later.sold().unit()).isEqualTo(OrderUnit.YARD);
        assertThat(later.cheaperFrom()).isCloseTo(1720.2, within(1e-9));
    }

    /** Ready-mix by the single yard is 7.96 a cubic foot, bags 10: bags never pay. From 2,500 bags up two thousand counts are 2,500 to 4,499. */
    @Test
    void whereNoOtherWayPaysItSaysHowFarItLooked() {
        OtherWay never = otherThanTaken(1);
        assertThat(never.sold().unit()).isEqualTo(OrderUnit.BAG);
        assertThat(never.cheaperFrom()).isZero();
        assertThat(never.lookedTo()).isCloseTo(4499 * 0.6, within(1e-9));
    }

    @Test
    void splicedGoodsAreBoughtByTheirTotalLength() {
        // Fabric is woven together and swaged rail slipped together: 3 stretches of 38 ft from 50 ft rolls are 114 ft,
        // three rolls, whatever the stretches.
        Sold roll = sold("fabric", OrderUnit.ROLL, 50, NetUnit.FEET, 1, 0, 120);
        Need[] stretches = new Need[3];
        for (int i = 0; i < 3; i++)
            stretches[i] = new Need("fabric", "fabric", PartGroup.FENCE, NetUnit.FEET, 38, "B" + i);
        TakeoffLine line = order(List.of(roll), stretches).lines().get(0);
        assertThat(line.units()).isEqualTo(3);
        assertThat(line.cut()).isFalse();
        assertThat(line.causes()).hasSize(3);
    }

    @Test
    void whatLiesInTheYardIsUsedFirstAndTheRestBought() {
        Sold bag = sold("concrete", OrderUnit.BAG, 0.6, NetUnit.CUBIC_FEET, 1, 0.1, 6.85);
        OnHand yard =
                new OnHand(List.of(), List.of(new OnHand.HeldGoods("shelf", "concrete", 7, 0.6, NetUnit.CUBIC_FEET)));
        Takeoff some = order(List.of(bag), yard, concrete(6));
        // 6 ft3 and 10 % are 11 bags; 7 are there.
        assertThat(some.taken()).containsExactly(new StockTake("shelf", "concrete", 7));
        assertThat(some.lines().get(0).units()).isEqualTo(4);
        assertThat(some.cost()).isEqualTo(Money.cents(4 * 685));
        assertThat(some.lines().get(0).fromYard()).isCloseTo(7 * 0.6 / 1.1, within(1e-9));
        Takeoff all = order(List.of(bag), yard, concrete(2));
        assertThat(all.taken()).containsExactly(new StockTake("shelf", "concrete", 4));
        assertThat(all.lines().get(0).units()).isZero();
        assertThat(all.cost()).isEqualTo(Money.ZERO);
        assertThat(all.lines().get(0).causes()).containsExactly(new Cause("P1", 2));
    }

    @Test
    void whatIsBoughtOfASupplierHasItsWeightAndCostAndNothingOutOfTheYard() {
        // Three hinges in boxes of two are 2 boxes of $10, five latches 5 of $4, each package 1 lb; the concrete lies
        // in the yard.
        Sold bag = sold("concrete", OrderUnit.BAG, 0.6, NetUnit.CUBIC_FEET, 1, 0.1, 6.85);
        OnHand yard =
                new OnHand(List.of(), List.of(new OnHand.HeldGoods("shelf", "concrete", 7, 0.6, NetUnit.CUBIC_FEET)));
        Takeoff takeoff = order(
                List.of(box("hinge", 2, 0, 10), box("latch", 1, 0, 4), bag),
                yard,
                pieces("hinge", 3, "G1"),
                pieces("latch", 5, "G1"),
                concrete(2));
        List<Supplied> all = Supplied.of(takeoff);
        assertThat(all).hasSize(1);
        assertThat(all.get(0).supplier()).isEqualTo("yard");
        assertThat(all.get(0).lines()).extracting(TakeoffLine::item).containsExactlyInAnyOrder("hinge", "latch");
        assertThat(all.get(0).weight().pounds()).isCloseTo(7, within(1e-9));
        assertThat(all.get(0).cost()).isEqualTo(Money.dollars(40));
    }

    @Test
    void aSpareStickIsBoughtOnceHalfABadOneIsToBeExpected() {
        // One in twenty bad: nine rails hold 0.45 of a bad one, ten 0.5, twenty-one 1.05.
        Sold rail = sold("rail", OrderUnit.STICK, 8, NetUnit.FEET, 1, 0.05, 10);
        assertThat(rail.sticksFor(1)).isEqualTo(1);
        assertThat(rail.sticksFor(9)).isEqualTo(9);
        assertThat(rail.sticksFor(10)).isEqualTo(11);
        assertThat(rail.sticksFor(20)).isEqualTo(21);
        assertThat(rail.sticksFor(21)).isEqualTo(23);
        assertThat(ofSticks(rail, 9).wasteShare()).isZero();
        assertThat(ofSticks(rail, 10).wasteShare()).isEqualTo(0.05);
    }

    private static TakeoffLine ofSticks(Sold rail, int sticks) {
        return new TakeoffLine(
                PartGroup.FENCE,
                List.of(),
                sticks * 8,
                rail.withCulls(sticks) * 8,
                rail,
                rail.sticksFor(sticks),
                Money.ZERO,
                true,
                0,
                List.of());
    }

    private static Takeoff order(List<Sold> goods, Need... needs) {
        return order(goods, OnHand.NOTHING, needs);
    }

    private static Takeoff order(List<Sold> goods, OnHand yard, Need... needs) {
        Goods shop = new Goods() {
            @Override
            public List<Sold> of(String item) {
                return goods.stream().filter(sold -> sold.item().equals(item)).toList();
            }

            @Override
            public OnHand onHand() {
                return yard;
            }
        };
        return Takeoffs.of(new Needs(new ArrayList<>(List.of(needs)), List.of()), shop, Saws.USUAL, NONE);
    }

    private static Need pieces(String item, int count, String cause) {
        return Need.pieces(item, item, PartGroup.HARDWARE, count, cause);
    }

    private static Need concrete(double ft3) {
        return new Need("concrete", "concrete", PartGroup.FOOTINGS, NetUnit.CUBIC_FEET, ft3, "P1");
    }

    private static Sold box(String item, double contents, double wastePct, double price) {
        return sold(item, OrderUnit.BOX, contents, NetUnit.PIECES, 1, wastePct / 100, price);
    }

    private static Sold sold(
            String item, OrderUnit unit, double contents, NetUnit of, long least, double waste, double price) {
        return new Sold(
                item,
                item,
                "yard",
                unit,
                contents,
                of,
                least,
                new UnitPrice(BigDecimal.valueOf(price)),
                true,
                waste,
                Force.pounds(1),
                "2027-03-01",
                "test");
    }
}
