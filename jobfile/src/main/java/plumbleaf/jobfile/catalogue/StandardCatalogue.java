package plumbleaf.jobfile.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.BiFunction;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.table.CsvTable;

/** The catalogue that comes with the program. */
public final class StandardCatalogue {
    /** Footing depths are dug in steps of 6 in.; common practice, no source. */
    private static final Length DEPTH_STEP = Length.inches(6);

    private StandardCatalogue() {}

    public static Catalogue load() {
        List<WoodSpecies> species =
                table("species.csv", MaterialTables::species).rows();
        return new Catalogue(
                table("sections.csv", MaterialTables::sections).rows(),
                species,
                table("wood-posts.csv", (file, text) -> WoodPostTable.read(file, text, species))
                        .rows(),
                styles(),
                table("screws.csv", FastenerTables::screws).rows(),
                table("fastener-fits.csv", FastenerTables::fits).rows(),
                table("hinges.csv", PartTables::hinges).rows(),
                table("latches.csv", PartTables::latches).rows(),
                table("rods.csv", PartTables::rods).rows(),
                table("rollers.csv", PartTables::rollers).rows(),
                table("bolts.csv", PartTables::bolts).rows(),
                table("stock-lengths.csv", PartTables::stockLengths).rows(),
                table("augers.csv", PartTables::augers).rows(),
                DEPTH_STEP);
    }

    /** A table of our own with an error in it is a fault of ours, not of the user's. */
    static <T> CsvTable<T> table(String name, BiFunction<String, String, CsvTable<T>> read) {
        CsvTable<T> table = read.apply(name, text(name));
        for (InputError error : table.errors()) throw new IllegalStateException(error.text());
        return table;
    }

    private static List<FenceStyle> styles() {
        return StyleFile.read("styles.json", text("styles.json")).match(good -> good.styles(), bad -> {
            throw new IllegalStateException(bad.all().get(0).text());
        });
    }

    private static String text(String name) {
        try (InputStream in = StandardCatalogue.class.getResourceAsStream(name)) {
            if (in == null) throw new IllegalStateException("The catalogue has no " + name);
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The catalogue's " + name + " cannot be read", e);
        }
    }
}
