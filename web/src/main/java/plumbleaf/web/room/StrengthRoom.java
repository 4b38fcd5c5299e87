package plumbleaf.web.room;

import java.util.List;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** What the place asks and what the build bears. */
final class StrengthRoom {
    private static final List<Choice> BASES =
            List.of(new Choice("engineered", "engineered"), new Choice("customary", "customary"));
    private static final List<Choice> EXPOSURES =
            List.of(new Choice("B", "B, town and trees"), new Choice("C", "C, open"), new Choice("D", "D, shore"));

    private StrengthRoom() {}

    static List<Panel> panels(Opened opened) {
        FieldMaker make = opened.fields();
        return List.of(Panel.of("Site", "site")
                .withFields(List.of(
                        make.choice("site.basis", "Basis", Unit.WORDS, "site", BASES),
                        make.text("site.wind.speed", "Wind speed", Unit.MPH, "site"),
                        make.choice("site.wind.exposure", "Exposure", Unit.WORDS, "site", EXPOSURES),
                        make.text("site.frost.depth", "Frost depth", Unit.INCHES, "site"),
                        make.text("site.soil.state", "Soil state", Unit.WORDS, "site"))));
    }
}
