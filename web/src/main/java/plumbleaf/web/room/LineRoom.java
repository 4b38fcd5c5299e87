package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** The runs: style, height, fit to the ground, bays and posts. */
final class LineRoom {
    private LineRoom() {}

    static List<Panel> panels(Opened opened) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String at = "runs[" + i + "]";
            String id = opened.text().value(at + ".id").orElse("");
            panels.add(Panel.of("Run " + id, id)
                    .withFields(List.of(
                            opened.choice(at + ".style", "Style", id, Choices.styles(opened.catalogue())),
                            opened.field(at + ".infill", "Height of the infill", Unit.INCHES, id),
                            opened.field(at + ".bottomGap", "Gap to the ground", Unit.INCHES, id),
                            opened.choice(at + ".fit", "Fit to the ground", id, Choices.FITS),
                            opened.field(at + ".maxBay", "Largest bay", Unit.FEET, id))));
        }
        return panels;
    }
}
