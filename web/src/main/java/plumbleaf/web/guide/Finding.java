package plumbleaf.web.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A part of the guide that holds every word asked for.
 *
 * @param address of the part
 * @param before  what stands before the first word found, shortened
 * @param found   that word as it stands
 * @param after   what follows, shortened
 */
public record Finding(String page, String heading, String address, String before, String found, String after) {
    private static final int AROUND = 90;
    private static final int SHOWN = 30;
    /** A word of the heading says more about a part than one of its text. */
    private static final int OF_HEADING = 10;

    /** The parts that hold the beginnings of all words asked for, those with them in the heading or more often first. */
    static List<Finding> of(List<Page> pages, String asked) {
        List<String> words = words(asked);
        if (words.isEmpty()) return List.of();
        List<Weighed> found = new ArrayList<>();
        for (Page page : pages) {
            for (Page.Part part : page.parts()) {
                int weight = weight(part, words);
                if (weight > 0) found.add(new Weighed(weight, finding(page, part, words.get(0))));
            }
        }
        // The sort keeps the order of the pages among equals.
        found.sort(Comparator.comparingInt(Weighed::weight).reversed());
        return found.stream().limit(SHOWN).map(Weighed::finding).toList();
    }

    private static int weight(Page.Part part, List<String> words) {
        List<String> heading = words(part.heading());
        List<String> text = words(part.words());
        int sum = 0;
        for (String word : words) {
            int here = OF_HEADING * count(heading, word) + count(text, word);
            if (here == 0) return 0;
            sum += here;
        }
        return sum;
    }

    private static int count(List<String> in, String beginning) {
        return (int) in.stream().filter(word -> word.startsWith(beginning)).count();
    }

    private static Finding finding(Page page, Page.Part part, String word) {
        String text = part.words().strip().replaceAll("\\s+", " ");
        int at = start(text.toLowerCase(Locale.ROOT), word);
        String address = "/guide/" + page.name() + (part.anchor().isEmpty() ? "" : "#" + part.anchor());
        if (at < 0) return new Finding(page.title(), part.heading(), address, "", "", cut(text, 0, 2 * AROUND));
        int from = at <= AROUND ? 0 : text.indexOf(' ', at - AROUND) + 1;
        int end = at + word.length();
        return new Finding(
                page.title(),
                part.heading(),
                address,
                (from > 0 ? "…" : "") + text.substring(from, at),
                text.substring(at, end),
                cut(text, end, end + AROUND));
    }

    private static String cut(String text, int from, int to) {
        if (to >= text.length()) return text.substring(from);
        int space = text.lastIndexOf(' ', to);
        return text.substring(from, space > from ? space : to) + "…";
    }

    /** Where a word begins with these letters; -1 for nowhere. */
    private static int start(String text, String word) {
        for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
            if (at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1))) return at;
        }
        return -1;
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+", -1))
            if (!word.isEmpty()) words.add(word);
        return words;
    }

    private record Weighed(int weight, Finding finding) {}
}
