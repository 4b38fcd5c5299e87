package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.line.LyingRow;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Boards that lie across a leaf, as they lie along its fence: on upright nailers: one bolted to each stile, and others
 * between bolted to every rail they cross. The boards follow the
 * leaf's bottom; their ends stand plumb.
 */
final class LyingInfill {
    /** A board under an inch spans no more between nailers, one of an inch and more a third more. Common practice, no source. */
    private static final double SPAN_IN = 24;

    private static final double THICK_IN = 1;

    /** A pair of bolts for so much of a stile. Common practice, no source. */
    private static final double PAIR_OF_BOLTS_IN = 60;

    private final Outline outline;
    private final Cladding.Wood wood;
    private final Boarding style;
    private final List<Member> members;
    private final List<Member> rails;
    private final double slope;
    private final double cosine;
    private final double halfFrameIn;
    private final double toViewer;

    private LyingInfill(Outline outline, List<Member> members, Cladding.Wood wood) {
        this.outline = outline;
        this.wood = wood;
        this.style = wood.style();
        this.members = members;
        this.rails = members.stream().filter(member -> member.role().isRail()).toList();
        this.slope = outline.bottom().ratio();
        this.cosine = 1 / Math.sqrt(1 + slope * slope);
        this.halfFrameIn =
                CladdingFaces.frameThickness(members.get(0).section()).inches() / 2;
        this.toViewer = CladdingFaces.side(wood);
    }

    static Infill of(Outline outline, List<Member> members, Cladding.Wood wood) {
        return new LyingInfill(outline, members, wood).infill();
    }

    private Infill infill() {
        double nailerN = toViewer * (halfFrameIn + style.railThickness().inches() / 2);
        double boardN = toViewer
                * (halfFrameIn
                        + style.railThickness().inches()
                        + style.boardThickness().inches() / 2);
        List<Double> uprights = uprights();
        LyingRow row = LyingRow.up(Length.inches(heightIn() * cosine), style.board(), style.spacing());
        List<Nailer> nailers = new ArrayList<>();
        List<RailLoad> loads = new ArrayList<>();
        List<Fitting> bolts = new ArrayList<>();
        for (int u = 0; u < uprights.size(); u++)
            nailers.add(nailer(uprights.get(u), carrier(uprights.get(u)), nailerN));
        List<Picket> boards = new ArrayList<>();
        List<Length> middles = row.middles(style.boardWidth());
        for (int i = 0; i < middles.size(); i++) {
            boolean highest = i == middles.size() - 1;
            boards.add(board(middles.get(i).inches() / cosine, highest ? row.top() : style.boardWidth(), boardN));
        }
        double halfWidth = style.railWidth().inches() / 2;
        for (int u = 0; u < uprights.size(); u++) {
            double at = uprights.get(u);
            double share = tributary(u, uprights.size()) / rails.size();
            for (Member rail : rails) {
                loads.add(new RailLoad(
                        rail.id(),
                        Offset.inches(at - halfWidth),
                        Offset.inches(at + halfWidth),
                        Offset.inches(nailerN),
                        nailers.get(u).wet().times(1.0 / rails.size()),
                        nailers.get(u).dry().times(1.0 / rails.size())));
                for (Picket board : boards)
                    loads.add(new RailLoad(
                            rail.id(),
                            Offset.inches(at - halfWidth),
                            Offset.inches(at + halfWidth),
                            Offset.inches(boardN),
                            board.wet().times(share),
                            board.dry().times(share)));
            }
            double length = 2 * halfFrameIn + style.railThickness().inches() + 0.5;
            for (Offset z : nailers.get(u).bolts())
                bolts.add(new Fitting("nailer bolt", Place.at(at, nailerN / 2, z.inches()), Infill.boltWeight(length)));
        }
        return new Infill(
                row.fits(),
                nailers,
                boards,
                List.of(),
                row.gap(),
                style.boardThickness(),
                Offset.inches(nailerN),
                Offset.inches(boardN),
                List.of(),
                loads,
                bolts,
                List.of());
    }

    /** Middles of the nailers, the outermost flush with the outline. */
    private List<Double> uprights() {
        double half = style.railWidth().inches() / 2;
        double from = outline.hingeEdge().inches() + half;
        double to = outline.latchEdge().inches() - half;
        double span = style.boardThickness().inches() < THICK_IN ? SPAN_IN : SPAN_IN * 4 / 3;
        int bays = Math.max(1, (int) Math.ceil((to - from) / span - 1e-9));
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i <= bays; i++) middles.add(from + (to - from) * i / bays);
        return middles;
    }

    /** An outer nailer carries half of what one between carries. */
    private static double tributary(int at, int count) {
        boolean outer = at == 0 || at == count - 1;
        return (outer ? 0.5 : 1.0) / (count - 1);
    }

    /** Plumb height of the boards: that of the lower edge, where bottom and top are not alike. */
    private double heightIn() {
        double hinge = outline.hingeEdge().inches();
        double latch = outline.latchEdge().inches();
        return Math.min(outline.topIn(hinge) - outline.bottomIn(hinge), outline.topIn(latch) - outline.bottomIn(latch))
                + outline.infillBelow().inches();
    }

    /** The upright member that stands under a nailer, else the lowest rail of those that it crosses. */
    private Member carrier(double at) {
        double half = style.railWidth().inches() / 2;
        for (Member member : members) {
            boolean stands =
                    !member.role().isRail() && member.role() != MemberRole.BRACE && member.role() != MemberRole.ROD;
            if (stands && Math.abs(member.middle().r().inches() - at) <= half) return member;
        }
        return rails.get(0);
    }

    /** At every rail; up a stile in pairs, clear of hinges, corners and the middle rail. Common practice, no source. */
    private List<Offset> boltsOf(Member carrier, double at, double bottom, double top) {
        List<Offset> heights = new ArrayList<>();
        if (carrier.role().isRail()) {
            for (Member rail : rails) heights.add(Offset.inches(heightIn(rail, at)));
            return heights;
        }
        int count = 2 * (int) Math.ceil((top - bottom) / PAIR_OF_BOLTS_IN);
        for (int i = 1; i <= count; i++) heights.add(Offset.inches(bottom + (top - bottom) * i / (count + 1)));
        return heights;
    }

    private Nailer nailer(double at, Member carrier, double nailerN) {
        double bottom = outline.bottomIn(at);
        double top = outline.topIn(at);
        double wide = style.railWidth().inches();
        double longPoint = top - bottom + wide * Math.abs(slope);
        double volume = (top - bottom) * wide * style.railThickness().inches();
        return new Nailer(
                carrier.id(),
                Place.at(at, nailerN, (bottom + top) / 2),
                Length.inches(top - bottom),
                Length.inches(longPoint),
                Angle.radians(Math.abs(StrictMath.atan(slope))),
                boltsOf(carrier, at, bottom, top),
                Infill.weight(volume, wood.nailers().densityAt(Moisture.WET)),
                Infill.weight(volume, wood.nailers().densityAt(Moisture.DRY)),
                true);
    }

    /** @param upIn its middle above the infill's bottom, plumb */
    private Picket board(double upIn, Length across, double boardN) {
        double hinge = outline.hingeEdge().inches();
        double latch = outline.latchEdge().inches();
        double plumb = across.inches() / cosine;
        double middle =
                outline.bottomIn((hinge + latch) / 2) - outline.infillBelow().inches() + upIn;
        double longPoint = outline.width().inches() / cosine + across.inches() * Math.abs(slope);
        double volume = outline.width().inches()
                / cosine
                * across.inches()
                * style.boardThickness().inches();
        Angle end = Angle.radians(Math.abs(StrictMath.atan(slope)));
        return new Picket(
                outline.hingeEdge(),
                Offset.inches(boardN),
                outline.width(),
                Offset.inches(middle - plumb / 2 - Math.abs(slope) * (latch - hinge) / 2),
                Offset.inches(middle),
                Length.inches(plumb),
                Length.inches(longPoint),
                end,
                end,
                Infill.weight(volume, wood.pickets().densityAt(Moisture.WET)),
                Infill.weight(volume, wood.pickets().densityAt(Moisture.DRY)),
                true);
    }

    private static double heightIn(Member rail, double r) {
        double from = rail.from().r().inches();
        double share = (r - from) / (rail.to().r().inches() - from);
        return rail.from().z().inches()
                + share * (rail.to().z().inches() - rail.from().z().inches());
    }
}
