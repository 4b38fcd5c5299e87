package plumbleaf.engine.sag;

import plumbleaf.engine.gate.IceCoat;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.wind.LeafWind;

/**
 * What acts on a slide leaf besides its own weight. Winds are net pressures on the gross face over the opening, W at strength level.
 *
 * @param person weight that may hang on the nose
 * @param shut wind on the closed leaf
 * @param open wind on the leaf anywhere else
 * @param serviceGust the same in the gust in which someone still closes it
 * @param onTail pressure on each solid inch of the bare tail, strength level
 * @param ice where the job asks for it
 */
public record SlideLoads(
        Force person, LeafWind shut, LeafWind open, LeafWind serviceGust, Pressure onTail, IceCoat ice) {}
