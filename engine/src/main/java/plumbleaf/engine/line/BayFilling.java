package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodMovement;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.Section;

/** Fills bays with what does not run on from bay to bay: lying boards, panels, fabric, mesh. */
public final class BayFilling {
    /** Room for a bracket between a post and a panel's rail, each end. Judgement. */
    private static final double BRACKET_IN = 0.5;

    /** What a panel may be short of its bay before the eye sees a wider gap at its ends. Judgement. */
    private static final double SHOP_IN = 0.125;

    private final FenceStyle style;
    private final Catalogue catalogue;
    private final Length infill;
    private final Seasons seasons;

    BayFilling(FenceStyle style, Catalogue catalogue, Length infill, Seasons seasons) {
        this.style = style;
        this.catalogue = catalogue;
        this.infill = infill;
        this.seasons = seasons;
    }

    /**
     * A bay as its posts leave it.
     *
     * @param levelIn from post center to post center
     * @param postsIn half of both posts' widths together
     * @param ratio grade of the rails
     */
    record Place(double levelIn, double postsIn, double ratio) {
        double alongIn() {
            return levelIn * Math.sqrt(1 + ratio * ratio);
        }

        /** Between the posts' faces, along the grade. */
        double clearIn() {
            return Math.max(0, levelIn - postsIn) * Math.sqrt(1 + ratio * ratio);
        }
    }

    /** How pieces that run from post to post are cut, by their depth and their heights above the infill's bottom. */
    interface PostToPost {
        List<RailPiece> at(Length depth, List<Length> heights);
    }

    /** Upright boards are laid over whole stretches and do not come through here. */
    BayFill fill(Place place, PostToPost cut) {
        return style.infill()
                .match(
                        upright -> new BayFill.Open(),
                        both -> new BayFill.Open(),
                        lying -> lying(lying, cut),
                        panel -> panel(panel, place),
                        fabric -> new BayFill.Fabric(
                                Length.inches(place.alongIn()),
                                infill,
                                Length.inches(fabric.mesh().inches() * (1 - fabric.slats()))),
                        mesh -> mesh(mesh, place));
    }

    private BayFill lying(FenceInfill.Lying lying, PostToPost cut) {
        Board board = lying.board();
        LyingRow row = LyingRow.up(infill, board, lying.spacing());
        Offset driest = gapAt(board, row.gap(), seasons.driest());
        Offset wettest = gapAt(board, row.gap(), seasons.wettest());
        return new BayFill.Lying(
                cut.at(board.width(), row.middles(board.width())), row.gap(), row.top(), driest, wettest);
    }

    private Offset gapAt(Board board, Offset gap, Moisture moisture) {
        Optional<WoodSpecies> wood = catalogue.species(board.species());
        if (wood.isEmpty()) return gap;
        return gap.minus(WoodMovement.overall(
                board.width(),
                wood.get().tangentialShrinkPct(),
                wood.get().fibreSaturation(),
                seasons.installed(),
                moisture));
    }

    /**
     * Pickets stand on a racked panel's rails at the pitch it was made with, so that in plan they close up: {@code clear = (w + g) cos a - w}; the two end
     * spaces are alike, {@code (L - (n - 1)(w + g) - w)/2}. Geometry. Check: EveryStyleTest.
     */
    private BayFill panel(FenceInfill.Panel panel, Place place) {
        double w = catalogue
                .section(panel.picket())
                .map(Section::width)
                .orElse(Length.inches(1))
                .inches();
        double pitch = w + panel.gap().inches();
        double room = Math.max(0, place.clearIn() - 2 * BRACKET_IN);
        double length = Math.min(room, panel.length().inches());
        int pickets = Math.max(1, (int) Math.floor((length - w - panel.gap().inches() / 2) / pitch + 1e-9) + 1);
        double cosine = 1 / Math.sqrt(1 + place.ratio() * place.ratio());
        double end = Math.max(0, (place.clearIn() - (pickets - 1) * pitch - w) / 2) * cosine;
        return new BayFill.Panel(
                Length.inches(length),
                length < panel.length().inches() - BRACKET_IN / 2,
                pickets,
                Length.inches(w),
                Length.inches(Math.max(0, pitch * cosine - w)),
                Length.inches(end),
                new Angle(Math.abs(StrictMath.atan(place.ratio()))));
    }

    private BayFill mesh(FenceInfill.Mesh mesh, Place place) {
        double clear = place.clearIn();
        int pieces = Math.max(1, (int) Math.ceil(clear / mesh.sheet().inches() - 1e-9));
        List<Length> sheets = new ArrayList<>();
        for (int i = 0; i < pieces; i++) sheets.add(Length.inches(clear / pieces));
        Length opening = mesh.across().compareTo(mesh.upright()) > 0 ? mesh.across() : mesh.upright();
        return new BayFill.Mesh(
                sheets,
                infill,
                Length.inches(Math.max(0, opening.inches() - mesh.wire().inches())));
    }

    /** What a whole panel of a style takes between the faces of its posts; empty for other goods. */
    public static Optional<Length> panelRoom(FenceStyle style) {
        return style.infill()
                .match(
                        up -> Optional.empty(),
                        both -> Optional.empty(),
                        lying -> Optional.empty(),
                        panel -> Optional.of(Length.inches(panel.length().inches() + 2 * BRACKET_IN)),
                        fabric -> Optional.empty(),
                        mesh -> Optional.empty());
    }

    /** Whether a panel fills its bay: one shorter than its bay leaves a hole. */
    public static boolean fills(BayFill.Panel panel, FenceInfill.Panel made) {
        return panel.end().inches() <= made.gap().inches() + SHOP_IN;
    }
}
