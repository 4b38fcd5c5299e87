package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** A closed outline of a material: tint, hatch and, where the look's line is wanted, its edge. */
public record Area(List<Point> outline, Material material, boolean edged, Look look) implements Mark {
    public Area {
        outline = List.copyOf(outline);
        if (outline.size() < 3) throw new IllegalArgumentException("An area needs three points, had " + outline.size());
    }

    public static Area edged(List<Point> outline, Material material, Look look) {
        return new Area(outline, material, true, look);
    }

    public static Area plain(List<Point> outline, Material material, Look look) {
        return new Area(outline, material, false, look);
    }

    @Override
    public List<Primitive> drawn(Scale scale) {
        List<Primitive> marks = new ArrayList<>();
        marks.add(new Fill(outline, look.in(material.tint())));
        marks.addAll(Hatching.of(outline, material, scale, look.on(Layer.HATCH)));
        if (edged) marks.add(Stroke.outline(outline, look));
        return List.copyOf(marks);
    }
}
