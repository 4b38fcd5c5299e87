package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** Hatches as marks of their own, so that every plotter draws the same. All spacings in inches on paper. */
final class Hatching {
    private static final double SOIL_STEP_IN = 0.075;
    private static final double CONCRETE_STEP_IN = 0.06;
    private static final double GRAIN_STEP_IN = 0.045;
    private static final double BOARD_STEP_IN = 0.09;
    private static final double DOT_IN = 0.013;
    /** More hatch than this on one area says nothing more; the step grows until it fits. */
    private static final int MOST_CELLS = 12_000;

    private Hatching() {}

    static List<Primitive> of(List<Point> outline, Material material, Scale scale, Look look) {
        Look fine = look.as(LineKind.DIMENSION).in(Ink.SECOND);
        return switch (material) {
            case SOIL -> dots(outline, scale.real(SOIL_STEP_IN), fine);
            case CONCRETE -> concrete(outline, scale.real(CONCRETE_STEP_IN), fine);
            case GRAVEL -> pebbles(outline, scale.real(CONCRETE_STEP_IN), fine);
            case END_GRAIN -> rings(outline, scale.real(GRAIN_STEP_IN), fine);
            case WOOD -> slanted(outline, scale.real(BOARD_STEP_IN), Math.PI / 2, fine.in(Ink.HAIR));
            case STEEL, STEEL_FACE, GATE_FACE, SHADE, CLEAR -> List.of();
        };
    }

    private static List<Primitive> dots(List<Point> outline, double step, Look look) {
        List<Point> places = scattered(outline, step);
        return places.isEmpty() ? List.of() : List.of(new Dots(places, DOT_IN, look));
    }

    private static List<Primitive> concrete(List<Point> outline, double step, Look look) {
        List<Point> places = scattered(outline, step);
        List<Point> fines = new ArrayList<>();
        List<Primitive> marks = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            Point place = places.get(i);
            List<Point> stone = triangle(place, step * 0.42, i);
            boolean whole = i % 5 == 0 && stone.stream().allMatch(corner -> inside(outline, corner));
            if (whole) marks.add(Stroke.outline(stone, look));
            else fines.add(place);
        }
        if (!fines.isEmpty()) marks.add(new Dots(fines, DOT_IN, look));
        return marks;
    }

    private static List<Primitive> pebbles(List<Point> outline, double step, Look look) {
        List<Primitive> marks = new ArrayList<>();
        for (Point place : scattered(outline, step)) marks.add(Arc.circle(place, step * 0.28, look));
        return marks;
    }

    private static List<Point> triangle(Point middle, double size, int turn) {
        double start = turn * 0.7;
        double third = 2 * Math.PI / 3;
        return List.of(
                middle.towards(start, size),
                middle.towards(start + third, size),
                middle.towards(start + 2 * third, size));
    }

    /** A grid pushed about by a fixed rule, so that it looks strewn and is the same each time. */
    private static List<Point> scattered(List<Point> outline, double wantedStep) {
        Box box = Box.around(outline);
        double step = wantedStep;
        while (box.width() / step * (box.height() / step) > MOST_CELLS) step *= 1.25;
        List<Point> places = new ArrayList<>();
        int row = 0;
        for (double y = box.minY() + step / 2; y < box.maxY(); y += step, row++) {
            int column = 0;
            for (double x = box.minX() + step / 2; x < box.maxX(); x += step, column++) {
                int mix = (row * 7919 + column * 104_729 + row * column * 31) & 0xffff;
                double dx = ((mix & 0xff) / 255.0 - 0.5) * step * 0.8;
                double dy = ((mix >> 8) / 255.0 - 0.5) * step * 0.8;
                Point place = new Point(x + dx, y + dy);
                if (inside(outline, place)) places.add(place);
            }
        }
        return places;
    }

    private static List<Primitive> rings(List<Point> outline, double step, Look look) {
        Box box = Box.around(outline);
        Point heart = new Point(box.centre().x() - box.width() * 0.3, box.minY() - box.height() * 0.6);
        double reach = heart.distance(new Point(box.maxX(), box.maxY()));
        List<Primitive> marks = new ArrayList<>();
        for (double radius = step; radius < reach && marks.size() < 200; radius += step) {
            int parts = 90;
            for (int i = 0; i < parts; i++) {
                Point from = heart.towards(i * Math.PI / parts, radius);
                Point to = heart.towards((i + 1) * Math.PI / parts, radius);
                if (inside(outline, from) && inside(outline, to)) marks.add(Stroke.line(from, to, look));
            }
        }
        return marks;
    }

    /** Parallel lines at an angle, cut where the outline is crossed. */
    static List<Primitive> slanted(List<Point> outline, double wantedStep, double angleRad, Look look) {
        Point origin = Point.at(0, 0);
        List<Point> level = outline.stream()
                .map(point -> point.rotatedAbout(origin, -angleRad))
                .toList();
        Box box = Box.around(level);
        double step = wantedStep;
        while (box.height() / step > MOST_CELLS / 10.0) step *= 1.25;
        List<Primitive> marks = new ArrayList<>();
        for (double y = (Math.floor(box.minY() / step) + 0.5) * step; y < box.maxY(); y += step) {
            List<Double> crossings = crossings(level, y);
            for (int i = 0; i + 1 < crossings.size(); i += 2)
                marks.add(Stroke.line(
                        new Point(crossings.get(i), y).rotatedAbout(origin, angleRad),
                        new Point(crossings.get(i + 1), y).rotatedAbout(origin, angleRad),
                        look));
        }
        return marks;
    }

    private static List<Double> crossings(List<Point> outline, double y) {
        List<Double> crossings = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Point from = outline.get(i);
            Point to = outline.get((i + 1) % outline.size());
            if ((from.y() <= y) != (to.y() <= y))
                crossings.add(from.x() + (y - from.y()) / (to.y() - from.y()) * (to.x() - from.x()));
        }
        crossings.sort(Double::compare);
        return crossings;
    }

    static boolean inside(List<Point> outline, Point place) {
        boolean in = false;
        for (double crossing : crossings(outline, place.y())) if (crossing > place.x()) in = !in;
        return in;
    }
}
