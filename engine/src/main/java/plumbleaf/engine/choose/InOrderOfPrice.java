package plumbleaf.engine.choose;

import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.PriorityQueue;
import java.util.function.BiFunction;
import plumbleaf.engine.money.Money;

/**
 * Builds of two parts each, the cheapest first, without making them all: of every first part only the next build waits in a heap. Among equal prices by id, as a sorted
 * list of all of them would stand.
 */
public final class InOrderOfPrice<A, B, C> implements Iterator<Candidate<C>> {
    private final PriorityQueue<Lane<A, B>> lanes = new PriorityQueue<>(
            Comparator.comparing((Lane<A, B> lane) -> lane.price).thenComparing(Lane::id));
    private final BiFunction<A, B, C> build;

    public InOrderOfPrice(List<Parts<A, B>> parts, BiFunction<A, B, C> build) {
        this.build = build;
        for (Parts<A, B> each : parts) if (!each.ons().isEmpty()) lanes.add(new Lane<>(each, 0));
    }

    @Override
    public boolean hasNext() {
        return !lanes.isEmpty();
    }

    @Override
    public Candidate<C> next() {
        Lane<A, B> first = lanes.poll();
        if (first == null) throw new NoSuchElementException("Every build was seen");
        if (first.at + 1 < first.parts.ons().size()) lanes.add(new Lane<>(first.parts, first.at + 1));
        Candidate<B> on = first.parts.ons().get(first.at);
        return new Candidate<>(first.id(), build.apply(first.parts.one().build(), on.build()), first.price);
    }

    /** A first part and how far along what it may be put on one has come. */
    private static final class Lane<A, B> {
        private final Parts<A, B> parts;
        private final int at;
        private final Money price;
        private String id = "";

        private Lane(Parts<A, B> parts, int at) {
            this.parts = parts;
            this.at = at;
            this.price = parts.one().price().plus(parts.ons().get(at).price());
        }

        /** Made where it is asked for: most lanes are told apart by their price. */
        private String id() {
            if (id.isEmpty()) id = parts.one().id() + " " + parts.ons().get(at).id();
            return id;
        }
    }
}
