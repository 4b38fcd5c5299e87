package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The column at the right edge of every sheet.
 *
 * @param issuer     who issues it, with their own mark
 * @param job        title, customer and address
 * @param title      of this sheet
 * @param mark       of the thing drawn: {@code G1}; empty when it is the whole job
 * @param hand       which side the hinge is and which way it swings, in one sentence; empty where no gate is drawn
 * @param release    whether the shop may build from it
 * @param cautions   for this sheet only
 */
public record TitleBlock(
        Letterhead issuer,
        List<String> job,
        String title,
        String mark,
        String revision,
        String date,
        String scale,
        String hand,
        Release release,
        List<String> cautions) {
    /** Whether the shop may build from a sheet; the words are printed in a box. */
    public enum Release {
        NOT_FOR_SHOP,
        HOLD,
        RELEASED
    }

    private static final double PITCH = 0.165;
    private static final double PAD = 0.10;
    private static final double CODE_IN = 0.9;
    private static final double EMBLEM_HIGH_IN = 0.6;

    public TitleBlock {
        job = List.copyOf(job);
        cautions = List.copyOf(cautions);
    }

    /** Draws the column into its box; {@code number} is the page's own words, such as {@code sheet 1 of 3}. */
    List<Mark> marks(Box box, String number) {
        Column column = new Column(box);
        for (Emblem emblem : issuer.emblem()) column.emblem(emblem);
        column.lines(issuer.lines(), true);
        column.rule();
        column.lines(job, true);
        column.rule();
        if (!hand.isEmpty()) {
            column.label("Hand, seen from outside");
            column.paragraph(hand, Text.SMALL, Text.Weight.SEMIBOLD);
            column.rule();
        }
        if (release != Release.NOT_FOR_SHOP) column.release(release);
        Column foot = new Column(new Box(box.minX(), box.minY(), box.maxX(), box.minY() + footHeight(box)));
        foot.rule();
        foot.label("Sheet");
        foot.paragraph(title, Text.LARGE * 0.8, Text.Weight.SEMIBOLD);
        if (!mark.isEmpty()) foot.big(mark);
        foot.rule();
        foot.pair("Scale", scale);
        foot.pair("Revision", revision);
        foot.pair("Date", date);
        foot.pair("Page", number);
        double codeFoot = foot.top() + (issuer.code().isEmpty() ? 0 : CODE_IN + 0.2);
        column.cautions(cautions, codeFoot);
        List<Mark> marks = new ArrayList<>(column.marks);
        if (!issuer.code().isEmpty()) marks.addAll(code(box, foot.top()));
        marks.addAll(foot.marks);
        marks.add(Stroke.box(box, Look.visible(Layer.SHEET)));
        return List.copyOf(marks);
    }

    private List<Mark> code(Box box, double foot) {
        List<Mark> marks = new ArrayList<>(issuer.codeAt(new Point(box.minX() + PAD - 0.08, foot + 0.08), CODE_IN));
        double x = box.minX() + PAD + CODE_IN;
        List<String> words = List.of("The job as", "it stands now");
        for (int i = 0; i < words.size(); i++)
            marks.add(Text.small(new Point(x, foot + 0.08 + CODE_IN / 2 + 0.03 - i * PITCH), words.get(i))
                    .with(Look.note().in(Ink.SECOND).on(Layer.SHEET)));
        return marks;
    }

    private double footHeight(Box box) {
        int lines = Lettering.wrapped(title, box.width() - 2 * PAD, Text.LARGE * 0.8, Text.Weight.SEMIBOLD)
                .size();
        return PAD + 0.2 + lines * 0.25 + (mark.isEmpty() ? 0 : 0.48) + PAD * 1.6 + 4 * 0.2 + PAD;
    }

    /** Lays out lines from the top of a box down. */
    private static final class Column {
        private final Box box;
        private final List<Mark> marks = new ArrayList<>();
        private double y;

        Column(Box box) {
            this.box = box;
            this.y = box.maxY() - PAD;
        }

        double top() {
            return box.maxY();
        }

        private double room() {
            return box.width() - 2 * PAD;
        }

        void rule() {
            if (y < box.maxY() - PAD - 1e-9) y -= PAD * 0.6;
            marks.add(Stroke.line(new Point(box.minX(), y), new Point(box.maxX(), y), Look.thin(Layer.SHEET)));
            y -= PAD;
        }

        void label(String words) {
            y -= Text.SMALL;
            marks.add(Text.small(new Point(box.minX() + PAD, y), words)
                    .with(Look.note().in(Ink.SECOND).on(Layer.SHEET)));
            y -= PITCH - Text.SMALL + 0.015;
        }

        void emblem(Emblem emblem) {
            Box place = emblem.within(box.minX() + PAD, y, room(), EMBLEM_HIGH_IN);
            marks.add(new Raster(emblem, place, Look.note().on(Layer.SHEET)));
            y = place.minY() - PAD;
        }

        void lines(List<String> lines, boolean firstBold) {
            for (int i = 0; i < lines.size(); i++) {
                boolean bold = firstBold && i == 0;
                paragraph(
                        lines.get(i),
                        bold ? Text.MEDIUM : Text.SMALL,
                        bold ? Text.Weight.SEMIBOLD : Text.Weight.REGULAR);
            }
        }

        void paragraph(String words, double high, Text.Weight weight) {
            for (String line : Lettering.wrapped(words, room(), high, weight)) {
                y -= high;
                Text text = Text.small(new Point(box.minX() + PAD, y), line)
                        .high(high)
                        .with(Look.note().on(Layer.SHEET));
                marks.add(weight == Text.Weight.SEMIBOLD ? text.bold() : text);
                y -= high * 0.75;
            }
        }

        void big(String words) {
            y -= 0.30;
            marks.add(Text.small(new Point(box.minX() + PAD, y), words)
                    .high(0.28)
                    .bold()
                    .with(Look.note().on(Layer.SHEET)));
            y -= 0.10;
        }

        void pair(String label, String words) {
            y -= Text.SMALL;
            marks.add(Text.small(new Point(box.minX() + PAD, y), label)
                    .with(Look.note().in(Ink.SECOND).on(Layer.SHEET)));
            marks.add(Text.small(new Point(box.maxX() - PAD, y), words)
                    .anchored(Text.Across.END, Text.Up.BASELINE)
                    .with(Look.note().on(Layer.SHEET)));
            y -= 0.2 - Text.SMALL;
        }

        void release(Release release) {
            boolean hold = release == Release.HOLD;
            double high = hold ? 0.78 : 0.48;
            Box sign = new Box(box.minX() + PAD, y - high, box.maxX() - PAD, y);
            Ink ink = hold ? Ink.MUST_FIX : Ink.INK;
            marks.add(Stroke.box(sign, Look.note().as(LineKind.HEAVY).in(ink).on(Layer.SHEET)));
            marks.add(Text.small(new Point(sign.centre().x(), sign.maxY() - 0.24), hold ? "HOLD" : "RELEASED")
                    .high(0.22)
                    .bold()
                    .centred()
                    .with(Look.note().in(ink).on(Layer.SHEET)));
            if (hold) {
                List<String> lines = List.of("for field size: cut nothing", "until posts are set and measured");
                for (int i = 0; i < lines.size(); i++)
                    marks.add(Text.small(new Point(sign.centre().x(), sign.maxY() - 0.48 - i * PITCH), lines.get(i))
                            .centred()
                            .with(Look.note().in(ink).on(Layer.SHEET)));
            }
            y = sign.minY() - PAD;
            rule();
        }

        void cautions(List<String> cautions, double bottom) {
            if (cautions.isEmpty()) return;
            label("Take care");
            for (String caution : cautions) {
                List<String> lines = Lettering.wrapped(caution, room() - 0.17, Text.SMALL, Text.Weight.REGULAR);
                if (y - lines.size() * PITCH < bottom + PITCH) {
                    paragraph("More cautions: see the crew sheet.", Text.SMALL, Text.Weight.SEMIBOLD);
                    return;
                }
                Point at = new Point(box.minX() + PAD, y - Text.SMALL);
                marks.add(Stroke.outline(
                        List.of(at, at.plus(0.105, 0), at.plus(0.0525, 0.095)),
                        Look.note().in(Ink.CAUTION).on(Layer.SHEET)));
                for (String line : lines) {
                    y -= Text.SMALL;
                    marks.add(Text.small(new Point(box.minX() + PAD + 0.17, y), line)
                            .with(Look.note().on(Layer.SHEET)));
                    y -= PITCH - Text.SMALL;
                }
                y -= 0.05;
            }
        }
    }
}
