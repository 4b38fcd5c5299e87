package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** The runs: style, height, fit to the ground, bays and posts. */
final class LineRoom {
    static final List<Choice> FITS = List.of(
            new Choice("racked", "racked"), new Choice("stepped", "stepped"), new Choice("level-top", "level top"));

    private LineRoom() {}

    static List<Panel> panels(Opened opened) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String at = "runs[" + i + "]";
            String id = opened.text().value(at + ".id").orElse("");
            FieldMaker make = opened.fields();
            panels.add(Panel.of("Run " + id, id)
                    .withFields(List.of(
                            make.text(at + ".infill", "Height of the infill", Unit.INCHES, id),
                            make.text(at + ".bottomGap", "Gap to the ground", Unit.INCHES, id),
                            make.choice(at + ".fit", "Fit to the ground", Unit.WORDS, id, FITS),
                            make.text(at + ".maxBay", "Largest bay", Unit.FEET, id))));
        }
        return panels;
    }
}
