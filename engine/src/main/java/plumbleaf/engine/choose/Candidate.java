package plumbleaf.engine.choose;

import java.util.function.Function;
import plumbleaf.engine.money.Money;

/**
 * A build that could be made.
 *
 * @param id its parts in a fixed order, which also breaks ties of price
 * @param price what it costs with everything that differs between builds: material, labor, trips, finish
 */
public record Candidate<B>(String id, B build, Money price) {
    /** The same, its build said otherwise. */
    public <C> Candidate<C> as(Function<B, C> said) {
        return new Candidate<>(id, said.apply(build), price);
    }
}
