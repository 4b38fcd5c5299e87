package plumbleaf.browser.build;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntSupplier;
import org.teavm.jso.JSExport;

/** Compiled as the engine is: asks for what is not there, and says whether that was Java's own exception. */
public final class Faults {
    private Faults() {}

    public static void main(String[] none) {}

    /** What stands at a place of {@code 0 10 20}. */
    @JSExport
    public static String at(String place) {
        int[] tens = {0, 10, 20};
        try {
            return "" + tens[Integer.parseInt(place)];
        } catch (ArrayIndexOutOfBoundsException fault) {
            return "no such place";
        }
    }

    /** A thing as a list, a text and an array of texts: those it is. */
    @JSExport
    public static String kinds(String name) {
        Object thing = thing(name);
        return isList(thing) + isText(thing) + isTexts(thing);
    }

    private static Object thing(String name) {
        return switch (name) {
            case "list" -> new ArrayList<>(List.of("one"));
            case "text" -> name;
            case "texts" -> new String[] {name};
            case "numbers" -> new Integer[] {1};
            default -> 7;
        };
    }

    private static String isList(Object thing) {
        try {
            return "list of " + ((List<?>) thing).size();
        } catch (ClassCastException fault) {
            return "";
        }
    }

    private static String isText(Object thing) {
        try {
            return "text of " + ((String) thing).length();
        } catch (ClassCastException fault) {
            return "";
        }
    }

    private static String isTexts(Object thing) {
        try {
            return "texts of " + ((String[]) thing).length;
        } catch (ClassCastException fault) {
            return "";
        }
    }

    /** Asks something of objects that are not there: a text, a list, an array, what an array holds, and one of ours. */
    @JSExport
    public static String missing() {
        String[] texts = new String[1];
        List<?>[] lists = new List<?>[1];
        int[][] rows = new int[1][];
        Held[] held = new Held[1];
        return asked(() -> texts[0].length())
                + asked(() -> lists[0].size())
                + asked(() -> rows[0].length)
                + asked(() -> rows[0][0])
                + asked(() -> held[0].many)
                + asked(() -> held[0].twice());
    }

    private static String asked(IntSupplier of) {
        try {
            return "found " + of.getAsInt();
        } catch (NullPointerException fault) {
            return "none ";
        }
    }

    private static final class Held {
        private int many = 1;

        private int twice() {
            many++;
            return many * 2;
        }
    }
}
