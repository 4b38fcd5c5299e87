package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * A full symmetric six by six spring, in pounds, inches and radians: the force on each direction for a unit movement in each. Held as its
 * lower triangle by rows.
 */
public record SpringMatrix(List<Double> lowerTriangle) {
    private static final int ENTRIES = 21;

    public static final SpringMatrix NONE = new SpringMatrix(zeros());

    public SpringMatrix {
        lowerTriangle = List.copyOf(lowerTriangle);
        if (lowerTriangle.size() != ENTRIES)
            throw new IllegalArgumentException("A spring matrix has 21 entries, was " + lowerTriangle.size());
    }

    /** Six springs that do not know of each other. */
    public static SpringMatrix diagonal(double ux, double uy, double uz, double rx, double ry, double rz) {
        return NONE.with(Dof.UX, Dof.UX, ux)
                .with(Dof.UY, Dof.UY, uy)
                .with(Dof.UZ, Dof.UZ, uz)
                .with(Dof.RX, Dof.RX, rx)
                .with(Dof.RY, Dof.RY, ry)
                .with(Dof.RZ, Dof.RZ, rz);
    }

    /** This spring with one entry, and its mirror image, set. */
    public SpringMatrix with(Dof row, Dof column, double value) {
        if (!(Math.abs(value) <= Double.MAX_VALUE))
            throw new IllegalArgumentException("A spring's stiffness must be a finite number");
        List<Double> entries = new ArrayList<>(lowerTriangle);
        entries.set(index(row, column), value);
        return new SpringMatrix(entries);
    }

    public double entry(Dof row, Dof column) {
        return lowerTriangle.get(index(row, column));
    }

    public SpringMatrix times(double factor) {
        return new SpringMatrix(
                lowerTriangle.stream().map(value -> value * factor).toList());
    }

    private static int index(Dof row, Dof column) {
        int i = Math.max(row.index(), column.index());
        int j = Math.min(row.index(), column.index());
        return i * (i + 1) / 2 + j;
    }

    private static List<Double> zeros() {
        List<Double> entries = new ArrayList<>();
        for (int i = 0; i < ENTRIES; i++) entries.add(0.0);
        return entries;
    }
}
