package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Restated;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.MetricWords;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.takeoff.Sold;
import plumbleaf.engine.takeoff.TakeoffLine;

/** Names under which things are sold: a metric job says everything in metric but them. */
public final class TradeNames {
    private TradeNames() {}

    /** How a job with this catalogue and this price book speaks metric. */
    public static MetricWords metric(Catalogue catalogue, PriceBook book) {
        List<String> names = new ArrayList<>();
        for (Section section : catalogue.sections()) names.add(section.name());
        for (Sold sold : book.materials()) names.add(sold.name());
        return MetricWords.keeping(names);
    }

    /** The same by what a design takes and stands on. */
    public static MetricWords metric(Design design) {
        List<String> names = new ArrayList<>();
        for (TakeoffLine line : design.quote().takeoff().lines())
            names.add(line.sold().name());
        for (PostDesign post : design.posts()) names.add(post.section().name());
        for (GateDesign gate : design.gates()) names.add(gate.parts().frame().name());
        return MetricWords.keeping(names);
    }

    static List<Finding> said(List<Finding> findings, DisplayUnits display, Catalogue catalogue, PriceBook book) {
        return display == DisplayUnits.US ? findings : Restated.all(findings, metric(catalogue, book)::of);
    }
}
