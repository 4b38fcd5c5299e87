package plumbleaf.engine.design;

import java.util.Optional;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.FencePicket;
import plumbleaf.engine.line.RailPiece;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/** What a bay of fence weighs, wet: what its posts carry on their axes. */
final class BayWeight {
    /** Steel, 490 pcf. */
    private static final double STEEL_LB_PER_IN3 = 490 / 1728.0;

    /** Plastic slats or a screen cloth on woven fabric, pounds per square foot of what they close. Judgement. */
    private static final double SLATS_PSF = 0.6;

    private final FenceStyle style;
    private final Catalogue catalogue;

    private BayWeight(FenceStyle style, Catalogue catalogue) {
        this.style = style;
        this.catalogue = catalogue;
    }

    static Force of(Bay bay, FenceStyle style, Catalogue catalogue) {
        return new BayWeight(style, catalogue).of(bay);
    }

    /** A bay of a length as if every board of it were whole: an upper bound before bays are known. */
    static Force atMost(Length length, Length infill, FenceStyle style, Catalogue catalogue) {
        return new BayWeight(style, catalogue).atMost(length.inches(), infill.inches());
    }

    /** What hangs on its rails. */
    static Force fillOf(Bay bay, FenceStyle style, Catalogue catalogue) {
        return Force.pounds(new BayWeight(style, catalogue).fill(bay));
    }

    private Force of(Bay bay) {
        double railIn = 0;
        for (RailPiece rail : bay.rails()) railIn += rail.cut().inches();
        return Force.pounds(
                railIn * railLbPerIn() + fill(bay) + bay.slopeLength().inches() * trimLbPerIn());
    }

    private double fill(Bay bay) {
        return bay.fill()
                .match(
                        open -> 0.0,
                        pickets -> pickets(bay),
                        lying -> lying.boards().stream()
                                        .mapToDouble(board -> board.cut().inches())
                                        .sum()
                                * boardLbPerIn(),
                        panel -> panel.pickets()
                                * style.infill()
                                        .match(
                                                up -> 0.0,
                                                both -> 0.0,
                                                lying -> 0.0,
                                                made -> steel(made.picket()),
                                                f -> 0.0,
                                                m -> 0.0)
                                * heightIn(bay),
                        fabric -> wireLbPerIn2()
                                * fabric.length().inches()
                                * fabric.height().inches(),
                        mesh -> wireLbPerIn2()
                                * bay.slopeLength().inches()
                                * mesh.height().inches());
    }

    private double pickets(Bay bay) {
        double pickets = 0;
        for (FencePicket picket : bay.pickets().pickets())
            pickets += picket.length().inches();
        return pickets * boardLbPerIn();
    }

    private static double heightIn(Bay bay) {
        return bay.topFrom().inches() - bay.bottomFrom().inches();
    }

    private Force atMost(double alongIn, double heightIn) {
        double rails = alongIn * style.railsFor(Length.inches(heightIn)) * railLbPerIn();
        double face = style.infill()
                .match(
                        up -> boardsPerIn2(up.board(), up.spacing().gap().inches()),
                        both -> boardsPerIn2(both.board(), both.spacing().gap().inches()),
                        lying -> boardsPerIn2(
                                lying.board(), lying.spacing().gap().inches()),
                        panel -> steel(panel.picket()) / pitchIn(panel),
                        fabric -> wireLbPerIn2(),
                        mesh -> wireLbPerIn2());
        return Force.pounds(rails + face * alongIn * heightIn + alongIn * trimLbPerIn());
    }

    private double pitchIn(FenceInfill.Panel panel) {
        return panel.gap().inches()
                + catalogue
                        .section(panel.picket())
                        .map(section -> section.width().inches())
                        .orElse(1.0);
    }

    private double boardsPerIn2(Board board, double gapIn) {
        return board.thickness().inches()
                * Math.max(1, board.width().inches() / (board.width().inches() + gapIn))
                * wet(board.species());
    }

    private double boardLbPerIn() {
        return style.infill()
                .match(
                        up -> lbPerIn(up.board()),
                        both -> lbPerIn(both.board()),
                        lying -> lbPerIn(lying.board()),
                        panel -> 0.0,
                        fabric -> 0.0,
                        mesh -> 0.0);
    }

    private double railLbPerIn() {
        return style.rails().match(none -> 0.0, wood -> lbPerIn(wood.rail()), steel -> steel(steel.section()));
    }

    /**
     * Woven wire at its pitch in two directions: {@code 2/(m + d) pi d2/4} of steel, which overrates it a little; welded wire {@code 1/a + 1/b} likewise.
     * Geometry.
     */
    private double wireLbPerIn2() {
        return style.infill()
                .match(
                        up -> 0.0,
                        both -> 0.0,
                        lying -> 0.0,
                        panel -> 0.0,
                        fabric -> wire(
                                        fabric.wire(),
                                        2
                                                / (fabric.mesh().inches()
                                                        + fabric.wire().inches()))
                                + fabric.slats() * SLATS_PSF / 144,
                        mesh -> wire(
                                mesh.wire(),
                                1 / mesh.across().inches() + 1 / mesh.upright().inches()));
    }

    private static double wire(Length diameter, double lengthPerIn2) {
        double d = diameter.inches();
        return lengthPerIn2 * Math.PI / 4 * d * d * STEEL_LB_PER_IN3;
    }

    private double trimLbPerIn() {
        double pounds = 0;
        for (Optional<Board> board : java.util.List.of(
                style.trim().cap(), style.trim().fascia(), style.trim().kick()))
            if (board.isPresent()) pounds += lbPerIn(board.get());
        return pounds;
    }

    private double steel(String section) {
        return catalogue
                .section(section)
                .map(each -> each.weightPerFoot().pounds() / 12)
                .orElse(0.0);
    }

    private double lbPerIn(Board board) {
        return board.areaIn2() * wet(board.species());
    }

    private double wet(String species) {
        return catalogue
                .species(species)
                .map(wood -> wood.densityAt(Moisture.WET).perCubicInch())
                .orElse(0.0);
    }
}
