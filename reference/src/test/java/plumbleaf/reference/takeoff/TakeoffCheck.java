package plumbleaf.reference.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.takeoff.BarNeed;
import plumbleaf.engine.takeoff.Coating;
import plumbleaf.engine.takeoff.FenceNeeds;
import plumbleaf.engine.takeoff.Need;
import plumbleaf.engine.takeoff.Needs;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.engine.takeoff.OrderUnit;
import plumbleaf.engine.takeoff.PartGroup;
import plumbleaf.engine.takeoff.Saws;
import plumbleaf.engine.takeoff.Sold;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.engine.takeoff.Takeoffs;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * What is ordered: picket counts with culls, bags for a day of holes, gallons of stain, each rounded up once, after waste.
 * Source: geometry and bag yields on labels (MX14 to MX16, MX36, MX37); USDA Wood Handbook chapter 16 coverage (MX38, MX39); a bag mix's coverage guide (E11).
 * Tolerance: 0.1 %; counts exactly.
 */
class TakeoffCheck {
    @Test
    void weightOfPickets() {
        Vector vector = Vectors.one("takeoff", "MX14");
        double volumeIn3 = vector.in("n") * vector.in("t_in") * vector.in("w_in") * vector.in("L_in");
        vector.check("lb", volumeIn3 * Density.pcf(vector.in("lb_ft3")).perCubicInch());
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX15", "MX16"})
    void picketsWithCulls(String id) {
        Vector vector = Vectors.one("takeoff", id);
        int count = FenceNeeds.picketsOver(vector.in("run_in"), vector.in("w_in"), vector.in("gap_in"));
        assertThat(count).isEqualTo((int) vector.out("n"));
        List<BarNeed> bars = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Piece piece = Piece.square("k" + i, "B1", Length.feet(6).nanometres());
            bars.add(new BarNeed("picket", "picket", PartGroup.FENCE, BarNeed.Saw.WOOD, piece));
        }
        Sold sold = sold("picket", OrderUnit.STICK, 6, NetUnit.FEET, vector.in("waste_pct") / 100);
        TakeoffLine line = order(new Needs(List.of(), bars), sold);
        assertThat(line.units()).isEqualTo((long) vector.out("order"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX36", "MX37"})
    void bagsForAllHolesAreRoundedOnce(String id) {
        Vector vector = Vectors.one("takeoff", id);
        double post = vector.in("post_in");
        Area outline =
                Area.squareInches(vector.text("post_shape").equals("round") ? Math.PI * post * post / 4 : post * post);
        HoleSize hole = new HoleSize(Length.inches(vector.in("hole_in")), Length.inches(vector.in("depth_in")));
        double each = Pour.of(hole, outline).volume().cubicFeet();
        vector.check("ft3_each", each);
        List<Need> needs = new ArrayList<>();
        for (int i = 1; i <= (int) vector.in("n"); i++) needs.add(concrete(each, "P" + i));
        Sold bag = sold(
                "concrete",
                OrderUnit.BAG,
                vector.in("bag_yield_ft3"),
                NetUnit.CUBIC_FEET,
                vector.in("waste_pct") / 100);
        TakeoffLine line = order(new Needs(needs, List.of()), bag);
        assertThat(line.units()).isEqualTo((long) vector.out("bags"));
        vector.check("yd3", line.withWaste() / 27);
        assertThat(line.causes()).hasSize((int) vector.in("n"));
    }

    @Test
    void bagsOfACoverageGuide() {
        Vector vector = Vectors.one("takeoff", "E11");
        HoleSize hole =
                new HoleSize(Length.inches(vector.in("hole_dia_in")), Length.inches(vector.in("hole_depth_in")));
        double volume = Pour.of(hole, Area.ZERO).volume().cubicFeet();
        vector.check("volume_ft3", volume);
        Sold bag = sold("concrete", OrderUnit.BAG, vector.in("yield_ft3"), NetUnit.CUBIC_FEET, 0);
        assertThat(order(new Needs(List.of(concrete(volume, "P1")), List.of()), bag)
                        .units())
                .isEqualTo((long) vector.out("bags"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX38", "MX39"})
    void gallonsOfStain(String id) {
        Vector vector = Vectors.one("takeoff", id);
        Coating coating = new Coating(
                (int) vector.in("coats"), vector.in("cov1"), vector.in("cov2"), vector.in("loss_pct") / 100);
        double gallons = coating.gallons(Area.squareFeet(vector.in("area_ft2")), (int) vector.in("sides"));
        vector.check("gal", gallons);
        Need need = new Need("stain", "stain", PartGroup.FINISH, NetUnit.GALLONS, gallons, "R1");
        Sold can = sold("stain", OrderUnit.CAN, 1, NetUnit.GALLONS, 0);
        assertThat(order(new Needs(List.of(need), List.of()), can).units()).isEqualTo((long) vector.out("cans_1gal"));
    }

    private static TakeoffLine order(Needs needs, Sold sold) {
        return Takeoffs.of(needs, item -> List.of(sold), Saws.USUAL, new ProvenCutPlanner())
                .lines()
                .get(0);
    }

    private static Need concrete(double ft3, String cause) {
        return new Need("concrete", "concrete", PartGroup.FOOTINGS, NetUnit.CUBIC_FEET, ft3, cause);
    }

    private static Sold sold(String item, OrderUnit unit, double contents, NetUnit of, double waste) {
        return new Sold(
                item,
                item,
                "yard",
                unit,
                contents,
                of,
                1,
                UnitPrice.of("1"),
                true,
                waste,
                Force.ZERO,
                "2027-03-01",
                "test");
    }
}
