package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.line.PicketRow;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * What hangs on a leaf's rails: nailers bolted along them and plumb pickets across, with trim over them, and the weight each rail takes. The weight of a picket is shared alike
 * by all rails, that of a nailer lies on its own.
 *
 * @param fits whether the pickets fit within the style's range of gaps
 * @param nailerN n of the nailers' middle
 * @param picketN n of the pickets' middle
 */
record Infill(
        boolean fits,
        List<Nailer> nailers,
        List<Picket> pickets,
        List<LeafTrim> trim,
        Offset gap,
        Length picketThickness,
        Offset nailerN,
        Offset picketN,
        List<Panel> panels,
        List<RailLoad> loads,
        List<Fitting> bolts,
        List<Weld> welds) {
    /** Steel, 490 pcf. */
    private static final double STEEL_LB_PER_IN3 = 490 / 1728.0;

    /** Head, nut and washers over the plain shank: judgement, a third more. */
    private static final double BOLT_HEAD_AND_NUT = 4 / 3.0;

    Infill {
        nailers = List.copyOf(nailers);
        pickets = List.copyOf(pickets);
        trim = List.copyOf(trim);
        loads = List.copyOf(loads);
        panels = List.copyOf(panels);
        bolts = List.copyOf(bolts);
        welds = List.copyOf(welds);
    }

    static Infill none() {
        return inPlane(true, List.of(), Offset.ZERO, Length.ZERO, List.of(), List.of(), List.of(), List.of());
    }

    /** Of steel, in the middle of the frame. */
    static Infill inPlane(
            boolean fits,
            List<Picket> pickets,
            Offset gap,
            Length thickness,
            List<Panel> panels,
            List<RailLoad> loads,
            List<Fitting> fittings,
            List<Weld> welds) {
        return new Infill(
                fits,
                List.of(),
                pickets,
                List.of(),
                gap,
                thickness,
                Offset.ZERO,
                Offset.ZERO,
                panels,
                loads,
                fittings,
                welds);
    }

    static Infill of(
            Outline outline, FrameLines lines, List<Member> members, Cladding.Wood wood, List<Offset> boltPlaces) {
        Boarding style = wood.style();
        if (style.lying()) return LyingInfill.of(outline, members, wood);
        List<Member> rails =
                members.stream().filter(member -> member.role().isRail()).toList();
        double halfFrame =
                CladdingFaces.frameThickness(members.get(0).section()).inches() / 2;
        double toViewer = CladdingFaces.side(wood);
        double nailerN = toViewer * (halfFrame + style.railThickness().inches() / 2);
        double picketN = toViewer
                * (halfFrame
                        + style.railThickness().inches()
                        + style.boardThickness().inches() / 2);
        List<Nailer> nailers = new ArrayList<>();
        List<RailLoad> loads = new ArrayList<>();
        List<Fitting> bolts = new ArrayList<>();
        for (int i = 0; i < rails.size(); i++) {
            Nailer nailer = nailer(outline, lines, rails.get(i), i, wood, nailerN, boltPlaces);
            nailers.add(nailer);
            loads.add(new RailLoad(
                    nailer.rail(),
                    outline.hingeEdge(),
                    outline.latchEdge(),
                    Offset.inches(nailerN),
                    nailer.wet(),
                    nailer.dry()));
            if (style.bothSides()) {
                Nailer back = nailer(outline, lines, rails.get(i), i, wood, -nailerN, boltPlaces);
                nailers.add(back);
                loads.add(new RailLoad(
                        back.rail(),
                        outline.hingeEdge(),
                        outline.latchEdge(),
                        Offset.inches(-nailerN),
                        back.wet(),
                        back.dry()));
            }
            double layers = style.bothSides() ? 2 : 1;
            double boltLength = 2 * halfFrame + layers * style.railThickness().inches() + 0.5;
            for (Offset at : boltPlaces) {
                bolts.add(new Fitting(
                        "nailer bolt",
                        Place.at(
                                at.inches(),
                                style.bothSides() ? 0 : nailerN / 2,
                                lines.rails().get(i).heightIn(at.inches())),
                        boltWeight(boltLength)));
            }
        }
        PicketRow row = PicketRow.across(outline.width(), style.board(), style.spacing());
        List<Picket> pickets = new ArrayList<>();
        List<Length> edges = row.edges(style.boardWidth());
        for (int i = 0; i < edges.size(); i++) {
            double r = outline.hingeEdge().inches() + edges.get(i).inches();
            double n = layer(style, i, picketN, toViewer);
            Picket picket =
                    picket(outline, r, row.widthOf(i, style.boardWidth()).inches(), n, wood);
            pickets.add(picket);
            for (Member rail : rails) {
                loads.add(new RailLoad(
                        rail.id(),
                        picket.r(),
                        Offset.inches(picket.r().inches() + picket.width().inches()),
                        Offset.inches(n),
                        picket.wet().times(1.0 / rails.size()),
                        picket.dry().times(1.0 / rails.size())));
            }
        }
        double layers = !style.bothSides() && style.spacing().laps() ? 2 : 1;
        double faceIn = halfFrame
                + style.railThickness().inches()
                + layers * style.boardThickness().inches();
        List<LeafTrim> trim = LeafTrim.of(outline, wood, rails, faceIn, halfFrame);
        for (LeafTrim each : trim) loads.add(each.load(outline));
        return new Infill(
                row.fits(),
                nailers,
                pickets,
                trim,
                row.gap(),
                style.boardThickness(),
                Offset.inches(nailerN),
                Offset.inches(picketN),
                List.of(),
                loads,
                bolts,
                List.of());
    }

    /** By turns on the other face, or on the boards before them where they lap; else all in one layer. */
    private static double layer(Boarding style, int board, double picketN, double toViewer) {
        boolean second = board % 2 == 1;
        if (!second) return picketN;
        if (style.bothSides()) return -picketN;
        return style.spacing().laps()
                ? picketN + toViewer * style.boardThickness().inches()
                : picketN;
    }

    /** The outermost nailers lie flush with the outline, the others on the middle of their rail. */
    private static Nailer nailer(
            Outline outline,
            FrameLines lines,
            Member rail,
            int index,
            Cladding.Wood wood,
            double nailerN,
            List<Offset> boltPlaces) {
        FrameLines.RailLine line = lines.rails().get(index);
        double cosine = line.cosine();
        double width = wood.style().railWidth().inches();
        double thick = wood.style().railThickness().inches();
        double middleR = (outline.hingeEdge().inches() + outline.latchEdge().inches()) / 2;
        double inward = (width - lines.depthIn()) / 2 / cosine;
        double z = line.heightIn(middleR)
                + (rail.role() == MemberRole.BOTTOM_RAIL ? inward : rail.role() == MemberRole.TOP_RAIL ? -inward : 0);
        double length = outline.width().inches() / cosine;
        double volume = length * width * thick;
        Angle end = Angle.radians(Math.abs(StrictMath.atan(line.slope())));
        return new Nailer(
                rail.id(),
                Place.at(middleR, nailerN, z),
                Length.inches(length),
                Length.inches(length + width * Math.abs(line.slope())),
                end,
                boltPlaces,
                weight(volume, wood.nailers().densityAt(Moisture.WET)),
                weight(volume, wood.nailers().densityAt(Moisture.DRY)),
                false);
    }

    private static Picket picket(Outline outline, double rIn, double widthIn, double nIn, Cladding.Wood wood) {
        double below = outline.infillBelow().inches();
        double middle = rIn + widthIn / 2;
        double cap = wood.trim().capThickness().inches();
        double length = outline.crestIn(middle) - cap - outline.bottomIn(middle) + below;
        double lowest = Math.min(outline.bottomIn(rIn), outline.bottomIn(rIn + widthIn)) - below;
        double highest = Math.max(outline.crestIn(rIn), outline.crestIn(rIn + widthIn)) - cap;
        if (outline.crest().isCurved()) highest = Math.max(highest, outline.crestIn(middle) - cap);
        double volume = length * widthIn * wood.style().boardThickness().inches();
        double rise = (outline.crestIn(rIn + widthIn) - outline.crestIn(rIn)) / widthIn;
        return new Picket(
                Offset.inches(rIn),
                Offset.inches(nIn),
                Length.inches(widthIn),
                Offset.inches(lowest),
                Offset.inches(
                        outline.crest().isCurved()
                                ? outline.bottomIn(middle) - below + length / 2
                                : lowest + (highest - lowest) / 2),
                Length.inches(length),
                Length.inches(highest - lowest),
                Angle.radians(Math.abs(
                        outline.crest().isCurved()
                                ? StrictMath.atan(rise)
                                : outline.top().angle().radians())),
                Angle.radians(Math.abs(outline.bottom().angle().radians())),
                weight(volume, wood.pickets().densityAt(Moisture.WET)),
                weight(volume, wood.pickets().densityAt(Moisture.DRY)));
    }

    static Force weight(double volumeIn3, Density density) {
        return Force.pounds(volumeIn3 * density.perCubicInch());
    }

    static Force boltWeight(double lengthIn) {
        double diameter = LeafMaker.NAILER_BOLT.inches();
        return Force.pounds(Math.PI / 4 * diameter * diameter * lengthIn * STEEL_LB_PER_IN3 * BOLT_HEAD_AND_NUT);
    }

    /** Which face the infill is on when both were asked for: outside. */
    static boolean isOutside(FinishedFace face) {
        return face != FinishedFace.IN;
    }
}
