package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** The gates: opening, hand, leaf, posts; how it hangs, swings and sags. */
final class GatesRoom {
    static final List<Choice> SIDES = List.of(new Choice("left", "left"), new Choice("right", "right"));
    static final List<Choice> WAYS = List.of(new Choice("in", "in"), new Choice("out", "out"));
    static final List<Choice> SHAPES = List.of(new Choice("square", "square"), new Choice("raked", "raked"));

    private GatesRoom() {}

    static List<Panel> panels(Opened opened) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < opened.text().count("gates"); i++) {
            String at = "gates[" + i + "]";
            String id = opened.text().value(at + ".id").orElse("");
            String build = "builds." + id;
            FieldMaker make = opened.fields();
            panels.add(Panel.of("Gate " + id, id)
                    .withFields(List.of(
                            make.text(at + ".station", "Station", Unit.FEET, id),
                            make.text(at + ".opening", "Opening", Unit.INCHES, id),
                            make.choice(at + ".hinge", "Hinge, from outside", Unit.WORDS, id, SIDES),
                            make.choice(at + ".swing", "Swings", Unit.WORDS, id, WAYS),
                            make.text(at + ".opens", "Opens", Unit.DEGREES, id),
                            make.choice(at + ".leaf.shape", "Leaf", Unit.WORDS, id, SHAPES),
                            make.text(at + ".leaf.bottomGap", "Gap under the leaf", Unit.INCHES, id),
                            make.text(build + ".frame", "Frame tube", Unit.WORDS, id),
                            make.text(build + ".hingePost", "Hinge post", Unit.WORDS, id),
                            make.text(build + ".depth", "Footing depth", Unit.INCHES, id))));
        }
        return panels;
    }
}
