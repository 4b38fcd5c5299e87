package plumbleaf.engine.labour;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Access;
import plumbleaf.engine.takeoff.Assembly;

/**
 * What the way to the line adds. Where no machine gets through, every foot of hole is dug by hand. What goes into the holes and what comes out of them goes by
 * wheelbarrow, posts by the shoulder, from the truck and back: {@code loads x carry / 100 ft}, {@code loads = holes x (1 + swell) / barrow + posts}. Rails and boards
 * are in the hours of their bays. Source: common practice, no source; the hours are the price book's.
 */
public final class Reaching {
    /** Cubic feet that one person wheels over a lawn, about 400 lb of wet concrete being too much: half a 6 cu ft tray. Common practice, no source. */
    private static final double BARROW_FT3 = 3;

    private static final double PER_FEET = 100;

    private Reaching() {}

    /** @param swell loose soil for each of firm */
    public static List<Work> of(List<Work> works, Assembly assembly, Access access, double swell) {
        List<Work> reached = new ArrayList<>();
        for (Work work : works) reached.add(access.isByHand() && work.task().equals("dig") ? byHand(work) : work);
        double ft3 = assembly.spoilYards(1 + swell) * 27;
        double loads = ft3 / BARROW_FT3 + assembly.posts().size();
        if (!access.carry().isZero())
            reached.add(Work.of("carry", loads * access.carry().inFeet() / PER_FEET, "site"));
        return reached;
    }

    private static Work byHand(Work dig) {
        return new Work("dig-hand", dig.soil(), dig.size(), dig.quantity(), dig.cause());
    }
}
