package plumbleaf.engine.wind;

import plumbleaf.engine.quantity.Length;

/** A part of a stretch, from its start: a gate's opening, a post's share. */
public record Span(Length from, Length to) {
    public Span {
        if (to.compareTo(from) <= 0) throw new IllegalArgumentException("A span ends after it starts");
    }

    public Length length() {
        return to.minus(from);
    }
}
