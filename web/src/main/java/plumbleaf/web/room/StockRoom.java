package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** What is bought and how it is cut. */
final class StockRoom {
    private StockRoom() {}

    static List<Panel> panels(Opened opened) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < opened.text().count("runs"); i++) {
            String id = opened.text().value("runs[" + i + "].id").orElse("");
            panels.add(Panel.of("Posts of run " + id, id)
                    .withFields(List.of(
                            opened.pinned("builds." + id + ".post", "Line post", id, Choices.posts(opened.catalogue())),
                            opened.field("builds." + id + ".hole", "Hole", Unit.INCHES, id),
                            opened.field("builds." + id + ".depth", "Footing depth", Unit.INCHES, id))));
        }
        return panels;
    }
}
