package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.gate.GroundUnder;
import plumbleaf.engine.gate.RememberedGround;
import plumbleaf.engine.gate.TracedGround;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.pricing.OpenBook;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Length;

/**
 * The parts of a job's last two designs: an edit works out again what it touches, and a remedy's price what the remedy touches. Each part is worked out from its
 * question and from nothing else but the catalogue, the standards and the price book, and those are compared as a whole. Check: RedesignTest.
 */
final class DesignMemory {
    /** Of one gate with one build, on how many different grounds it is kept. */
    private static final int GROUNDS = 2;

    private final CutPlanner planner;
    private Optional<Job> job = Optional.empty();
    private Optional<Catalogue> catalogue = Optional.empty();
    private Optional<OpenBook> book = Optional.empty();

    private final Remembered<LinesQuestion, Surveyed> lines = new Remembered<>();
    private final Remembered<FenceWork.Question, FenceWork> fences = new Remembered<>();
    private final Remembered<HungQuestion, List<OnGround<GatePosts>>> gates = new Remembered<>();
    private final Remembered<ChoiceQuestion, List<OnGround<GateChoice>>> choices = new Remembered<>();
    private final Remembered<CutTask, CutAnswer> cuts = new Remembered<>();
    private final Remembered<CutTask, CutAnswer> orders = new Remembered<>();

    DesignMemory(CutPlanner planner) {
        this.planner = planner;
    }

    /** What the runs and the ground are worked out from: the job without its gates and money. */
    record LinesQuestion(Job job) {}

    /** Where the runs lie, and the ground along them. */
    record Surveyed(List<RunLine> lines, Ground ground) {
        Surveyed {
            lines = List.copyOf(lines);
        }
    }

    /**
     * @param hangs whether its frame is solved, or only drawn for its price
     * @param depth of its footings where it is fixed
     */
    record HungQuestion(GateQuestion gate, PickedGate pick, Stated<Length> depth, boolean hangs) {}

    /** @param dug holes that the job digs anyway */
    record ChoiceQuestion(GateQuestion gate, List<HoleSize> dug) {
        ChoiceQuestion {
            dug = List.copyOf(dug);
        }
    }

    /** An answer with what it asked of the ground. */
    private record OnGround<A>(A answer, TracedGround ground) {}

    /** A design begins, with what is sold and what it costs. The next step of the same one begins nothing: what the step before worked out is still there for it. */
    void begin(Job asked, Catalogue sold, PriceBook prices) {
        boolean soldAsBefore = catalogue.equals(Optional.of(sold));
        boolean pricedAsBefore = book.isPresent() && book.get().book().equals(prices);
        if (soldAsBefore && pricedAsBefore && job.equals(Optional.of(asked))) return;
        job = Optional.of(asked);
        lines.turn();
        fences.turn();
        gates.turn();
        choices.turn();
        cuts.turn();
        orders.turn();
        if (!soldAsBefore) {
            fences.forget();
            gates.forget();
            choices.forget();
        }
        catalogue = Optional.of(sold);
        if (pricedAsBefore) return;
        choices.forget();
        book = Optional.of(OpenBook.of(prices));
    }

    /** The price book that the design began with. */
    OpenBook book() {
        return book.orElseThrow();
    }

    Surveyed lines(LinesQuestion question, Function<Job, Surveyed> work) {
        return lines.answer(question, () -> work.apply(question.job()));
    }

    FenceWork fence(FenceWork.Question question, Supplier<FenceWork> work) {
        return fences.answer(question, work);
    }

    GatePosts gate(HungQuestion question, GroundUnder ground, Function<GroundUnder, GatePosts> work) {
        return onGround(gates.answer(question, ArrayList::new), ground, work);
    }

    GateChoice choice(ChoiceQuestion question, GroundUnder ground, Function<GroundUnder, GateChoice> work) {
        return onGround(choices.answer(question, ArrayList::new), ground, work);
    }

    private static <A> A onGround(List<OnGround<A>> known, GroundUnder ground, Function<GroundUnder, A> work) {
        for (OnGround<A> each : known) if (each.ground().isAnsweredAlikeBy(ground)) return each.answer();
        TracedGround traced = new TracedGround(ground);
        A answer = work.apply(RememberedGround.of(traced));
        if (known.size() == GROUNDS) known.remove(0);
        known.add(new OnGround<>(answer, traced));
        return answer;
    }

    /** The planner, asked each thing once: an order is told from a plan where that is known. */
    CutPlanner cuts() {
        return new CutPlanner() {
            @Override
            public CutAnswer plan(CutTask task) {
                return cuts.answer(task, () -> planner.plan(task));
            }

            @Override
            public CutAnswer order(CutTask task) {
                return cuts.known(task).orElseGet(() -> orders.answer(task, () -> planner.order(task)));
            }
        };
    }
}
