package plumbleaf.documents.typeset;

import java.util.List;
import plumbleaf.documents.drawing.Primitive;

/**
 * A piece of a column of text that no page break may cut. Its marks hang below y = 0, x from 0 at the left margin.
 *
 * @param withNext   whether it must not be the last on a page
 * @param repeated   marks set again on top of a page that begins with this slab: a table's headings; empty for none
 * @param repeatHigh height of those
 * @param newPage    whether it begins a page
 */
record Slab(
        double high,
        List<Primitive> marks,
        boolean withNext,
        List<Primitive> repeated,
        double repeatHigh,
        boolean newPage) {
    Slab {
        marks = List.copyOf(marks);
        repeated = List.copyOf(repeated);
    }

    static Slab of(double high, List<Primitive> marks) {
        return new Slab(high, marks, false, List.of(), 0, false);
    }

    Slab keptWithNext() {
        return new Slab(high, marks, true, repeated, repeatHigh, newPage);
    }

    Slab under(List<Primitive> headings, double headingsHigh) {
        return new Slab(high, marks, withNext, headings, headingsHigh, newPage);
    }

    static Slab pageBreak() {
        return new Slab(0, List.of(), false, List.of(), 0, true);
    }
}
