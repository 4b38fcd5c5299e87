package plumbleaf.browser.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a pattern in a page does not know it refuses when it is made: never does one mean something else there. */
class RefusedPatternsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "^a",
                "a*+",
                "a++",
                "a?+",
                "a{2}+",
                "(?i)a",
                "(?<name>a)",
                "(?>a)",
                "\\p{L}",
                "\\D",
                "\\S",
                "\\W",
                "\\B",
                "\\h",
                "\\1",
                "\\n",
                "\\t",
                "\\u0041",
                "\\Qa\\E",
                "\\x41",
                "[a&&b]",
                "[a[b]]",
                "[\\D]",
                "[\\d-x]",
                "[b-a]",
                "[a",
                "(a",
                "a)",
                "a{2",
                "a{,2}",
                "a{3,2}",
                "a{99999}",
                "*a",
                "a|*",
                "(a*)*",
                "(a|b?)+",
                "(?<=a+)b",
                "(?<!a|bc)d",
                "(?=(a))a",
                "\ud83d\ude00",
                "[\ud83d\ude00]",
                "a\\"
            })
    void isRefused(String pattern) {
        assertThatThrownBy(() -> Pattern.compile(pattern))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(pattern);
    }

    @Test
    void anotherFlagIsRefusedToo() {
        assertThatThrownBy(() -> Pattern.compile("a", java.util.regex.Pattern.MULTILINE))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Pattern.compile("[a-z]", Pattern.CASE_INSENSITIVE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatIsQuotedMeansItself() {
        for (String text : new String[] {" | ", "a.b", "$1", "\\E^*[x]{2}(_)", "7 \u00b2 A"}) {
            assertThat(Pattern.matches(Pattern.quote(text), text)).isTrue();
            assertThat(Pattern.compile(Pattern.quote(text)).split("1" + text + "2" + text, -1))
                    .containsExactly("1", "2", "");
        }
    }
}
