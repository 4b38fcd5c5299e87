package plumbleaf.web.room;

import java.util.List;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** Where each dollar of the price goes. */
final class MoneyRoom {
    private MoneyRoom() {}

    static List<Panel> panels(Opened opened) {
        return List.of(Panel.of("Terms", "money")
                .withFields(List.of(
                        opened.field("money.overhead", "Overhead, of cost", Unit.PERCENT, "money"),
                        opened.field("money.margin", "Margin, of price", Unit.PERCENT, "money"),
                        opened.field("money.contingency", "Contingency, of direct cost", Unit.PERCENT, "money"),
                        opened.field("money.tax", "Tax", Unit.PERCENT, "money"))));
    }
}
