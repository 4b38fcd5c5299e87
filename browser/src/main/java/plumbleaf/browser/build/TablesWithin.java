package plumbleaf.browser.build;

import java.util.ArrayList;
import java.util.List;
import org.teavm.classlib.ResourceSupplier;
import org.teavm.classlib.ResourceSupplierContext;

/** The tables that go into the module: the catalogue, the tables of codes, and the price book that comes with the program. */
@SuppressWarnings("deprecation")
public final class TablesWithin implements ResourceSupplier {
    private static final String CATALOGUE = "plumbleaf/jobfile/catalogue/";

    private static final List<String> OF_CATALOGUE = List.of(
            "augers.csv",
            "bolts.csv",
            "fastener-fits.csv",
            "hinges.csv",
            "latches.csv",
            "rods.csv",
            "rollers.csv",
            "rules.csv",
            "screws.csv",
            "sections.csv",
            "soil-classes.csv",
            "soil-clays.csv",
            "soil-sands.csv",
            "species.csv",
            "stock-lengths.csv",
            "styles.json",
            "wind-exposure.csv",
            "wind-open.csv",
            "wind-return.csv",
            "wind-wall-end.csv",
            "wind-wall.csv",
            "wood-posts.csv");

    @Override
    public String[] supplyResources(ResourceSupplierContext context) {
        return names().toArray(new String[0]);
    }

    static List<String> names() {
        List<String> names = new ArrayList<>();
        for (String name : OF_CATALOGUE) names.add(CATALOGUE + name);
        return names;
    }
}
