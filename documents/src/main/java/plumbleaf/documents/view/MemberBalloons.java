package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Balloon;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.JointTag;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;

/** Every member of a frame by its number in a ring. */
final class MemberBalloons {
    /** So many places of its line are looked at. */
    private static final int LOOKS = 24;

    /** Where along a member. */
    private static final List<Double> SHARES = List.of(0.36, 0.64, 0.5, 0.26, 0.74, 0.43, 0.57, 0.16, 0.84);

    private static final List<List<Double>> AWAY_IN = List.of(List.of(0.32, 0.5, 0.7), List.of(0.95, 1.25, 1.6));

    private MemberBalloons() {}

    /** The last part of a member's id, which is its mark in the cut list: {@code m4} is 4. */
    private static String mark(Member member) {
        String id = member.id();
        String tail = id.substring(id.lastIndexOf('.') + 1);
        return tail.startsWith("m") ? tail.substring(1) : tail;
    }

    /** Each balloon beside its member at the first place, near the middle or the ends, where it covers no other lettering. */
    static List<Balloon> of(Leaf leaf, Outside outside, Scale scale, List<Mark> drawn) {
        List<Balloon> all = new ArrayList<>();
        List<Box> taken = new ArrayList<>();
        for (Mark mark : drawn) {
            if (mark instanceof Area) continue;
            if (mark instanceof JointTag tag)
                taken.add(Box.of(tag.middle(), tag.middle()).grown(scale.real(JointTag.RADIUS_IN)));
            for (Primitive part : mark.drawn(scale)) if (part instanceof Text) taken.add(part.extents(scale));
        }
        double reach = scale.real(Balloon.RADIUS_IN + 0.02);
        for (Member member : leaf.members()) {
            List<Balloon> tries = tries(member, outside, scale);
            List<Balloon> free = tries.stream()
                    .filter(tried -> taken.stream()
                            .noneMatch(Box.of(tried.middle(), tried.middle()).grown(reach)::overlaps))
                    .toList();
            Balloon placed = free.stream()
                    .filter(tried -> misses(tried, taken, scale))
                    .findFirst()
                    .orElse(free.isEmpty() ? tries.get(0) : free.get(0));
            taken.add(Box.of(placed.middle(), placed.middle()).grown(reach));
            all.add(placed);
        }
        return List.copyOf(all);
    }

    /** Near the member first, on the side of the frame's middle before the other. */
    private static List<Balloon> tries(Member member, Outside outside, Scale scale) {
        List<Balloon> tries = new ArrayList<>();
        for (List<Double> tier : AWAY_IN)
            for (double share : SHARES)
                for (double away : tier)
                    for (int side : List.of(1, -1))
                        tries.add(balloon(member, outside, scale, share, side * inwardSide(member), away));
        return List.copyOf(tries);
    }

    /** Whether its line to the member strikes through nothing that is lettered. */
    private static boolean misses(Balloon balloon, List<Box> taken, Scale scale) {
        for (int i = 1; i <= LOOKS; i++) {
            Point at = balloon.middle().shareOf((double) i / LOOKS, balloon.part());
            Box spot = Box.of(at, at).grown(scale.real(0.01));
            if (taken.stream().anyMatch(spot::overlaps)) return false;
        }
        return true;
    }

    private static Balloon balloon(Member member, Outside outside, Scale scale, double share, int side, double awayIn) {
        Point from = outside.at(member.from());
        Point to = outside.at(member.to());
        Point at = from.shareOf(share, to);
        double way = from.direction(to) + side * outside.rightward() * Math.PI / 2.6;
        return new Balloon(
                at.towards(way, scale.real(awayIn)),
                at,
                mark(member),
                Look.note().of(member.id()));
    }

    /** Which side of a member, walked from its first end, lies within the frame: 1 left as seen with the hinges on the left. */
    private static int inwardSide(Member member) {
        return switch (member.role()) {
            case HINGE_STILE, TOP_RAIL -> -1;
            case LATCH_STILE, BOTTOM_RAIL, MID_RAIL, BRACE, ROD, TAIL_UPRIGHT, NOSE_UPRIGHT, UPRIGHT -> 1;
        };
    }
}
