package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.support.Support;
import plumbleaf.engine.support.WallKind;

/** What holds a post or hinges, beyond the post itself, its anchors and straight concrete. */
final class HoldNeeds {
    private HoldNeeds() {}

    static List<Need> of(PostTake post) {
        return post.support()
                .match(
                        footing -> footing(post, footing),
                        driven -> List.of(),
                        plate -> List.of(
                                Need.pieces("base-plate", "base plate, 4 holes", PartGroup.HARDWARE, 1, post.id())),
                        socket -> List.of(grout(post, socket)),
                        wall -> List.of(),
                        existing -> List.of());
    }

    private static List<Need> footing(PostTake post, Support.NewFooting footing) {
        List<Need> needs = new ArrayList<>();
        double extraFt3 = Pour.bellExtraIn3(new HoleSize(post.hole(), post.depth()), footing.bell()) / 1728;
        if (extraFt3 > 0)
            needs.add(new Need("concrete", "concrete", PartGroup.FOOTINGS, NetUnit.CUBIC_FEET, extraFt3, post.id()));
        if (footing.sleeve())
            needs.add(Need.pieces("frost-sleeve", "form tube as frost sleeve", PartGroup.FOOTINGS, 1, post.id()));
        return needs;
    }

    private static Need grout(PostTake post, Support.CoreSocket socket) {
        double core = post.section().depth().inches() + 2 * Support.CoreSocket.RING.inches();
        double ring = Math.max(0, Math.PI * core * core / 4 - post.outline().squareInches());
        double ft3 = ring * socket.depth().inches() / 1728;
        return new Need("grout", "non-shrink grout", PartGroup.FOOTINGS, NetUnit.CUBIC_FEET, ft3, post.id());
    }

    /** Anchors of hinges that hang on a wall; lag screws where there are studs. */
    static List<Need> hinges(Gate gate) {
        return gate.hingePost()
                .support()
                .match(
                        footing -> List.of(),
                        driven -> List.of(),
                        plate -> List.of(),
                        socket -> List.of(),
                        wall -> List.of(anchors(gate, wall)),
                        existing -> List.of());
    }

    /** One closer a leaf that swings. */
    static List<Need> closers(Gate gate) {
        int closers = Assembly.closers(gate);
        return closers == 0
                ? List.of()
                : List.of(Need.pieces("gate-closer", "gate closer", PartGroup.HARDWARE, closers, gate.id()));
    }

    private static Need anchors(Gate gate, Support.WallAnchor wall) {
        int count = wall.perHinge() * gate.hinges().count();
        return wall.of() == WallKind.STUD
                ? Need.pieces("lag-screw", "lag screw", PartGroup.HARDWARE, count, gate.id())
                : Need.pieces("wall-anchor", "wedge anchor", PartGroup.HARDWARE, count, gate.id());
    }
}
