package plumbleaf.browser.pattern;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything that a pattern in a page knows means what it means to {@code java.util.regex}, in little. */
class SamePatternsTest {
    private static final int TEXTS = 400;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "(,\\d{3})+",
                "\\d{1,3}(,\\d{3})+",
                "a|ab|abc",
                "(a|ab)(c|bcd)(d*)",
                "(?:(a)|b)+",
                "(a)?b",
                "(a){2,3}",
                "(a|b){0,2}c",
                "(ab?)+?b",
                "a{2,}?",
                "a??b",
                ".+?:.*",
                "x.{8}(?!$)",
                "a$",
                "$",
                "\\b",
                "\\bab\\b",
                "[^a]",
                "[^\\d ]*",
                "[]a]+",
                "[^]]+",
                "[a\\]-]",
                "[-a]",
                "(?<=ab)c",
                "(?<!ab)c",
                "a(?=b|$)",
                "a(?!b)",
                "\\R",
                "a\\R+b",
                "[\\w.]+\\s*",
                ".",
                "",
                "(|a)b",
                "[.$*+?(){}|]",
                "\\$\\.\\\\",
                "a{0}b",
                "(a{1,2}){2}",
                "(?:a(?:b|c)*d)*"
            })
    void isReadAsTheJdkReadsIt(String written) {
        SameMatches.compare(written, 0, TEXTS);
    }
}
