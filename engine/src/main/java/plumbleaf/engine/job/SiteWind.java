package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Speed;

/**
 * The wind the place is designed for, as the wind standard asks for it.
 *
 * @param speed basic wind speed, three-second gust at 33 ft in the open, of the risk category's map
 * @param topographic Kzt, 1 on level ground
 * @param elevation Ke, 1 at sea level and on the safe side above
 */
public record SiteWind(
        Speed speed, Exposure exposure, WindEdition edition, RiskCategory risk, double topographic, double elevation) {}
