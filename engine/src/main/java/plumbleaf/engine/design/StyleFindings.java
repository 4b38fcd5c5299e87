package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FastenerFinish;
import plumbleaf.engine.catalogue.FastenerFit;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.Screw;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayFill;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;

/** What is said of a run's style as a whole: who sees through it, and whether its screws last in its wood. */
final class StyleFindings {
    private StyleFindings() {}

    static List<Finding> of(Job job, Catalogue catalogue, Layout layout) {
        List<Finding> findings = new ArrayList<>();
        for (RunLayout run : layout.runs()) {
            if (run.style().isEmpty() || run.bays().isEmpty()) continue;
            FenceStyle style = run.style().get();
            style.boarding().flatMap(boards -> sight(job, run, boards)).ifPresent(findings::add);
            findings.addAll(screws(run, style, catalogue));
        }
        return findings;
    }

    /** Of boards that lap; that one sees through open gaps goes without saying. */
    private static Optional<Finding> sight(Job job, RunLayout run, Boarding boards) {
        if (!boards.spacing().laps()) return Optional.empty();
        double least = Math.PI / 2;
        double gapIn = Double.NEGATIVE_INFINITY;
        for (Bay bay : run.bays()) {
            least = Math.min(least, sightOf(bay).radians());
            gapIn = Math.max(gapIn, bay.pickets().gapDriest().inches());
        }
        boolean open = gapIn >= 0;
        String lap = job.display().length(Length.inches(Math.max(0, -gapIn)));
        String words = open
                ? "At their driest the boards of " + run.run() + " no longer lap: one sees through. Lap them further."
                : boards.bothSides()
                        ? "At their driest the boards of " + run.run() + " lap by " + lap
                                + " as one looks square; from "
                                + DecimalText.fixed(StrictMath.toDegrees(least), 0)
                                + " degrees off square one sees through between them."
                        : "At their driest the boards of " + run.run() + " still lap by " + lap
                                + ": nothing shows through.";
        return Optional.of(Checked.note(
                "style.sight",
                open ? Severity.CAUTION : Severity.PASS,
                run.run(),
                words,
                Basis.clause("USDA Wood Handbook FPL-GTR-190, equation 13-2; geometry")));
    }

    private static Angle sightOf(Bay bay) {
        return bay.fill()
                .match(
                        open -> Angle.ZERO,
                        BayFill.Pickets::sight,
                        lying -> Angle.ZERO,
                        panel -> Angle.ZERO,
                        fabric -> Angle.ZERO,
                        mesh -> Angle.ZERO);
    }

    /** Only what does not last is said. */
    private static List<Finding> screws(RunLayout run, FenceStyle style, Catalogue catalogue) {
        Set<String> woods = new LinkedHashSet<>();
        style.infill()
                .match(
                        up -> woods.add(up.board().species()),
                        both -> woods.add(both.board().species()),
                        lying -> woods.add(lying.board().species()),
                        panel -> false,
                        fabric -> false,
                        mesh -> false);
        style.rails().match(none -> false, wood -> woods.add(wood.rail().species()), steel -> false);
        List<Finding> findings = new ArrayList<>();
        for (String wood : woods) {
            Screw screw = catalogue.screwThrough(Length.inches(0.625));
            catalogue
                    .fastenerFit(wood, screw.finish())
                    .filter(fit -> !fit.verdict().equals("good"))
                    .ifPresent(fit -> findings.add(badScrew(run.run(), screw, fit)));
        }
        return findings;
    }

    private static Finding badScrew(String run, Screw screw, FastenerFit fit) {
        boolean bad = fit.verdict().equals("bad");
        return Checked.note(
                "fastener.finish",
                bad ? Severity.MUST_FIX : Severity.CAUTION,
                run,
                screw.name() + " in the wood of " + run + ": " + fit.why() + ". "
                        + (screw.finish() == FastenerFinish.STAINLESS ? "" : "Take stainless screws."),
                Basis.clause(fit.source()));
    }
}
