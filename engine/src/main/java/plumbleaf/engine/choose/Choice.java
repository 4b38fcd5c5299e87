package plumbleaf.engine.choose;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the search found.
 *
 * @param best the cheapest build that passes, where one does; a list of one or none
 * @param next the builds that pass and come after it in price
 * @param rejected every cheaper build with the reason it fails: the proof. Without a best build, all of them
 * @param all how many builds there were
 */
public record Choice<B>(List<Candidate<B>> best, List<Candidate<B>> next, List<Rejected> rejected, int all) {
    public Choice {
        best = List.copyOf(best);
        next = List.copyOf(next);
        rejected = List.copyOf(rejected);
    }

    /** The same, its builds said otherwise. */
    public <C> Choice<C> as(Function<B, C> said) {
        return new Choice<>(
                best.stream().map(each -> each.as(said)).toList(),
                next.stream().map(each -> each.as(said)).toList(),
                rejected,
                all);
    }

    public Optional<Candidate<B>> cheapest() {
        return best.stream().findFirst();
    }
}
