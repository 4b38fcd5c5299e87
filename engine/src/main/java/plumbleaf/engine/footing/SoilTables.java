package plumbleaf.engine.footing;

import java.util.List;

/**
 * The soil tables a calculation rests on.
 *
 * @param classes presumptive values by class
 * @param sands from loose to dense
 * @param clays from soft to stiff
 */
public record SoilTables(List<PresumedSoil> classes, List<SandFeel> sands, List<ClayFeel> clays) {
    public SoilTables {
        classes = List.copyOf(classes);
        sands = List.copyOf(sands);
        clays = List.copyOf(clays);
        if (sands.isEmpty() || clays.isEmpty()) throw new IllegalArgumentException("Soil tables need sands and clays");
    }

    /** The presumptive row of a class of Table 1806.2. */
    public PresumedSoil presumed(int number) {
        for (PresumedSoil row : classes) {
            if (row.number() == number) return row;
        }
        throw new IllegalArgumentException("No presumptive soil of class " + number);
    }
}
