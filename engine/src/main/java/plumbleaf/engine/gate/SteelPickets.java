package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.Section;

/**
 * Plumb steel pickets in the plane of the frame. Cut in, each panel between two rails has its own pieces, welded at both ends; punched, one piece passes
 * through every rail and ends at the infill's top and bottom. They stiffen nothing in the frame model, which errs on the safe side for the drop.
 */
final class SteelPickets {
    /** A punched hole over the picket: a thirty-second. Common practice, no source. */
    private static final double PUNCH_OVER_IN = 1 / 32.0;

    private SteelPickets() {}

    /**
     * Equal gaps between the stiles' inner faces, the fewest pickets whose gap is no more than allowed: {@code n = ceil((W - g) / (w + g))}, gap {@code (W -
     * n w) / (n + 1)}. Source: common practice, no source. Check: SteelPicketsTest.
     */
    static int count(double clearIn, double picketIn, double mostIn) {
        return Math.max(0, (int) Math.ceil((clearIn - mostIn) / (picketIn + mostIn) - 1e-9));
    }

    static Infill in(String leaf, Outline outline, FrameLines lines, List<Member> members, Cladding.Pickets cladding) {
        Section section = cladding.section();
        double width = section.depth().inches();
        double clear = lines.latchFaceIn() - lines.hingeFaceIn();
        int count = count(clear, width, cladding.gap().inches());
        double gap = (clear - count * width) / (count + 1);
        List<Member> rails =
                members.stream().filter(member -> member.role().isRail()).toList();
        List<Picket> pickets = new ArrayList<>();
        List<RailLoad> loads = new ArrayList<>();
        double weldIn = 0;
        int runs = 0;
        for (int i = 0; i < count; i++) {
            double r = lines.hingeFaceIn() + gap + i * (width + gap);
            if (cladding.punched()) {
                Picket picket = through(outline, r, section);
                pickets.add(picket);
                for (Member rail : rails) loads.add(load(rail, picket, rails.size()));
                weldIn += rails.size() * 2 * width;
                runs += 2 * rails.size();
                continue;
            }
            for (int panel = 0; panel + 1 < rails.size(); panel++) {
                Picket piece = between(lines, panel, r, section);
                pickets.add(piece);
                loads.add(load(rails.get(panel), piece, 2));
                loads.add(load(rails.get(panel + 1), piece, 2));
                weldIn += 4 * width;
                runs += 4;
            }
        }
        List<Weld> welds = runs == 0
                ? List.of()
                : List.of(new Weld(
                        leaf + ".pickets",
                        WeldKind.FILLET,
                        Length.inches(weldIn),
                        cladding.punched() ? "pickets to rails, both faces" : "picket ends, both faces",
                        runs,
                        false));
        return Infill.inPlane(true, pickets, Offset.inches(gap), section.depth(), List.of(), loads, List.of(), welds);
    }

    private static Picket through(Outline outline, double r, Section section) {
        double width = section.depth().inches();
        double middle = r + width / 2;
        double low = outline.infillBottomIn(middle);
        double high = outline.crestIn(middle);
        return piece(
                r,
                section,
                low,
                high,
                Math.abs(outline.bottom().ratio()),
                Math.abs(outline.crestIn(r + width) - outline.crestIn(r)) / width);
    }

    private static Picket between(FrameLines lines, int panel, double r, Section section) {
        double middle = r + section.depth().inches() / 2;
        return piece(
                r,
                section,
                lines.overRailIn(panel, middle),
                lines.underRailIn(panel + 1, middle),
                Math.abs(lines.rails().get(panel).slope()),
                Math.abs(lines.rails().get(panel + 1).slope()));
    }

    /** Cut parallel to what it ends at. */
    private static Picket piece(
            double r, Section section, double low, double high, double footSlope, double headSlope) {
        double width = section.depth().inches();
        Length length = Length.inches(high - low);
        double overall = length.inches() + width / 2 * (footSlope + headSlope);
        Force weight = section.weightOf(length);
        return new Picket(
                Offset.inches(r),
                Offset.ZERO,
                section.depth(),
                Offset.inches(low - width / 2 * footSlope),
                Offset.inches((low + high) / 2),
                length,
                Length.inches(overall),
                Angle.radians(StrictMath.atan(headSlope)),
                Angle.radians(StrictMath.atan(footSlope)),
                weight,
                weight);
    }

    private static RailLoad load(Member rail, Picket picket, int shares) {
        Force share = picket.wet().times(1.0 / shares);
        return new RailLoad(
                rail.id(),
                picket.r(),
                Offset.inches(picket.r().inches() + picket.width().inches()),
                Offset.ZERO,
                share,
                share);
    }

    /** Where a rail is punched: one hole a picket on its centreline, a little over the picket's size. */
    static List<Hole> punched(Member rail, List<Picket> pickets, Cladding.Pickets cladding) {
        List<Hole> holes = new ArrayList<>();
        if (!cladding.punched()) return holes;
        double before = LeafMembers.datumBeforeIn(rail);
        double perR = rail.cutLength().inches()
                / (rail.to().r().inches() - rail.from().r().inches());
        Length size = Length.inches(cladding.section().depth().inches() + PUNCH_OVER_IN);
        for (Picket picket : pickets) {
            double middle = picket.r().inches() + picket.width().inches() / 2;
            double at = (middle - rail.from().r().inches()) * perR + before;
            holes.add(new Hole(
                    cladding.section().isRound() ? "picket" : "picket, square punch",
                    Length.inches(at),
                    Stated.of(size)));
        }
        return holes;
    }
}
