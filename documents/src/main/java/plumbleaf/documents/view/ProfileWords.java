package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Spread;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;

/** The words over a stretch of an unrolled run: of bays and gates in a row that is spread until none touches another, and above them what is to be known of the line. */
final class ProfileWords {
    private final RunLayout run;
    private final List<PlacedGate> gates;
    private final List<SlideOnProfile> slides;
    private final List<StationNote> notes;
    private final RunProfile.Strip strip;
    private final double fromIn;
    private final double toIn;
    private final DisplayUnits units;
    private final Scale scale;
    private final int rightward;
    private final double highestIn;
    private final List<Mark> marks = new ArrayList<>();

    /** What the words over the bays take. */
    private final List<Box> labelled = new ArrayList<>();

    private ProfileWords(
            RunProfile.Strip strip,
            List<SlideOnProfile> slides,
            List<StationNote> notes,
            DisplayUnits units,
            Scale scale,
            double highestIn) {
        this.strip = strip;
        this.run = strip.run();
        this.gates = strip.gates();
        this.slides = slides;
        this.notes = notes;
        this.fromIn = strip.from().inches();
        this.toIn = strip.to().inches();
        this.units = units;
        this.scale = scale;
        this.rightward = run.line().insideIsLeft() ? 1 : -1;
        this.highestIn = highestIn;
    }

    /**
     * @param slides in the strip
     * @param notes in the strip
     * @param highestIn of all that is drawn under them
     */
    static List<Mark> over(
            RunProfile.Strip strip,
            List<SlideOnProfile> slides,
            List<StationNote> notes,
            DisplayUnits units,
            Scale scale,
            double highestIn) {
        ProfileWords words = new ProfileWords(strip, slides, notes, units, scale, highestIn);
        words.row();
        words.lineNotes();
        return words.marks;
    }

    private double x(double stationIn) {
        return rightward * stationIn;
    }

    /**
     * Words over one thing.
     *
     * @param of its id
     * @param x where they would stand alone
     * @param lines the first of them bold; empty ones are left out
     */
    private record Label(String of, double x, List<String> lines) {
        double width(Scale scale) {
            double wide = 0;
            for (String line : lines) wide = Math.max(wide, Lettering.width(line, Text.SMALL, Text.Weight.SEMIBOLD));
            return scale.real(wide);
        }
    }

    /** Over each bay its id, spacing and grade; over a gate its id. */
    private List<Label> labels() {
        List<Label> labels = new ArrayList<>();
        for (Bay bay : strip.shownBays())
            labels.add(new Label(
                    bay.id(),
                    x(bay.start().inches() + bay.level().inches() / 2),
                    List.of(
                            bay.id() + "  " + units.length(bay.level()),
                            grade(bay.grade().inPercent()),
                            units.length(bay.heightMax()) + " high at most")));
        for (PlacedGate gate : gates) {
            if (gate.gate().at() > 0) continue;
            double middle = gate.middle().inches();
            if (middle < fromIn || middle > toIn) continue;
            String id = gate.gate().plan().gate();
            String clear = units.length(gate.gate().plan().opening().clear());
            labels.add(new Label(id, x(middle), List.of(id + "  " + clear, "clear", "")));
        }
        for (SlideOnProfile slide : slides)
            labels.add(new Label(
                    slide.gate(),
                    x(slide.middleStationIn()),
                    List.of(slide.gate() + "  " + units.length(slide.clear()), "clear, slides", "")));
        labels.sort(Comparator.comparingDouble(Label::x));
        return labels;
    }

    private void row() {
        List<Label> labels = labels();
        List<Double> spread = Spread.apart(
                labels.stream().map(Label::x).toList(),
                labels.stream().map(label -> label.width(scale)).toList(),
                scale.real(0.1));
        double y = highestIn + scale.real(0.51);
        for (int k = 0; k < labels.size(); k++) {
            Label label = labels.get(k);
            double half = label.width(scale) / 2 + scale.real(0.03);
            labelled.add(
                    new Box(spread.get(k) - half, y - scale.real(0.36), spread.get(k) + half, y + scale.real(0.14)));
            Look look = Look.note().of(label.of());
            marks.add(Text.small(new Point(spread.get(k), y), label.lines().get(0))
                    .bold()
                    .anchored(Text.Across.MIDDLE, Text.Up.BASELINE)
                    .with(look));
            for (int line = 1; line < 3; line++)
                if (!label.lines().get(line).isEmpty())
                    marks.add(Text.small(
                                    new Point(spread.get(k), y - scale.real(line * 0.15)),
                                    label.lines().get(line))
                            .anchored(Text.Across.MIDDLE, Text.Up.BASELINE)
                            .with(look));
        }
    }

    /** Above all else: corners, curves with their reach, and runs that meet this one, each with a line down to its post. */
    private void lineNotes() {
        List<StationNote> shown =
                new ArrayList<>(notes.stream().filter(note -> !note.low()).toList());
        shown.sort(Comparator.comparingDouble(this::middle));
        List<Double> wanted = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        for (StationNote note : shown) {
            wanted.add(middle(note));
            widths.add(scale.real(Lettering.width(note.words(), Text.SMALL, Text.Weight.REGULAR)));
        }
        List<Double> places = Spread.apart(wanted, widths, scale.real(0.15));
        double y = highestIn + scale.real(0.86);
        Look look = Look.note().in(Ink.SECOND);
        for (int i = 0; i < shown.size(); i++) {
            double from = x(Math.max(fromIn, shown.get(i).from().inches()));
            double to = x(Math.min(toIn, shown.get(i).to().inches()));
            double foot = y - scale.real(0.12);
            marks.add(Text.small(new Point(places.get(i), y), shown.get(i).words())
                    .anchored(Text.Across.MIDDLE, Text.Up.BASELINE)
                    .with(look));
            if (Math.abs(to - from) > 1) {
                marks.add(Stroke.line(new Point(from, foot), new Point(to, foot), look.as(LineKind.DIMENSION)));
                for (double end : List.of(from, to))
                    marks.add(Stroke.line(
                            new Point(end, foot + scale.real(0.05)),
                            new Point(end, foot - scale.real(0.05)),
                            look.as(LineKind.DIMENSION)));
            } else down(new Point(places.get(i), y - scale.real(0.04)), new Point(from, foot), look);
        }
    }

    /** A line from words down to the post they are about, left out where it would run through the words over a bay. */
    private void down(Point words, Point knee, Look look) {
        Point end = new Point(knee.x(), highestIn + scale.real(0.06));
        Optional<Box> over = labelled.stream()
                .filter(box -> box.minX() < knee.x() && knee.x() < box.maxX())
                .findFirst();
        Look hidden = look.as(LineKind.HIDDEN);
        if (over.isEmpty()) {
            marks.add(Stroke.through(List.of(words, knee, end), hidden));
            return;
        }
        marks.add(Stroke.through(
                List.of(words, knee, new Point(knee.x(), over.get().maxY())), hidden));
        marks.add(Stroke.line(new Point(knee.x(), over.get().minY()), end, hidden));
    }

    private double middle(StationNote note) {
        return x((Math.max(fromIn, note.from().inches())
                        + Math.min(toIn, note.to().inches()))
                / 2);
    }

    /** As seen from outside, from left to right. */
    private String grade(double percentAlongWalk) {
        double seen = rightward * percentAlongWalk;
        String size = DecimalText.fixed(Math.abs(seen), 1) + "%";
        return seen < -0.05 ? "falls " + size : seen > 0.05 ? "rises " + size : "level";
    }
}
