package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FenceRails;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.Screw;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayFill;
import plumbleaf.engine.line.BayFilling;
import plumbleaf.engine.line.RailRows;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Timber;
import plumbleaf.engine.strength.FabricTension;
import plumbleaf.engine.strength.PicketCheck;
import plumbleaf.engine.strength.RailCheck;
import plumbleaf.engine.strength.SteelRailCheck;
import plumbleaf.engine.strength.Withdrawal;

/** What is checked of bays that hold anything but upright boards. */
final class FillChecks {
    /** CM of screws in wood that gets wet in service. Source: NDS 2018 Table 11.3.3, from memory. */
    private static final double WET_SCREW = 0.7;

    private static final double WIND_DURATION = 1.6;

    private final Catalogue catalogue;
    private final Run run;
    private final FenceStyle style;
    private final DesignBasis basis;

    FillChecks(Catalogue catalogue, Run run, FenceStyle style, DesignBasis basis) {
        this.catalogue = catalogue;
        this.run = run;
        this.style = style;
        this.basis = basis;
    }

    List<Finding> of(Bay bay, Pressure wind) {
        return style.infill()
                .match(
                        upright -> List.of(),
                        both -> List.of(),
                        lying -> lying(bay, lying, wind),
                        panel -> panel(bay, panel, wind),
                        fabric -> fabric(bay, wind),
                        mesh -> rails(bay, wind));
    }

    /** Utilisation of what bends most in wind: a rail, a lying board, a picket. */
    double windRatio(Bay bay, Pressure wind) {
        double rail = steelRail(bay, wind).map(SteelRailCheck::windRatio).orElse(0.0);
        return style.infill()
                .match(
                        upright -> 0.0,
                        both -> 0.0,
                        lying -> boards(bay, lying, wind).windRatio(),
                        panel -> Math.max(
                                rail,
                                picket(panel, wind)
                                        .map(SteelRailCheck::windRatio)
                                        .orElse(0.0)),
                        fabric -> rail,
                        mesh -> rail);
    }

    /** A push along the top: a lying board takes it alone. */
    OptionalDouble pushed(Bay bay, double asWindLbPerIn, double woodDuration) {
        Optional<SteelRailCheck> steel = steelRail(bay, Pressure.ZERO);
        if (steel.isPresent()) {
            SteelRailCheck still = steel.get();
            return OptionalDouble.of(new SteelRailCheck(
                            still.what(),
                            still.section(),
                            still.span(),
                            still.runsOn(),
                            still.downLbPerIn(),
                            asWindLbPerIn,
                            still.pressed())
                    .windRatio());
        }
        return style.infill()
                .match(
                        up -> OptionalDouble.empty(),
                        both -> OptionalDouble.empty(),
                        lying -> {
                            RailCheck still = boards(bay, lying, Pressure.ZERO);
                            return OptionalDouble.of(new RailCheck(
                                            still.rail(),
                                            still.span(),
                                            still.downLbPerIn(),
                                            asWindLbPerIn * woodDuration)
                                    .windRatio());
                        },
                        panel -> OptionalDouble.empty(),
                        fabric -> OptionalDouble.empty(),
                        mesh -> OptionalDouble.empty());
    }

    private RailCheck boards(Bay bay, FenceInfill.Lying lying, Pressure wind) {
        WoodSpecies wood = catalogue.species(lying.board().species()).orElseThrow();
        Timber board = new Timber(lying.board().width(), lying.board().thickness(), wood);
        double own = board.weightOf(Length.inches(1), Moisture.WET).pounds();
        return new RailCheck(board, bay.slopeLength(), own, wind.inPsi() * pitchIn(bay, lying));
    }

    private static double pitchIn(Bay bay, FenceInfill.Lying lying) {
        double gap = bay.fill()
                .match(
                        open -> 0.0,
                        pickets -> 0.0,
                        laid -> laid.gap().inches(),
                        panel -> 0.0,
                        fabric -> 0.0,
                        mesh -> 0.0);
        return lying.board().width().inches() + gap;
    }

    /** Boards from post to post, and the screws at their ends. Screws into steel posts are not worked out. */
    private List<Finding> lying(Bay bay, FenceInfill.Lying lying, Pressure wind) {
        List<Finding> findings = new ArrayList<>(boards(bay, lying, wind).findings("board", bay.id(), basis));
        Optional<WoodSpecies> post = catalogue
                .post(style.posts().lineFor(run.infill()))
                .flatMap(stock -> stock.match(steel -> Optional.empty(), wood -> Optional.of(wood.species())));
        Area share = Area.squareInches(pitchIn(bay, lying) * bay.slopeLength().inches() / 2);
        post.ifPresent(wood -> {
            Screw screw = catalogue.screwThrough(lying.board().thickness());
            Force allowed = Withdrawal.allowed(
                    Withdrawal.screwPerInch(wood.ovenDryGravity(), screw.diameter()),
                    screw.inRail(lying.board().thickness()),
                    WIND_DURATION,
                    WET_SCREW);
            findings.add(PicketCheck.of(bay.id(), wind, share, lying.fasteners(), allowed, basis));
        });
        return findings;
    }

    private List<Finding> rails(Bay bay, Pressure wind) {
        return steelRail(bay, wind).map(rail -> rail.findings(bay.id(), basis)).orElse(List.of());
    }

    private Optional<SteelRailCheck> steelRail(Bay bay, Pressure wind) {
        Optional<FenceRails.Steel> rails =
                style.rails().match(none -> Optional.empty(), wood -> Optional.empty(), Optional::of);
        Optional<Section> section = rails.flatMap(steel -> catalogue.section(steel.section()));
        if (section.isEmpty() || bay.rails().isEmpty()) return Optional.empty();
        Length below = AsBuilt.of(run, bay).below(run);
        RailRows rows = RailRows.of(style, catalogue, run.infill()).over(below);
        double share = rows.busiestShare(run.infill().plus(below), rails.get().bottomWire())
                .inches();
        double hung = BayWeight.fillOf(bay, style, catalogue).pounds()
                / bay.slopeLength().inches();
        double own = section.get().weightPerFoot().pounds() / 12;
        return Optional.of(new SteelRailCheck(
                "rail",
                section.get(),
                bay.slopeLength(),
                runsOn(),
                own + hung / bay.rails().size(),
                wind.inPsi() * share,
                pressed()));
    }

    /** Stretched fabric presses the rail it hangs on. */
    private Force pressed() {
        return style.infill()
                .match(
                        up -> Force.ZERO,
                        both -> Force.ZERO,
                        lying -> Force.ZERO,
                        panel -> Force.ZERO,
                        fabric -> FabricTension.usual(run.infill(), run.bottomGap())
                                .inTopRail(),
                        mesh -> Force.ZERO);
    }

    /** Swaged rails of chain link run through the caps of their posts. */
    private boolean runsOn() {
        return style.infill()
                .match(up -> false, both -> false, lying -> false, panel -> false, fabric -> true, mesh -> false);
    }

    /** A picket between two rails, with the wind of its pitch. */
    private Optional<SteelRailCheck> picket(FenceInfill.Panel panel, Pressure wind) {
        RailRows rows = RailRows.of(style, catalogue, run.infill());
        return catalogue.section(panel.picket()).map(section -> {
            double pitch = section.width().inches() + panel.gap().inches();
            return new SteelRailCheck(
                    "picket", section, rows.widestSpace(run.infill()), false, 0, wind.inPsi() * pitch, Force.ZERO);
        });
    }

    private List<Finding> panel(Bay bay, FenceInfill.Panel panel, Pressure wind) {
        List<Finding> findings = new ArrayList<>(rails(bay, wind));
        picket(panel, wind).ifPresent(picket -> findings.addAll(picket.findings(bay.id(), basis)));
        double grade = Math.abs(bay.grade().ratio());
        Checked rack = Checked.of(
                "panel.rack",
                Severity.MUST_FIX,
                bay.id(),
                "The panel of " + bay.id() + " is racked by " + DecimalText.fixed(grade * 100, 1) + "%; it racks "
                        + DecimalText.fixed(panel.rack().ratio() * 100, 1)
                        + "% at most. Step the run, or take shorter panels.",
                Basis.job("the panel's rack limit"),
                Measure.demand(grade, panel.rack().ratio(), ""));
        findings.add(rack.severity() == Severity.PASS ? rack : rack.withRemedies(List.of(stepThere())));
        double swivel = StrictMath.toDegrees(StrictMath.atan(grade));
        findings.add(Checked.of(
                "panel.bracket",
                Severity.MUST_FIX,
                bay.id(),
                "The brackets of " + bay.id() + " turn " + DecimalText.fixed(swivel, 1) + " degrees; they turn "
                        + DecimalText.fixed(panel.swivel().inDegrees(), 1) + " at most.",
                Basis.job("the bracket's swing"),
                Measure.demand(swivel, panel.swivel().inDegrees(), "deg")));
        bay.fill()
                .match(
                        open -> Optional.<Finding>empty(),
                        pickets -> Optional.<Finding>empty(),
                        lying -> Optional.<Finding>empty(),
                        made -> tooShort(bay, made, panel),
                        fabric -> Optional.<Finding>empty(),
                        mesh -> Optional.<Finding>empty())
                .ifPresent(findings::add);
        return findings;
    }

    private Remedy stepThere() {
        return new Remedy(
                "fit",
                "step the lines of sight that are too steep for it",
                OptionalDouble.of(0),
                Optional.empty(),
                Optional.of("runs[" + run.id() + "].fit=" + Fit.MIXED.key()));
    }

    private static Optional<Finding> tooShort(Bay bay, BayFill.Panel made, FenceInfill.Panel panel) {
        if (BayFilling.fills(made, panel)) return Optional.empty();
        return Optional.of(Checked.of(
                "panel.length",
                Severity.MUST_FIX,
                bay.id(),
                "The panel of " + bay.id() + " leaves "
                        + DecimalText.fixed(made.end().inches(), 1)
                        + " in. beside its posts, more than the "
                        + DecimalText.fixed(panel.gap().inches(), 1)
                        + " in. between its pickets: the bay is longer than a panel. Shorten the largest bay.",
                Basis.job("the panel's length"),
                Measure.demand(made.end().inches(), panel.gap().inches(), "in")));
    }

    private List<Finding> fabric(Bay bay, Pressure wind) {
        List<Finding> findings = new ArrayList<>(rails(bay, wind));
        style.rails()
                .match(
                        none -> Optional.<Section>empty(),
                        wood -> Optional.<Section>empty(),
                        steel -> catalogue.section(steel.section()))
                .ifPresent(rail -> findings.add(
                        FabricTension.usual(run.infill(), run.bottomGap()).strut(bay.id(), rail, bay.slopeLength())));
        return findings;
    }
}
