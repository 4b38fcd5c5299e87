package plumbleaf.web.link;

/** A paper's file name as people say it: {@code site-plan.pdf} is the site plan. */
final class PaperWords {
    private PaperWords() {}

    static String of(String file) {
        String plain = file.replaceAll("\\.[a-z]+$", "").replace('-', ' ');
        return plain.isEmpty() ? file : Character.toUpperCase(plain.charAt(0)) + plain.substring(1);
    }
}
