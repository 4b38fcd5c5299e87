package plumbleaf.browser;

import java.util.List;
import org.teavm.jso.JSExport;

/** What a page can ask. Each verb takes texts and gives one; the page has one engine, and asks one thing at a time. */
public final class PageEngine {
    private static PageBench bench = PageBench.ofTheProgram();

    private PageEngine() {}

    /** The module starts here; the page calls it once. */
    public static void main(String[] none) {}

    /**
     * What the house has: its price book, its yard, its own styles. Until it is said, those that come with the program and an empty yard.
     *
     * @param kit JSON: {@code book} with {@code id, materials, labor, charges, house}, {@code yard}, {@code styles}, {@code title}, {@code mark}; each may be missing
     * @return empty, or what is wrong with it
     */
    @JSExport
    public static String stock(String kit) {
        HouseKit read = HouseKit.of(kit);
        if (!read.problem().isEmpty()) return read.problem();
        bench = new PageBench(read);
        return "";
    }

    /** The result as {@code design --json} writes it, or {@code {"errors": [...]}} where the job file is wrong. */
    @JSExport
    public static String design(String job) {
        return bench.design(job);
    }

    /** Every drawing as {@code {"name", "svg"}}, in a JSON list; an empty one where the job file is wrong. */
    @JSExport
    public static String drawings(String job) {
        return bench.drawings(job);
    }

    /**
     * A post of the job last designed put somewhere else, laid out and drawn and no further: quick enough for a hand that moves it. Holes and gates are drawn as that design has them.
     *
     * @param known the keys of the strips that the page shows already, with blanks between
     * @return JSON: {@code findings} that the layout must have fixed, as messages, and the {@code strips} of its run in the order of {@link #drawings}: each with its
     *     {@code key}, and its {@code svg} where that key is not known
     */
    @JSExport
    public static String moved(String run, String post, String station, String known) {
        return bench.moved(run, post, station, List.of(known.split(" ")));
    }

    /** Each run with the points of its ground, in a JSON list. */
    @JSExport
    public static String ground(String job) {
        return bench.ground(job);
    }

    /** The crew sheet as a piece of HTML; empty where the job file is wrong. */
    @JSExport
    public static String crewSheet(String job) {
        return bench.crewSheet(job);
    }
}
