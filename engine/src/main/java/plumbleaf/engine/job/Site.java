package plumbleaf.engine.job;

import java.time.LocalDate;
import java.util.List;

/**
 * Where the work is and what it must stand.
 *
 * @param phone of the customer; empty where nobody said
 * @param uses in the order of {@link Use}; never empty
 * @param access how one gets to the line
 * @param start the first day work may begin, where it was agreed
 */
public record Site(
        String customer,
        String phone,
        String address,
        DesignBasis basis,
        List<Use> uses,
        SiteWind wind,
        Frost frost,
        Soil soil,
        Access access,
        Stated<LocalDate> start) {
    public Site {
        uses = List.copyOf(uses);
    }

    /** Pools, guards, powered gates and public ways force the engineered basis. */
    public boolean forcesEngineered() {
        return uses.contains(Use.POOL)
                || uses.contains(Use.GUARD)
                || uses.contains(Use.POWERED)
                || uses.contains(Use.PUBLIC_WAY);
    }
}
