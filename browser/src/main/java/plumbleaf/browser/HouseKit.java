package plumbleaf.browser;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.takeoff.OnHand;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StyleFile;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.pricebook.PriceBooks.Source;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.YardFile;

/**
 * What a house brings to a design beside the job: its parts, its prices, what lies in its yard.
 *
 * @param book    of the job; without one nothing has a price
 * @param yard    what the job may take of it; none where nobody counted
 * @param problem what is wrong with it; empty where nothing is
 */
record HouseKit(Catalogue catalogue, Optional<PriceBook> book, Optional<OnHand> yard, String problem) {
    private static HouseKit wrong(String problem) {
        return new HouseKit(StandardCatalogue.load(), Optional.empty(), Optional.empty(), problem);
    }

    /** The parts that come with the program, and nothing of a house's. */
    static HouseKit empty() {
        return wrong("");
    }

    static HouseKit of(String json) {
        return JsonReader.read(json).match(tree -> read(tree.root()), broken -> wrong("The kit is not JSON"));
    }

    private static HouseKit read(Node kit) {
        Catalogue catalogue = StandardCatalogue.load();
        String styles = text(kit, "styles");
        if (!styles.isEmpty()) {
            Catalogue standard = catalogue;
            Optional<Catalogue> added = StyleFile.added(
                            "styles.json", styles.getBytes(StandardCharsets.UTF_8), standard)
                    .match(good -> Optional.of(standard.withStyles(good.styles())), bad -> Optional.empty());
            if (added.isEmpty()) return wrong("The house's styles cannot be read");
            catalogue = added.get();
        }
        Optional<PriceBook> book = Optional.empty();
        String id = text(kit, "book.id");
        if (!id.isEmpty()) {
            PriceBooks.Answer answer = PriceBooks.read(
                    id, source(kit, "materials"), source(kit, "labor"), source(kit, "charges"), source(kit, "house"));
            for (InputError error : answer.errors()) return wrong(error.text());
            book = answer.book().stream().findFirst();
        }
        return new HouseKit(catalogue, book, yard(kit), "");
    }

    private static Optional<OnHand> yard(Node kit) {
        String rows = text(kit, "yard");
        if (rows.isEmpty()) return Optional.empty();
        Taker taker = new Taker(text(kit, "title"), text(kit, "mark"));
        return Optional.of(
                YardFile.read("yard.csv", rows).yard().asSeenBy(taker).onHand());
    }

    private static Source source(Node kit, String table) {
        return new Source(table + ".csv", text(kit, "book." + table));
    }

    private static String text(Node kit, String path) {
        return NodePath.of(path)
                .find(kit)
                .map(node -> node.match(o -> "", list -> "", said -> said.text(), number -> "", flag -> "", none -> ""))
                .orElse("");
    }
}
