package plumbleaf.engine.job;

import java.time.LocalDate;
import java.util.List;
import plumbleaf.engine.catalogue.OwnParts;
import plumbleaf.engine.ground.GroundBook;
import plumbleaf.engine.quantity.DisplayUnits;

/**
 * Everything that was asked for. Lists keep the order of the job file.
 *
 * @param date the day the job is dated, given and never the clock's
 * @param styleFile name of a file of the user's own styles; empty for none
 * @param parts what the user entered from makers' sheets, beside what is sold anyway
 * @param packet which papers the packet holds, in this order; empty for all of them in their usual one
 * @param assumed what was left out and filled in, in the order of the file
 */
public record Job(
        String title,
        Stated<LocalDate> date,
        DisplayUnits display,
        String styleFile,
        Site site,
        GroundBook ground,
        List<Run> runs,
        List<Gate> gates,
        Builds builds,
        Existing existing,
        Rules rules,
        MoneyTerms money,
        JobLog log,
        OwnParts parts,
        List<String> notes,
        List<PacketPaper> packet,
        boolean draft,
        List<Assumption> assumed) {
    public Job {
        runs = List.copyOf(runs);
        gates = List.copyOf(gates);
        notes = List.copyOf(notes);
        packet = List.copyOf(packet);
        assumed = List.copyOf(assumed);
    }

    /** The run of that id; asking for one that is not there is a fault, since the reader has checked it. */
    public Run run(String id) {
        for (Run run : runs) {
            if (run.id().equals(id)) return run;
        }
        throw new IllegalArgumentException("No run " + id + " in this job");
    }

    /** The basis that holds on a run: its own where it has one, else the site's. */
    public DesignBasis basisOf(Run run) {
        return run.basis().or(site.basis());
    }

    /** What a place of a run is designed on: its side's basis, the run's, the site's; engineered wherever the use of the site forces it. */
    public DesignBasis basisAt(Run run, double stationIn) {
        if (site.forcesEngineered()) return DesignBasis.ENGINEERED;
        for (RunSide side : run.sides())
            if (side.basis().isSaid() && side.holds(stationIn))
                return side.basis().or(DesignBasis.ENGINEERED);
        return basisOf(run);
    }

    /** The site's ground; beside a drop it holds nothing within the height of that. */
    public Soil soilAt(String run, double stationIn) {
        Soil soil = site.soil();
        for (Guarded guard : rules.guards()) if (guard.holds(run, stationIn)) soil = soil.beside(guard.drop());
        return soil;
    }

    public Job withGates(List<Gate> changed) {
        return new Job(
                title, date, display, styleFile, site, ground, runs, changed, builds, existing, rules, money, log,
                parts, notes, packet, draft, assumed);
    }

    /** With another run in the place of the one of its id. */
    public Job withRun(Run changed) {
        List<Run> all = runs.stream()
                .map(run -> run.id().equals(changed.id()) ? changed : run)
                .toList();
        return new Job(
                title, date, display, styleFile, site, ground, all, gates, builds, existing, rules, money, log, parts,
                notes, packet, draft, assumed);
    }

    public Job withBuilds(Builds changed) {
        return new Job(
                title, date, display, styleFile, site, ground, runs, gates, changed, existing, rules, money, log, parts,
                notes, packet, draft, assumed);
    }

    public Job withExisting(Existing changed) {
        return new Job(
                title, date, display, styleFile, site, ground, runs, gates, builds, changed, rules, money, log, parts,
                notes, packet, draft, assumed);
    }

    /** What the lines and the fence along them are worked out from: no title, no gates, no builds, no money, no log. */
    public Job ofLines() {
        return bare(ground, runs, List.of(), new Builds(List.of(), List.of()));
    }

    /** What one gate is worked out from: its run, itself and its build, the site and the rules. Its ground is asked for place by place. */
    public Job ofGate(Gate gate) {
        return bare(
                GroundBook.empty(),
                List.of(run(gate.run())),
                List.of(gate),
                new Builds(List.of(), List.of(builds.of(gate))));
    }

    private Job bare(GroundBook book, List<Run> some, List<Gate> hung, Builds pinned) {
        return new Job(
                "",
                Stated.open(),
                display,
                "",
                site,
                book,
                some,
                hung,
                pinned,
                existing,
                rules,
                MoneyTerms.none(),
                JobLog.empty(),
                OwnParts.NONE,
                List.of(),
                List.of(),
                false,
                List.of());
    }
}
