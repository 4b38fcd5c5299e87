package plumbleaf.web.page;

/** Names of things on a page from their paths in the job file. */
final class HtmlId {
    private HtmlId() {}

    /** Letters and digits as they are, a dash for each stretch of anything else: {@code f-gates-0-opening}. Asked for every field, so without a pattern. */
    static String of(String kind, String path) {
        StringBuilder id = new StringBuilder(kind.length() + path.length() + 1)
                .append(kind)
                .append('-');
        boolean between = false;
        for (int i = 0; i < path.length(); i++) {
            char sign = path.charAt(i);
            boolean plain = sign < 128 && Character.isLetterOrDigit(sign);
            if (plain) id.append(sign);
            else if (!between) id.append('-');
            between = !plain;
        }
        return id.toString();
    }
}
