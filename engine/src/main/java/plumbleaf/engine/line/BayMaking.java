package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.FenceTrim;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.MeasuredFrom;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodMovement;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/** Rails and pickets of the bays of one stretch, from one gate or end to the next. */
final class BayMaking {
    private final Run run;
    private final PlanLine line;
    private final Profile profile;
    private final Optional<Boarding> boarding;
    private final RailRows railRows;
    private final Optional<BayFilling> filling;
    private final boolean coped;
    private final FenceTrim trim;
    private final Optional<WoodSpecies> species;
    private final Seasons seasons;
    private final BesideGround beside;
    private final MeasuredFrom measuredFrom;
    private final LineFindings say;
    private final List<Finding> findings = new ArrayList<>();

    BayMaking(
            Run run,
            PlanLine line,
            Profile profile,
            Optional<FenceStyle> style,
            RailRows railRows,
            Optional<BayFilling> filling,
            Optional<WoodSpecies> species,
            Seasons seasons,
            BesideGround beside,
            MeasuredFrom measuredFrom,
            LineFindings say) {
        this.run = run;
        this.line = line;
        this.profile = profile;
        this.boarding = style.flatMap(FenceStyle::boarding);
        this.railRows = railRows;
        this.filling = filling;
        this.trim = style.map(FenceStyle::trim).orElse(FenceTrim.NONE);
        this.coped = style.isPresent()
                && style.get()
                        .infill()
                        .match(
                                up -> false,
                                both -> false,
                                lying -> false,
                                panel -> true,
                                fabric -> false,
                                mesh -> true);
        this.species = species;
        this.seasons = seasons;
        this.beside = beside;
        this.measuredFrom = measuredFrom;
        this.say = say;
    }

    List<Finding> findings() {
        return findings;
    }

    /**
     * @param names ids of the posts at the stops
     * @param firstBay number of the first bay of this stretch
     */
    List<Bay> bays(List<Stop> stops, List<BayShape> shapes, List<String> names, int firstBay) {
        List<List<FencePicket>> pickets = new ArrayList<>();
        List<PicketRow> rows = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) pickets.add(new ArrayList<>());
        for (int i = 0; i < shapes.size(); i++) rows.add(new PicketRow(true, Offset.ZERO, 0, Length.ZERO));
        boarding.ifPresent(made -> fillPickets(made, stops, shapes, pickets, rows));
        List<Bay> bays = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            bays.add(bay(
                    "B" + (firstBay + i),
                    stops.get(i),
                    stops.get(i + 1),
                    shapes.get(i),
                    names.get(i),
                    names.get(i + 1),
                    boarding.isPresent()
                            ? Optional.of(pickets(bayPickets(rows.get(i), pickets.get(i))))
                            : Optional.empty()));
        }
        return bays;
    }

    private Bay bay(
            String id, Stop from, Stop to, BayShape shape, String first, String second, Optional<BayFill> boards) {
        double along = to.stationIn() - from.stationIn();
        double level = from.levelTo(to);
        Offset start = new Offset(from.stationIn());
        Offset end = new Offset(to.stationIn());
        Fit fit = run.fitAt((from.stationIn() + to.stationIn()) / 2);
        Slope grade = Shaping.followsGrade(fit)
                ? Shaping.slope((shape.bottomToIn() - shape.bottomFromIn()) / level)
                : Slope.ZERO;
        Length slopeLength = new Length(level * Math.sqrt(1 + grade.ratio() * grade.ratio()));
        double gapMin = Double.POSITIVE_INFINITY;
        double gapMax = Double.NEGATIVE_INFINITY;
        for (ProfilePoint point : profile.between(start, end)) {
            double share = (point.station().inches() - from.stationIn()) / along;
            double bottom = shape.bottomFromIn() + (shape.bottomToIn() - shape.bottomFromIn()) * share;
            double gap = shape.scribed()
                    ? run.bottomGap().inches()
                    : bottom - point.elevation().inches();
            gapMin = Math.min(gapMin, gap);
            gapMax = Math.max(gapMax, gap);
        }
        double postsIn = (from.widthIn() + to.widthIn()) / 2;
        BayFilling.PostToPost cut = (depth, heights) -> rails(shape, level, grade, depth, inches(heights), 0);
        BayFill fill = boards.orElseGet(() -> filling.isEmpty()
                ? new BayFill.Open()
                : filling.get().fill(new BayFilling.Place(level, postsIn, grade.ratio()), cut));
        BesideGround.Height height =
                beside.of(measuredFrom, from.stationIn(), to.stationIn(), shape.topFromIn(), shape.topToIn());
        return new Bay(
                id,
                run.id(),
                first,
                second,
                fit,
                start,
                start.plus(new Length(along).asOffset()),
                new Length(level),
                slopeLength,
                profile.gradeBetween(start, end),
                grade,
                new Offset(shape.stepIn()),
                new Offset(shape.bottomFromIn()),
                new Offset(shape.bottomToIn()),
                new Offset(shape.topFromIn()),
                new Offset(shape.topToIn()),
                allRails(from, to, shape, grade, coped ? postsIn : 0),
                fill,
                new Offset(gapMin),
                new Offset(gapMax),
                new Offset(height.mostIn()));
    }

    private List<RailPiece> allRails(Stop from, Stop to, BayShape shape, Slope grade, double shortIn) {
        double level = from.levelTo(to);
        List<RailPiece> asked = rails(shape, level, grade, railRows.depth(), inches(railRows.heights()), shortIn);
        if (!run.lowRails() || !shape.scribed() || boarding.isEmpty() || asked.isEmpty()) return asked;
        double lowest = railRows.heights().get(0).inches();
        double nearest = highestBottomIn(from, to, shape) + lowest;
        List<Double> lower = LowRails.under(
                lowest, nearest, railRows.widestSpace(run.infill()).inches());
        List<RailPiece> all = new ArrayList<>(rails(shape, level, grade, railRows.depth(), lower, shortIn));
        all.addAll(asked);
        return all;
    }

    /** Where boards that follow the ground end highest in a bay, over the bottom that was asked for. */
    private double highestBottomIn(Stop from, Stop to, BayShape shape) {
        double highest = Double.NEGATIVE_INFINITY;
        for (ProfilePoint point : profile.between(new Offset(from.stationIn()), new Offset(to.stationIn()))) {
            double share = (point.station().inches() - from.stationIn()) / (to.stationIn() - from.stationIn());
            double top = shape.topFromIn() + (shape.topToIn() - shape.topFromIn()) * share;
            double bottom = point.elevation().inches() + run.bottomGap().inches();
            highest = Math.max(highest, bottom - (top - run.infill().inches()));
        }
        return highest;
    }

    private static List<Double> inches(List<Length> heights) {
        return heights.stream().map(Length::inches).toList();
    }

    /**
     * Rails from post centre to post centre, cut {@code L / cos a} on the centreline. Their ends are cut plumb, {@code a} from square and parallel, so that
     * they butt on the post, which adds {@code d tan a} to the long point; where that would pass the longest bay, which is what stock reaches, they
     * are left square. Rails that are coped to their posts, and those of panels, lie between the posts' faces. Source: geometry. Check: RailCutCheck.
     */
    private List<RailPiece> rails(
            BayShape shape, double level, Slope grade, Length depth, List<Double> heights, double shortIn) {
        double cut = Math.max(0, level - shortIn) * Math.sqrt(1 + grade.ratio() * grade.ratio());
        double plumb = cut + depth.inches() * Math.abs(grade.ratio());
        boolean square = plumb > run.maxBay().inches() + Fairing.GAP_ROUNDING_IN
                && cut <= run.maxBay().inches() + Fairing.GAP_ROUNDING_IN
                && !grade.isZero();
        Angle end = square ? Angle.ZERO : new Angle(Math.abs(grade.angle().radians()));
        double baseFrom = shape.scribed() ? shape.topFromIn() - run.infill().inches() : shape.bottomFromIn();
        double baseTo = shape.scribed() ? shape.topToIn() - run.infill().inches() : shape.bottomToIn();
        List<RailPiece> rails = new ArrayList<>();
        for (double over : heights) {
            rails.add(new RailPiece(
                    new Offset(baseFrom + over),
                    new Offset(baseTo + over),
                    new Length(cut),
                    new Length(square ? cut : plumb),
                    List.of(end, end)));
        }
        return rails;
    }

    /** Lays pickets over each straight piece of the stretch, edge to edge, and gives each to the bay its middle lies in. */
    private void fillPickets(
            Boarding made,
            List<Stop> stops,
            List<BayShape> shapes,
            List<List<FencePicket>> pickets,
            List<PicketRow> rows) {
        int first = 0;
        for (int i = 1; i < stops.size(); i++) {
            boolean turns = i == stops.size() - 1 || isVertex(stops.get(i).stationIn());
            if (!turns) continue;
            double from = visibleStart(stops.get(first));
            Leaning leaning = Leaning.of(stops, first, i);
            double to = visibleEnd(stops.get(i)) + leaning.longer();
            PicketRow row = PicketRow.across(new Length(Math.max(0, to - from)), made.board(), made.spacing());
            if (!row.fits()) findings.add(say.picketsMisfit(run.id(), new Offset(from), new Offset(to), row.gap()));
            List<Length> edges = row.edges(made.boardWidth());
            for (int bay = first; bay < i; bay++) rows.set(bay, row);
            for (int board = 0; board < edges.size(); board++) {
                Length width = row.widthOf(board, made.boardWidth());
                double at = from + edges.get(board).inches();
                double middle = leaning.stationOf(at + width.inches() / 2);
                int bay = bayOf(stops, first, i, middle);
                FencePicket.Layer layer =
                        made.spacing().laps() && board % 2 == 1 ? FencePicket.Layer.FRONT : FencePicket.Layer.BACK;
                double placed = leaning.longer() == 0 ? at : middle - width.inches() / 2;
                pickets.get(bay).add(picket(stops.get(bay), stops.get(bay + 1), shapes.get(bay), placed, width, layer));
            }
            first = i;
        }
    }

    private boolean isVertex(double stationIn) {
        for (int vertex = 1; vertex < line.legs(); vertex++) {
            if (Math.abs(line.stationOfVertex(vertex).inches() - stationIn) < 1e-6) return true;
        }
        return false;
    }

    /** Pickets cover the posts: from the outer face of an end post, the opening's face of a gate post, a wall's face; at a corner from its middle. */
    private double visibleStart(Stop stop) {
        return switch (stop.role()) {
            case END, GATE, WALL -> stop.stationIn() - stop.widthIn() / 2;
            case CORNER, LINE, ROLLER -> stop.stationIn();
        };
    }

    private double visibleEnd(Stop stop) {
        return switch (stop.role()) {
            case END, GATE, WALL -> stop.stationIn() + stop.widthIn() / 2;
            case CORNER, LINE, ROLLER -> stop.stationIn();
        };
    }

    private static int bayOf(List<Stop> stops, int first, int last, double middle) {
        int bay = first;
        while (bay + 1 < last && stops.get(bay + 1).stationIn() <= middle) bay++;
        return bay;
    }

    private FencePicket picket(Stop from, Stop to, BayShape shape, double at, Length width, FencePicket.Layer layer) {
        double middle = at + width.inches() / 2;
        double share = (middle - from.stationIn()) / (to.stationIn() - from.stationIn());
        double bottom = shape.scribed()
                ? profile.elevationAt(new Offset(middle)).inches()
                        + run.bottomGap().inches()
                : shape.bottomFromIn() + (shape.bottomToIn() - shape.bottomFromIn()) * share;
        double top = shape.topFromIn() + (shape.topToIn() - shape.topFromIn()) * share;
        bottom += trim.below().inches();
        top -= trim.above().inches();
        return new FencePicket(new Offset(at), width, new Offset(bottom), new Length(Math.max(0, top - bottom)), layer);
    }

    private BayFill pickets(BayPickets row) {
        return new BayFill.Pickets(
                row,
                boarding.map(made -> SightThrough.of(made, row.gapDriest())).orElse(Angle.ZERO));
    }

    private BayPickets bayPickets(PicketRow row, List<FencePicket> pickets) {
        Length board = boarding.map(Boarding::boardWidth).orElse(Length.ZERO);
        return new BayPickets(
                row.gap(),
                row.endWidth(),
                gapAt(row, board, seasons.driest()),
                gapAt(row, board, seasons.wettest()),
                pickets);
    }

    /** Each board shrinks about its own fixings, so the gap opens by what one board loses. */
    private Offset gapAt(PicketRow row, Length board, Moisture moisture) {
        if (species.isEmpty() || row.boards() == 0) return row.gap();
        WoodSpecies wood = species.get();
        Offset grown = WoodMovement.overall(
                board, wood.tangentialShrinkPct(), wood.fibreSaturation(), seasons.installed(), moisture);
        return row.gap().minus(grown);
    }
}
