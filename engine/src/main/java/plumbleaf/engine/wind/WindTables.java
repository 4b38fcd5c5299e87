package plumbleaf.engine.wind;

import java.util.List;
import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.WindEdition;

/**
 * The tables of the wind standard that fences need.
 *
 * @param wall cells by falling s/h, within that by rising B/s, a full grid
 * @param ends strips by rising B/s, within that from the windward end
 * @param returns by rising length
 * @param open by rising solid share
 */
public record WindTables(
        List<ExposureRow> exposures,
        List<WallCell> wall,
        List<EndStrip> ends,
        List<ReturnRow> returns,
        List<OpenRow> open) {
    public WindTables {
        exposures = List.copyOf(exposures);
        wall = List.copyOf(wall);
        ends = List.copyOf(ends);
        returns = List.copyOf(returns);
        open = List.copyOf(open);
        if (wall.isEmpty() || ends.isEmpty() || returns.isEmpty() || open.isEmpty())
            throw new IllegalArgumentException("Wind tables must not be empty");
    }

    /** The terrain row of an edition. */
    public ExposureRow exposure(WindEdition edition, Exposure exposure) {
        for (ExposureRow row : exposures) {
            if (row.edition() == edition && row.exposure() == exposure) return row;
        }
        throw new IllegalArgumentException("No exposure " + exposure.key() + " in the table of ASCE " + edition.key());
    }
}
