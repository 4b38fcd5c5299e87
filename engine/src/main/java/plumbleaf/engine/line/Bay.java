package plumbleaf.engine.line;

import java.util.List;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * The fence between two neighbouring posts.
 *
 * @param id numbered along the walk: {@code B3}
 * @param from id of the first post
 * @param to id of the second
 * @param start station of the first post's centre
 * @param end station of the second post's centre
 * @param level distance between post centres in plan: more than between the stations where it leans back to a gate that is set back
 * @param slopeLength distance between post centres along the fence's own grade
 * @param groundGrade chord of the ground between the posts, + up along the walk
 * @param grade of the rails, + up along the walk; zero when level
 * @param step how much higher this bay's top begins than the last one ended; zero where the top runs on
 * @param bottomFrom elevation of the infill's bottom at the first post
 * @param bottomTo elevation of the infill's bottom at the second post
 * @param topFrom elevation of the infill's top at the first post
 * @param topTo elevation of the infill's top at the second post
 * @param fill what is between or on its rails
 * @param groundGapMin least gap under the infill over the true ground; negative where it digs in
 * @param groundGapMax largest gap
 * @param heightMax most that its top stands over the ground it is measured from
 */
public record Bay(
        String id,
        String run,
        String from,
        String to,
        Fit fit,
        Offset start,
        Offset end,
        Length level,
        Length slopeLength,
        Slope groundGrade,
        Slope grade,
        Offset step,
        Offset bottomFrom,
        Offset bottomTo,
        Offset topFrom,
        Offset topTo,
        List<RailPiece> rails,
        BayFill fill,
        Offset groundGapMin,
        Offset groundGapMax,
        Offset heightMax) {
    public Bay {
        rails = List.copyOf(rails);
    }

    /** Its upright boards; none where something else fills it. */
    public BayPickets pickets() {
        return fill.match(
                open -> BayPickets.NONE,
                BayFill.Pickets::row,
                lying -> BayPickets.NONE,
                panel -> BayPickets.NONE,
                fabric -> BayPickets.NONE,
                mesh -> BayPickets.NONE);
    }
}
