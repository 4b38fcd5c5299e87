package plumbleaf.web.room;

import java.util.List;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Unit;

/** Where each dollar of the price goes. */
final class MoneyRoom {
    private MoneyRoom() {}

    static List<Panel> panels(Opened opened) {
        FieldMaker make = opened.fields();
        return List.of(Panel.of("Terms", "money")
                .withFields(List.of(
                        make.text("money.overhead", "Overhead, of cost", Unit.PERCENT, "money"),
                        make.text("money.margin", "Margin, of price", Unit.PERCENT, "money"),
                        make.text("money.contingency", "Contingency, of direct cost", Unit.PERCENT, "money"),
                        make.text("money.tax", "Tax", Unit.PERCENT, "money"))));
    }
}
