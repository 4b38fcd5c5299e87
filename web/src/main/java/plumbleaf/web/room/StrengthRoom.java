package plumbleaf.web.room;

import java.util.List;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** What the place asks and what the build bears. */
final class StrengthRoom {
    private StrengthRoom() {}

    static List<Panel> panels(Opened opened) {
        return List.of(Panel.of("Site", "site")
                .withFields(List.of(
                        opened.choice("site.basis", "Basis", "site", Choices.BASES),
                        opened.field("site.wind.speed", "Wind speed", Unit.MPH, "site"),
                        opened.choice("site.wind.exposure", "Exposure", "site", Choices.EXPOSURES),
                        opened.field("site.frost.depth", "Frost depth", Unit.INCHES, "site"),
                        opened.choice("site.soil.kind", "Soil", "site", Choices.SOILS),
                        opened.choice("site.soil.state", "Soil state", "site", Choices.STATES))));
    }
}
