package plumbleaf.engine.design;

import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.Solidity;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.wind.Screen;

/** What the wind meets of a style. */
final class FenceScreen {
    private FenceScreen() {}

    static Screen of(FenceStyle style, Catalogue catalogue, Length infill) {
        Solidity solidity = Solidity.of(style, catalogue, infill);
        return new Screen(solidity.share(), solidity.round(), solidity.member());
    }
}
