package plumbleaf.browser.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** All that can be asked of a pattern and a text, as words: of ours and of the JDK's. */
public final class SameMatches {
    private SameMatches() {}

    /** Over so many texts that the pattern is likely to be found in, the same ones each time. */
    public static void compare(String written, int flags, int texts) {
        Pattern ours = Pattern.compile(written, flags);
        java.util.regex.Pattern theirs = java.util.regex.Pattern.compile(written, flags);
        LikelyTexts likely = new LikelyTexts(ours, written + "x", written.hashCode());
        for (int i = 0; i < texts; i++) {
            String text = i == 0 ? "" : likely.next();
            assertThat(ours(ours, text)).as("%s in [%s]", written, text).isEqualTo(theirs(theirs, text));
        }
    }

    private static List<String> ours(Pattern pattern, String text) {
        List<String> said = new ArrayList<>();
        Matcher whole = pattern.matcher(text);
        if (whole.matches()) said.add("matches" + groups(whole));
        Matcher first = pattern.matcher(text);
        if (first.lookingAt()) said.add("begins" + groups(first));
        Matcher each = pattern.matcher(text);
        while (each.find()) said.add("found" + groups(each));
        said.add(pattern.matcher(text).replaceAll("<\\$x>"));
        said.add(pattern.matcher(text).replaceFirst(whole.groupCount() > 0 ? "<$1$0>" : "<$0>"));
        for (int most : new int[] {-1, 0, 1, 2, 3}) said.add(Arrays.toString(pattern.split(text, most)));
        return said;
    }

    private static List<String> theirs(java.util.regex.Pattern pattern, String text) {
        List<String> said = new ArrayList<>();
        java.util.regex.Matcher whole = pattern.matcher(text);
        if (whole.matches()) said.add("matches" + groups(whole));
        java.util.regex.Matcher first = pattern.matcher(text);
        if (first.lookingAt()) said.add("begins" + groups(first));
        java.util.regex.Matcher each = pattern.matcher(text);
        while (each.find()) said.add("found" + groups(each));
        said.add(pattern.matcher(text).replaceAll("<\\$x>"));
        said.add(pattern.matcher(text).replaceFirst(whole.groupCount() > 0 ? "<$1$0>" : "<$0>"));
        for (int most : new int[] {-1, 0, 1, 2, 3}) said.add(Arrays.toString(pattern.split(text, most)));
        return said;
    }

    private static String groups(Matcher found) {
        StringBuilder said = new StringBuilder(found.start() + ".." + found.end() + found.group());
        for (int group = 1; group <= found.groupCount(); group++)
            said.append('|').append(found.group(group));
        return said.toString();
    }

    private static String groups(java.util.regex.Matcher found) {
        StringBuilder said = new StringBuilder(found.start() + ".." + found.end() + found.group());
        for (int group = 1; group <= found.groupCount(); group++)
            said.append('|').append(found.group(group));
        return said.toString();
    }
}
