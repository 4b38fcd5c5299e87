package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A weld called out on a reference line: arrow to the joint, kind below the line for the arrow side and above for the other, size at
 * its left, length at its right, ring for all round, flag for the field. Source: AWS A2.4, from memory.
 *
 * @param knee where the arrow meets the reference line
 */
public record WeldMark(
        Point joint,
        Point knee,
        boolean toRight,
        Kind kind,
        Sides sides,
        String size,
        String length,
        boolean allRound,
        boolean inField,
        String tail,
        Look look)
        implements Mark {
    private static final double REFERENCE_IN = 0.95;
    private static final double SIGN_IN = 0.13;

    /** Kinds this trade uses. */
    public enum Kind {
        FILLET,
        FLARE_BEVEL,
        SQUARE
    }

    /** Which side of the joint, seen from the arrow. */
    public enum Sides {
        ARROW,
        OTHER,
        BOTH
    }

    @Override
    public List<Primitive> drawn(Scale scale) {
        double way = toRight ? 1 : -1;
        double lengthIn =
                Math.max(REFERENCE_IN, 0.55 + Lettering.width(size + length, Text.SMALL, Text.Weight.REGULAR));
        Point end = knee.plus(way * scale.real(lengthIn), 0);
        List<Primitive> marks = new ArrayList<>();
        marks.add(Stroke.through(List.of(joint, knee, end), look));
        marks.add(Arrow.tip(joint, knee.direction(joint), scale, look));
        double left = Math.min(knee.x(), end.x());
        double sizeWide = Lettering.width(size, Text.SMALL, Text.Weight.REGULAR);
        Point sign = new Point(left + scale.real(0.2 + sizeWide + 0.05), knee.y());
        if (sides != Sides.OTHER) side(marks, sign, -1, scale);
        if (sides != Sides.ARROW) side(marks, sign, 1, scale);
        if (allRound) marks.add(Arc.circle(knee, scale.real(0.055), look));
        if (inField) {
            Point pole = knee.plus(0, scale.real(0.24));
            marks.add(Stroke.line(knee, pole, look));
            marks.add(new Fill(
                    List.of(pole, knee.plus(0, scale.real(0.14)), pole.plus(scale.real(0.13), -scale.real(0.05))),
                    look));
        }
        if (!tail.isEmpty()) {
            marks.add(Stroke.through(
                    List.of(
                            end.plus(way * scale.real(0.1), scale.real(0.1)),
                            end,
                            end.plus(way * scale.real(0.1), -scale.real(0.1))),
                    look));
            marks.add(Text.small(end.plus(way * scale.real(0.13), 0), tail)
                    .anchored(toRight ? Text.Across.START : Text.Across.END, Text.Up.MIDDLE)
                    .clearing()
                    .with(look));
        }
        return List.copyOf(marks);
    }

    private void side(List<Primitive> marks, Point sign, double up, Scale scale) {
        double high = scale.real(SIGN_IN) * up;
        double wide = scale.real(SIGN_IN);
        switch (kind) {
            case FILLET -> marks.add(Stroke.through(List.of(sign, sign.plus(0, high), sign.plus(wide, 0)), look));
            case FLARE_BEVEL -> {
                marks.add(Stroke.line(sign, sign.plus(0, high), look));
                List<Point> curve = new ArrayList<>();
                for (int i = 0; i <= 8; i++) {
                    double turn = i * Math.PI / 16;
                    curve.add(sign.plus(
                            scale.real(0.04) + wide * (1 - StrictMath.cos(turn)), high * StrictMath.sin(turn)));
                }
                marks.add(Stroke.through(curve, look));
            }
            case SQUARE -> {
                marks.add(Stroke.line(sign, sign.plus(0, high), look));
                marks.add(Stroke.line(sign.plus(wide * 0.5, 0), sign.plus(wide * 0.5, high), look));
            }
        }
        double middle = sign.y() + up * scale.real(0.10);
        marks.add(Text.small(new Point(sign.x() - scale.real(0.05), middle), size)
                .anchored(Text.Across.END, Text.Up.MIDDLE)
                .with(look));
        double signWide = kind == Kind.FLARE_BEVEL ? wide + scale.real(0.06) : wide;
        marks.add(Text.small(new Point(sign.x() + signWide + scale.real(0.04), middle), length)
                .anchored(Text.Across.START, Text.Up.MIDDLE)
                .with(look));
    }
}
