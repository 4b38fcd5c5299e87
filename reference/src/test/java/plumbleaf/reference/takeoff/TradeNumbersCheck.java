package plumbleaf.reference.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.Levelled;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.labour.Labours;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.labour.Work;
import plumbleaf.engine.labour.Works;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Layouts;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostSizes;
import plumbleaf.engine.line.RunLines;
import plumbleaf.engine.line.SpacingLimit;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.Category;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.schedule.Quote;
import plumbleaf.engine.schedule.Quotes;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.support.Support;
import plumbleaf.engine.takeoff.Assembly;
import plumbleaf.engine.takeoff.BayGoods;
import plumbleaf.engine.takeoff.FenceNeeds;
import plumbleaf.engine.takeoff.PostTake;
import plumbleaf.engine.takeoff.Saws;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.pricebook.PriceBooks;

/**
 * Counts, bags, hours and shares of a plain 100 ft of 6 ft wood fence on steel posts stay inside what crews and owners know. Tests of the engine with its example
 * price book, not proofs of it.
 * Source: common practice, no source.
 * Tolerance: the ranges people name.
 */
class TradeNumbersCheck {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();
    private static final PriceBook BOOK = PriceBooks.standard("example-2027").orElseThrow();
    private static final Quote HUNDRED_FEET = quote();

    @Test
    void aHole24InDeepOf8To10InTakes100To120PoundsOfConcrete() {
        // Dry mix as bags give it: 80 lb make 0.60 ft3. A 9 in. hole lies inside, 8 and 10 in. on either side.
        assertThat(mixPounds(9)).isBetween(100.0, 120.0);
        assertThat(mixPounds(8)).isLessThan(100);
        assertThat(mixPounds(10)).isGreaterThan(120);
    }

    @Test
    void tenByThirtySixRoundTwoAndThreeEighthsTakes2Point6Bags() {
        double bags = Pour.of(hole(10, 36), outline(2.375)).volume().cubicFeet() / 0.60;
        assertThat(bags).isBetween(2.55, 2.65);
    }

    @Test
    void pickets218TightAnd267BoardOnBoardInAHundredFeet() {
        // 218.2 boards of 5-1/2 in. side by side; board on board with 1 in. laps shows 4-1/2 in. of each.
        assertThat(FenceNeeds.picketsOver(1200, 5.5, 0)).isBetween(218, 219);
        assertThat(FenceNeeds.picketsOver(1200, 4.5, 0)).isEqualTo(267);
    }

    @Test
    void privacyFenceTakes14To22HoursAHundredFeet() {
        double hours = HUNDRED_FEET.labour().hours() - HUNDRED_FEET.labour().hours(Phase.TRAVEL);
        assertThat(hours).isBetween(14.0, 22.0);
    }

    @Test
    void tearOutTakes4To8HoursAHundredFeet() {
        assertThat(Labours.of(List.of(Work.of("tear-out", 100, "old")), BOOK.labour())
                        .hours())
                .isBetween(4.0, 8.0);
    }

    @Test
    void twoPeopleSet20To30HolesADay() {
        Section post = section();
        PostTake take = new PostTake(
                "P1",
                "R1",
                false,
                post,
                Length.inches(110),
                Length.inches(10),
                Length.inches(36),
                Length.ZERO,
                0,
                new Support.NewFooting());
        Job job = job();
        double hours =
                Labours.of(Works.post(take, job.site().soil()), BOOK.labour()).hours();
        assertThat(2 * 8 / hours).isBetween(20.0, 30.0);
    }

    @Test
    void laborIs35To50PercentOfDirectCostOnWood() {
        // Counted with travel, as owners do.
        Money labour = HUNDRED_FEET
                .price()
                .direct(Category.LABOUR)
                .plus(HUNDRED_FEET.price().direct(Category.TRAVEL));
        double share = (double) labour.cents() / HUNDRED_FEET.price().direct().cents();
        assertThat(share).isBetween(0.35, 0.50);
    }

    @Test
    void everyLineTracesToPartsAndEveryPartToLines() {
        for (TakeoffLine line : HUNDRED_FEET.takeoff().lines()) {
            assertThat(line.causes()).as(line.item()).isNotEmpty();
            double sum = line.causes().stream()
                    .mapToDouble(cause -> cause.quantity())
                    .sum();
            assertThat(sum).as(line.item()).isCloseTo(line.net(), within(1e-9));
        }
        assertThat(HUNDRED_FEET.takeoff().causedBy("P3")).isNotEmpty();
        assertThat(HUNDRED_FEET.takeoff().causedBy("B2.r1")).isNotEmpty();
        // The concrete of a hundred feet is a pallet and not a pick-up load, and the take-off says so.
        assertThat(HUNDRED_FEET.findings()).extracting(Finding::id).containsExactly("truck.load");
        assertThat(HUNDRED_FEET.takeoff().cutPlans()).allMatch(plan -> plan.proven());
    }

    private static double mixPounds(double holeIn) {
        return Pour.of(hole(holeIn, 24), outline(2.375)).volume().cubicFeet() / 0.60 * 80;
    }

    private static HoleSize hole(double diameterIn, double depthIn) {
        return new HoleSize(Length.inches(diameterIn), Length.inches(depthIn));
    }

    private static Area outline(double diameterIn) {
        return Area.squareInches(Math.PI * diameterIn * diameterIn / 4);
    }

    private static Section section() {
        return CATALOGUE.section("F1083-REG-2").orElseThrow();
    }

    private static Job job() {
        String text = """
                { "format": "plumbleaf-job", "version": 1, "title": "Hundred feet", "date": "2027-05-03",
                  "site": { "customer": "Imre Halloway", "address": "2 Ford Acre", "soil": { "kind": "sand", "state": "medium", "class": 4 } },
                  "ground": { "shots": [
                    { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" },
                    { "id": "S2", "run": "R1", "station": "100'", "elevation": "-36\\"" } ] },
                  "runs": [ { "id": "R1", "legs": [ { "length": "100'", "bearing": "90 deg" } ], "style": "wood-side-by-side",
                    "infill": "6'", "bottomGap": "2\\"", "fit": "racked", "maxBay": "8'" } ],
                  "money": { "priceBook": "example-2027", "overhead": "12%", "margin": "18%", "tax": "6%" } }
                """;
        JobReading reading = JobFile.read("hundred.json", text, CATALOGUE);
        assertThat(reading.errors()).isEmpty();
        return reading.job().orElseThrow();
    }

    private static Quote quote() {
        Job job = job();
        List<RunLine> lines = RunLines.of(job);
        Ground ground = Ground.of(job.ground(), Levelled.of(job.ground()), lines, job.display());
        Layout layout = Layouts.of(job, CATALOGUE, ground, lines, List.of(), new Sizes(), SpacingLimit.NONE);
        FenceStyle style = CATALOGUE.style("wood-side-by-side").orElseThrow();
        List<PostTake> posts = new ArrayList<>();
        for (Post post : layout.posts()) posts.addAll(PostTake.of(post, section(), hole(10, 30), Length.inches(4)));
        List<Assembly.StyledBay> bays = new ArrayList<>();
        for (Bay bay : layout.bays())
            bays.add(new Assembly.StyledBay(
                    bay, style, BayGoods.of(bay, style, CATALOGUE, layout.run(bay.run()), section())));
        Assembly assembly = new Assembly(posts, bays, List.of(), List.of(), List.of(), List.of(), List.of());
        return Quotes.of(assembly, job, BOOK, Saws.USUAL, new ProvenCutPlanner(), Stated.open());
    }

    private static final class Sizes implements PostSizes {
        @Override
        public Length post(Run run) {
            return Length.inches(2.375);
        }

        @Override
        public Length hole(Run run) {
            return Length.inches(10);
        }
    }
}
