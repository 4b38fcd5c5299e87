package plumbleaf.web.letterhead;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plumbleaf.documents.drawing.PaperSize;

/**
 * What the house says of itself on papers, as it is typed.
 *
 * @param more       one line more: a web page, an insurance
 * @param webAddress where a phone reaches this program, for the code on papers; empty for no code
 * @param paper      size of pages of text: {@code letter}, {@code a4}
 * @param sheets     size of sheets of drawings: {@code letter}, {@code tabloid}, {@code a4}, {@code a3}
 */
public record Heading(
        String name,
        String address,
        String phone,
        String license,
        String more,
        String webAddress,
        String paper,
        String sheets) {
    public static final Heading NONE = new Heading("", "", "", "", "", "", "letter", "tabloid");
    public static final List<String> PAPERS = List.of("letter", "a4");
    public static final List<String> SHEETS = List.of("tabloid", "letter", "a3", "a4");
    private static final int LONGEST = 120;

    /** Name first; what was left empty is left out. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String line : List.of(name, address, phone, license.isBlank() ? "" : "License " + license, more))
            if (!line.isBlank()) lines.add(line.strip());
        return List.copyOf(lines);
    }

    public PaperSize paperSize() {
        return PaperSize.valueOf(paper.toUpperCase(Locale.ROOT));
    }

    public PaperSize sheetSize() {
        return PaperSize.valueOf(sheets.toUpperCase(Locale.ROOT));
    }

    /** A size of paper as people write it: {@code A4}. */
    public static String words(String size) {
        return PaperSize.valueOf(size.toUpperCase(Locale.ROOT)).words();
    }

    /** The page of a job at the web address; empty where there is none. */
    public String linkTo(String job) {
        return webAddress.isBlank() ? "" : webAddress.replaceAll("/+$", "") + "/jobs/" + job;
    }

    /** What is wrong, by field. */
    public Map<String, String> problems() {
        Map<String, String> problems = new LinkedHashMap<>();
        if (name.isBlank()) problems.put("name", "Write the company's name: every paper needs it.");
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("name", name);
        typed.put("address", address);
        typed.put("phone", phone);
        typed.put("license", license);
        typed.put("more", more);
        typed.put("webAddress", webAddress);
        typed.forEach((field, text) -> {
            if (text.length() > LONGEST) problems.put(field, "Shorten it to 120 letters: it must fit a title block.");
        });
        if (!webAddress.isBlank() && !isWebAddress(webAddress))
            problems.put("webAddress", "Write it as a browser shows it, such as https://fence.example.");
        if (!PAPERS.contains(paper)) problems.put("paper", "Pick letter or A4.");
        if (!SHEETS.contains(sheets)) problems.put("sheets", "Pick letter, tabloid, A4 or A3.");
        return problems;
    }

    private static boolean isWebAddress(String text) {
        try {
            URI address = new URI(text.strip());
            return List.of("http", "https").contains(String.valueOf(address.getScheme()))
                    && address.getHost() != null
                    && address.getQuery() == null
                    && address.getFragment() == null;
        } catch (URISyntaxException notOne) {
            return false;
        }
    }
}
