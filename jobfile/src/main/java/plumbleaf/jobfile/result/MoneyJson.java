package plumbleaf.jobfile.result;

import plumbleaf.engine.pricing.Payment;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.PriceLine;
import plumbleaf.engine.pricing.Step;
import plumbleaf.engine.pricing.TaxAmount;
import plumbleaf.engine.pricing.UnitOffer;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** {@code money}: every line, and the way from cost to total. Amounts are decimal texts in dollars. */
final class MoneyJson {
    private MoneyJson() {}

    static Json.Members price(Price price) {
        return Json.object()
                .put("lines", price.lines(), MoneyJson::line)
                .put("direct", price.direct().plain())
                .put("contingency", price.contingency().plain())
                .put("cost", price.cost().plain())
                .put("overhead", price.overhead().plain())
                .put("profit", price.profit().plain())
                .put("reserve", price.reserve().plain())
                .put("toMinimum", price.toMinimum().plain())
                .put("rounding", price.rounding().plain())
                .put("price", price.price().plain())
                .put("tax", price.tax().plain())
                .put("taxes", price.taxes(), MoneyJson::tax)
                .put("total", price.total().plain())
                .put("stages", price.stages(), MoneyJson::stage)
                .put("waterfall", price.waterfall(), MoneyJson::step)
                .put("unitOffers", price.unitOffers(), MoneyJson::unitOffer);
    }

    private static Node tax(TaxAmount tax) {
        return Json.object()
                .put("name", tax.name())
                .put("amount", tax.amount().plain())
                .build();
    }

    private static Node unitOffer(UnitOffer offer) {
        return Json.object()
                .put("charge", offer.charge())
                .put("name", offer.name())
                .put("included", offer.included())
                .put("each", offer.each().plain())
                .build();
    }

    private static Node line(PriceLine line) {
        return Json.object()
                .put("category", line.category().key())
                .put("item", line.item())
                .put("name", line.name())
                .put("quantity", line.quantity())
                .put("unit", line.unit())
                .put("unitPrice", line.price().plain())
                .put("amount", line.amount().plain())
                .put("taxed", line.taxed())
                .put("causes", Json.texts(line.causes()))
                .build();
    }

    private static Node stage(Payment payment) {
        return Json.object()
                .put("when", payment.when())
                .put("amount", payment.amount().plain())
                .build();
    }

    private static Node step(Step step) {
        return Json.object()
                .put("key", step.key())
                .put("words", step.words())
                .put("amount", step.amount().plain())
                .build();
    }
}
