package plumbleaf.browser;

import java.util.List;
import java.util.Optional;
import org.teavm.jso.JSExport;
import plumbleaf.browser.PageDrawings.Shown;

/** What a page can ask. Each verb takes texts and gives one; the page has one engine, and asks one thing at a time. */
public final class PageEngine {
    private static Optional<PageBench> bench = Optional.empty();

    private PageEngine() {}

    /** The module starts here; the page calls it once. */
    public static void main(String[] none) {}

    /**
     * What the house has: the job's price book, its yard, its own styles. Until it is said, nothing has a price, the yard is empty and the styles are the program's.
     *
     * @param kit JSON: {@code book} with {@code id, materials, labor, charges, house}, {@code yard}, {@code styles}, {@code title}, {@code mark}; each may be missing
     * @return empty, or what is wrong with it
     */
    @JSExport
    public static String stock(String kit) {
        HouseKit read = HouseKit.of(kit);
        if (!read.problem().isEmpty()) return read.problem();
        bench = Optional.of(new PageBench(read));
        return "";
    }

    /** The tables are read once the house is known, and not twice. */
    private static PageBench bench() {
        if (bench.isEmpty()) bench = Optional.of(new PageBench(HouseKit.empty()));
        return bench.get();
    }

    /** The result as {@code design --json} writes it, or {@code {"errors": [...]}} where the job file is wrong. */
    @JSExport
    public static String design(String job) {
        return bench().design(job);
    }

    /** The same sooner, without what each remedy would do to the price. Asked for {@link #design} then, the engine goes on from here. */
    @JSExport
    public static String unpriced(String job) {
        return bench().unpriced(job);
    }

    /**
     * Drawings as {@code {"of", "key", "name", "svg"}}, in a JSON list; an empty one where the job file is wrong.
     *
     * @param parts whose: {@code site}, runs and gates by their ids, with blanks between; empty for all
     * @param known the keys of those that the page shows already, with blanks between: they come without {@code name} and {@code svg}
     */
    @JSExport
    public static String drawings(String job, String parts, String known) {
        return bench().drawings(job, words(parts), new Shown(words(known), List.of()));
    }

    /**
     * A job laid out and drawn and no further, within the design that was made last, whose chosen builds it keeps: quick enough for a hand that drags a post. Holes are drawn as that design has them.
     *
     * @param later the keys of those that the page has, but not on the screen: they come with that key again and nothing else, and are drawn with {@link #drawings} once there is time
     * @return JSON: {@code findings} that the layout must have fixed, as messages; {@code ofGround} all findings of the ground; {@code ground} as of {@link #ground}; {@code drawings} as of {@link #drawings}. Or {@code {"errors":
     *     [...]}} where the job file is wrong, or {@code {}} where nothing was designed yet
     */
    @JSExport
    public static String laid(String job, String parts, String known, String later) {
        return bench().laid(job, words(parts), new Shown(words(known), words(later)));
    }

    private static List<String> words(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split(" "));
    }

    /** Each run with the points of its ground, in a JSON list. */
    @JSExport
    public static String ground(String job) {
        return bench().ground(job);
    }

    /** The crew sheet as a piece of HTML; empty where the job file is wrong. */
    @JSExport
    public static String crewSheet(String job) {
        return bench().crewSheet(job);
    }
}
