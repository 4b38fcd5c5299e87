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
        boolean draft,
        List<Assumption> assumed) {
    public Job {
        runs = List.copyOf(runs);
        gates = List.copyOf(gates);
        notes = List.copyOf(notes);
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

    public Job withGates(List<Gate> changed) {
        return new Job(
                title, date, display, styleFile, site, ground, runs, changed, builds, existing, rules, money, log,
                parts, notes, draft, assumed);
    }

    public Job withBuilds(Builds changed) {
        return new Job(
                title, date, display, styleFile, site, ground, runs, gates, changed, existing, rules, money, log, parts,
                notes, draft, assumed);
    }
}
