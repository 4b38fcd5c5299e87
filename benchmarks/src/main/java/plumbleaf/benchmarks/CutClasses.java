package plumbleaf.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Function;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.bars.CutPlan;

/**
 * Lists of published classes, planned with the effort that a cut list of its own has, in processor time: how many are proven, and how long it takes. Any class alone:
 * {@code ./measure --cuts correia 24 901} plans twenty-four lists of it from seed 901 on, and names those left open.
 */
@SuppressWarnings("ImmutableEnumChecker") // What draws a list holds nothing.
enum CutClasses {
    FALKENAUER_UNIFORM("uniform (Falkenauer)", OneLength::falkenauerUniform),
    FALKENAUER_TRIPLETS("triplets (Falkenauer)", OneLength::falkenauerTriplets),
    SCHOLL_1("first set (Scholl and others)", OneLength::schollFirst),
    SCHOLL_2("second set (Scholl and others)", OneLength::schollSecond),
    SCHOLL_3("third set (Scholl and others)", OneLength::schollThird),
    SCHWERIN("Schwerin and Waescher", OneLength::schwerin),
    WAESCHER("Waescher and Gau", OneLength::waescher),
    HARD_28("hardly any waste, as the hard 28 (Schoenfield)", OneLength::hardlyAnyWaste),
    RANDOM("random (Delorme and others)", OneLength::random),
    BARS_OF_THREE("bars of three (da Silva and Schouery)", OneLength::barsOfThree),
    GROWN_201("grown, one bar more, 201 pieces (Delorme and others)", random -> GrownLists.oneBarMore(201, random)),
    GROWN_402("grown, one bar more, 402", random -> GrownLists.oneBarMore(402, random)),
    GROWN_600("grown, one bar more, 600", random -> GrownLists.oneBarMore(600, random)),
    GROWN_801("grown, one bar more, 801", random -> GrownLists.oneBarMore(801, random)),
    GROWN_1002("grown, one bar more, 1,002", random -> GrownLists.oneBarMore(1002, random)),
    GROWN_FULL_202("grown, every bar full, 202", random -> GrownLists.everyBarFull(202, random)),
    GROWN_FULL_403("grown, every bar full, 403", random -> GrownLists.everyBarFull(403, random)),
    GROWN_FULL_601("grown, every bar full, 601", random -> GrownLists.everyBarFull(601, random)),
    GROWN_FULL_802("grown, every bar full, 802", random -> GrownLists.everyBarFull(802, random)),
    GROWN_FULL_1003("grown, every bar full, 1,003", random -> GrownLists.everyBarFull(1003, random)),
    CUT_AT_RANDOM_402("full bars cut at random, 402 pieces", random -> OneLength.cutAtRandom(10_000, 402, random)),
    CUT_AT_RANDOM_600("full bars cut at random, 600", random -> OneLength.cutAtRandom(20_000, 600, random)),
    CUT_AT_RANDOM_801("full bars cut at random, 801", random -> OneLength.cutAtRandom(40_000, 801, random)),
    MONACI("three and five lengths (Monaci)", SeveralLengths::monaci),
    CRAINIC("three and five lengths, other prices (Crainic and others)", SeveralLengths::crainic),
    CORREIA("three to twelve lengths (Correia and others)", SeveralLengths::correia),
    BELOV("two to eight lengths (Belov and Scheithauer)", SeveralLengths::belov);

    private static final int USUAL_LISTS = 10;

    private final String title;
    private final Function<Random, CutList> drawn;

    CutClasses(String title, Function<Random, CutList> drawn) {
        this.title = title;
        this.drawn = drawn;
    }

    /** The same list for the same seed everywhere. */
    CutList list(int seed) {
        return drawn.apply(new Random(seed * 7919L + name().hashCode()));
    }

    /** A row for each class, of so many lists from this seed on. */
    static List<String> rows(int lists, int first) {
        List<String> rows = new ArrayList<>();
        rows.add(HEADING);
        for (CutClasses each : values()) rows.add(each.row(lists, first));
        return rows;
    }

    private static final String HEADING =
            "| class | lists | pieces | proven | median | most |\n| --- | ---: | ---: | ---: | ---: | ---: |";

    private String row(int lists, int first) {
        List<Double> seconds = new ArrayList<>();
        int proven = 0;
        int most = 0;
        for (int seed = first; seed < first + lists; seed++) {
            CutList list = list(seed);
            double start = Clock.processorSeconds();
            CutPlan plan = plan(list);
            double took = Clock.processorSeconds() - start;
            seconds.add(took);
            most = Math.max(most, list.lengths().size());
            if (plan.proven()) proven++;
            else
                System.err.printf(
                        Locale.ROOT,
                        "Open: %s, seed %d, %d pieces, %s against %s, %s s%n",
                        this,
                        seed,
                        list.lengths().size(),
                        plan.cost().cents(),
                        plan.lowerBound().cents(),
                        Figure.text(took));
        }
        Figure figure = Figure.of(title, "s", seconds);
        return "| " + title + " | " + lists + " | to " + most + " | " + (proven == lists ? "all" : "**" + proven + "**")
                + " | " + Figure.text(figure.median()) + " s | " + Figure.text(figure.most()) + " s |";
    }

    private static CutPlan plan(CutList list) {
        return new ProvenCutPlanner()
                .order(list.task())
                .match(
                        planned -> planned.plan(),
                        tooLong -> {
                            throw new IllegalStateException("A piece is longer than any bar: " + tooLong);
                        },
                        tooFew -> {
                            throw new IllegalStateException("Bars without limit are too few: " + tooFew);
                        });
    }

    /** {@code ./measure --cuts [CLASS [LISTS [SEED]]]}: says the rows, and writes nothing. */
    static void say(List<String> words) {
        int lists = words.size() > 1 ? Integer.parseInt(words.get(1)) : USUAL_LISTS;
        int first = words.size() > 2 ? Integer.parseInt(words.get(2)) : 1;
        String wanted = words.isEmpty() ? "" : words.get(0).replace('-', '_').toUpperCase(Locale.ROOT);
        List<CutClasses> classes = Arrays.stream(values())
                .filter(each -> each.name().startsWith(wanted))
                .toList();
        if (classes.isEmpty()) {
            System.err.println("No class begins so. There are: " + Arrays.toString(values()));
            return;
        }
        System.out.println(HEADING);
        for (CutClasses each : classes) System.out.println(each.row(lists, first));
    }
}
