package plumbleaf.engine.design;

import plumbleaf.engine.footing.FootingRules;
import plumbleaf.engine.footing.SoilTables;
import plumbleaf.engine.rule.RuleTable;
import plumbleaf.engine.sag.LifeJudgement;
import plumbleaf.engine.wind.WindTables;

/**
 * What a job is designed with besides the catalogue: tables of the codes, and what is presumed where nothing is published.
 *
 * @param rules limits of barriers, access and permits
 * @param life what is presumed of the years after a gate is hung
 * @param footing how depths are chosen
 */
public record Standards(WindTables wind, SoilTables soil, RuleTable rules, LifeJudgement life, FootingRules footing) {}
