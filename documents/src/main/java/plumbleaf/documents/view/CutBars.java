package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.takeoff.Cause;

/** Bars as bars: each with its pieces in sawing order, and what is left. Lengths to one scale, bars of one height. Drawn on paper. */
public final class CutBars {
    private static final double BAR_IN = 0.34;
    private static final double PITCH_IN = 0.62;
    private static final double NAME_IN = 0.75;
    private static final double NM_PER_INCH = 25_400_000.0;
    private static final long SIXTEENTH_NM = 1_587_500;

    private CutBars() {}

    /** Bars that are cut alike, and the number of the first. */
    private record Alike(List<CutBar> bars, int first) {
        CutBar bar() {
            return bars.get(0);
        }

        int count() {
            return bars.size();
        }

        /** Whether the pieces at one place go by one name, as those of a list by its mark. */
        boolean isOneName(int cut) {
            return bars.stream()
                            .map(bar -> shortName(bar.cuts().get(cut)))
                            .distinct()
                            .count()
                    == 1;
        }

        /** What the cuts at one place are for, each once: the pieces, and the bays and leaves they are of. */
        String of(int cut) {
            Set<String> parts = new LinkedHashSet<>();
            for (CutBar bar : bars) {
                String piece = bar.cuts().get(cut).piece();
                parts.add(piece);
                parts.add(Cause.whole(piece));
            }
            return String.join(" ", parts);
        }
    }

    /** How many pictures a plan takes: bars cut alike share one. */
    public static int rows(CutPlan plan) {
        return alike(plan).size();
    }

    public static Drawing of(CutPlan plan, double wideIn, DisplayUnits units) {
        return of(plan, plan.stock(), wideIn, units);
    }

    /** @param name what is cut, as people call it */
    public static Drawing of(CutPlan plan, String name, double wideIn, DisplayUnits units) {
        return part(plan, name, 0, rows(plan), wideIn, units);
    }

    /** The rows from one to before another, so that a long plan can go over several pages. */
    public static Drawing part(CutPlan plan, String name, int from, int before, double wideIn, DisplayUnits units) {
        List<Mark> marks = new ArrayList<>();
        long longest = plan.bars().stream().mapToLong(CutBar::lengthNm).max().orElse(1);
        double perNm = (wideIn - NAME_IN) / longest;
        List<Alike> rows = alike(plan);
        for (int i = from; i < before; i++)
            bar(marks, rows.get(i), -(i - from) * PITCH_IN, perNm, plan.saw().kerfNm(), units);
        if (marks.isEmpty()) marks.add(Text.small(Point.at(0, 0), "nothing to cut"));
        return Drawing.of("Cut plan, " + name, Scale.FULL, marks);
    }

    private static List<Alike> alike(CutPlan plan) {
        Map<String, List<CutBar>> rows = new LinkedHashMap<>();
        Map<String, Integer> firsts = new LinkedHashMap<>();
        int number = 0;
        for (CutBar bar : plan.bars()) {
            number++;
            String key = bar.fromOffcut() + " " + bar.lengthNm() + " "
                    + bar.cuts().stream()
                            .map(cut -> Long.toString(cut.longPointNm() / SIXTEENTH_NM))
                            .toList();
            rows.computeIfAbsent(key, cut -> new ArrayList<>()).add(bar);
            firsts.putIfAbsent(key, number);
        }
        List<Alike> alike = new ArrayList<>();
        rows.forEach((key, bars) -> alike.add(new Alike(List.copyOf(bars), firsts.getOrDefault(key, 0))));
        return alike;
    }

    private static void bar(List<Mark> marks, Alike row, double y, double perNm, long kerfNm, DisplayUnits units) {
        CutBar bar = row.bar();
        String kind = bar.fromOffcut() ? "offcut" : "bar";
        String name = row.count() == 1 ? kind + " " + row.first : row.count() + " " + kind + "s";
        marks.add(Text.small(new Point(0, y + 0.04), name).bold());
        marks.add(Text.small(new Point(0, y - 0.13), units.length(bar.lengthNm() / NM_PER_INCH))
                .with(Look.note().in(Ink.SECOND)));
        double x = NAME_IN + bar.trimNm() * perNm + (bar.trimNm() > 0 ? kerfNm * perNm : 0);
        if (bar.trimNm() > 0) field(marks, NAME_IN, x, y, Material.SHADE, "");
        for (int i = 0; i < bar.cuts().size(); i++) {
            Cut cut = bar.cuts().get(i);
            x -= cut.lapNm() * perNm;
            double end = x + cut.longPointNm() * perNm;
            field(marks, x, end, y, Material.STEEL_FACE, row.of(i));
            label(
                    marks,
                    x,
                    end,
                    y,
                    row.isOneName(i) ? shortName(cut) : "",
                    units.length(cut.longPointNm() / NM_PER_INCH));
            x = end + kerfNm * perNm;
        }
        if (bar.offcutNm() > 0) {
            double end = NAME_IN + bar.lengthNm() * perNm;
            field(marks, Math.min(x, end), end, y, bar.offcutUsable() ? Material.CLEAR : Material.SHADE, "");
            label(marks, x, end, y, bar.offcutUsable() ? "keep" : "scrap", units.length(bar.offcutNm() / NM_PER_INCH));
        }
    }

    private static String shortName(Cut cut) {
        return cut.flip() ? cut.piece() + " turned" : cut.piece();
    }

    private static void field(List<Mark> marks, double from, double to, double y, Material material, String of) {
        if (to - from < 1e-6) return;
        marks.add(Area.edged(
                new Box(from, y - BAR_IN / 2, to, y + BAR_IN / 2).corners(),
                material,
                Look.thin(Layer.MEMBERS).of(of)));
    }

    /** Both lines inside the piece when they fit, else the name alone turned up, else nothing: the list beside says it. */
    private static void label(List<Mark> marks, double from, double to, double y, String name, String length) {
        double room = to - from - 0.08;
        Point middle = new Point((from + to) / 2, y);
        double nameWide = Lettering.width(name, Text.SMALL, Text.Weight.REGULAR);
        double lengthWide = Lettering.width(length, Text.SMALL, Text.Weight.REGULAR);
        if (Math.max(nameWide, lengthWide) <= room) {
            double half = name.isEmpty() ? 0 : 0.075;
            if (!name.isEmpty())
                marks.add(Text.small(middle.plus(0, half), name).centred());
            marks.add(Text.small(middle.plus(0, -half), length).centred());
        } else if (!name.isEmpty() && nameWide <= room) {
            marks.add(Text.small(middle, name).centred());
        }
    }
}
