package plumbleaf.jobfile.catalogue;

import static plumbleaf.jobfile.catalogue.StandardCatalogue.table;

import plumbleaf.engine.design.Standards;
import plumbleaf.engine.footing.FootingRules;
import plumbleaf.engine.footing.SoilTables;
import plumbleaf.engine.rule.RuleTable;
import plumbleaf.engine.sag.LifeJudgement;
import plumbleaf.engine.wind.WindTables;

/** The tables of codes and standards that come with the program: what is presumed of soil, and wind. */
public record StandardTables(SoilTables soils, WindTables wind, RuleTable rules) {
    public static StandardTables load() {
        return new StandardTables(
                new SoilTables(
                        table("soil-classes.csv", GroundTables::classes).rows(),
                        table("soil-sands.csv", GroundTables::sands).rows(),
                        table("soil-clays.csv", GroundTables::clays).rows()),
                new WindTables(
                        table("wind-exposure.csv", WindFiles::exposures).rows(),
                        table("wind-wall.csv", WindFiles::wall).rows(),
                        table("wind-wall-end.csv", WindFiles::ends).rows(),
                        table("wind-return.csv", WindFiles::returns).rows(),
                        table("wind-open.csv", WindFiles::open).rows()),
                RuleFiles.standard());
    }

    /** All a design stands on, with what is usually presumed where nothing is published. */
    public Standards standards() {
        return new Standards(wind, soils, rules, LifeJudgement.USUAL, FootingRules.USUAL);
    }
}
