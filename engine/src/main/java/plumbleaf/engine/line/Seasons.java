package plumbleaf.engine.line;

import plumbleaf.engine.material.Moisture;

/** The moistures a board goes through: as it is nailed up, at the end of a dry summer, and after a wet winter. */
public record Seasons(Moisture installed, Moisture driest, Moisture wettest) {
    /**
     * Wet boards, 28 %, that settle between 9 and 17 %. Judgement; 17 % is the equilibrium of cool air near 80 % relative humidity (USDA Wood
     * Handbook, equation 4-5, from memory).
     */
    public static final Seasons USUAL = new Seasons(Moisture.WET, Moisture.DRY, Moisture.percent(17));
}
