package plumbleaf.engine.takeoff;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.Screw;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.job.Stain;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.section.Section;

/**
 * What a bay is put together with, picked from the catalogue.
 *
 * @param back screw of boards on the rails, or of lying boards on their posts
 * @param front screw of the boards that lie on others
 * @param rail section of steel rails
 * @param woodPosts whether its posts are of wood, so that rails are screwed to them without brackets
 * @param from its first end
 * @param to its second
 * @param stain of its wood
 */
public record BayGoods(
        Screw back, Screw front, Optional<Section> rail, boolean woodPosts, End from, End to, Stain stain) {
    /**
     * An end of a bay, for trim that passes or meets there.
     *
     * @param turn of the line at the post
     */
    public record End(PostRole role, Angle turn, Length post) {}

    /** A post of another run that this one joins counts as a corner without a turn. */
    private static final End JOINED = new End(PostRole.CORNER, Angle.ZERO, Length.ZERO);

    public static BayGoods of(Bay bay, FenceStyle style, Catalogue catalogue, RunLayout run, PostStock post) {
        return of(bay, style, catalogue, endsOf(run), post);
    }

    /** @param ends of the bay's run: {@link #endsOf} */
    public static BayGoods of(Bay bay, FenceStyle style, Catalogue catalogue, Map<String, End> ends, PostStock post) {
        Length board = style.infill()
                .match(
                        up -> up.board().thickness(),
                        both -> both.board().thickness(),
                        lying -> lying.board().thickness(),
                        panel -> Length.ZERO,
                        fabric -> Length.ZERO,
                        mesh -> Length.ZERO);
        boolean onBoards = style.boarding()
                .filter(boards -> boards.spacing().laps() && !boards.bothSides())
                .map(Boarding::boardWidth)
                .isPresent();
        return new BayGoods(
                catalogue.screwThrough(board),
                catalogue.screwThrough(board.times(onBoards ? 2 : 1)),
                style.rails()
                        .match(
                                none -> Optional.empty(),
                                wood -> Optional.empty(),
                                steel -> catalogue.section(steel.section())),
                post.match(steel -> false, wood -> true),
                ends.getOrDefault(bay.from(), JOINED),
                ends.getOrDefault(bay.to(), JOINED),
                Stain.NONE);
    }

    BayGoods with(Stain finish) {
        return new BayGoods(back, front, rail, woodPosts, from, to, finish);
    }

    /** What bays may end at, by post. */
    public static Map<String, End> endsOf(RunLayout run) {
        Map<String, End> ends = new LinkedHashMap<>();
        for (Post post : run.posts())
            ends.putIfAbsent(post.id(), new End(post.role(), turn(run.line().line(), post), post.width()));
        return ends;
    }

    private static Angle turn(PlanLine line, Post post) {
        for (int vertex = 1; vertex < line.legs(); vertex++) {
            if (Math.abs(line.stationOfVertex(vertex).inches() - post.station().inches()) < 1e-6)
                return new Angle(Math.abs(line.turnAt(vertex).radians()));
        }
        return Angle.ZERO;
    }
}
