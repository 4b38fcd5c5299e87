package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SameTextTest {
    @Test
    void aNumberMayPartAfterItsNinthDigitOnly() {
        assertThat(SameText.difference("  \"dropIn\": 0.1234567890123,", "  \"dropIn\": 0.1234567890124,"))
                .isEmpty();
        assertThat(SameText.difference("  \"dropIn\": 0.12345678,", "  \"dropIn\": 0.12345679,"))
                .isPresent();
        assertThat(SameText.difference("[ 1000000000.5, 2 ]", "[ 1000000001, 2 ]"))
                .isEmpty();
        assertThat(SameText.difference("[ 1000000000.5, 2 ]", "[ 1000000002, 2 ]"))
                .isPresent();
    }

    @Test
    void whatIsNothingIsMeasuredByWhatStandsBesideIt() {
        String frame = "{\n  \"horizontalLb\": 500.5,\n  \"acrossLb\": %s\n}";
        assertThat(SameText.difference(frame.formatted("0.000000001"), frame.formatted("-0.000000008")))
                .isEmpty();
        assertThat(SameText.difference(frame.formatted("0.000001"), frame.formatted("-0.000001")))
                .isPresent();
        assertThat(SameText.difference("{\n  \"acrossLb\": 0.000000001\n}", "{\n  \"acrossLb\": 0.00000001\n}"))
                .isPresent();
    }

    @Test
    void howJsonIsBrokenIntoLinesSaysNothing() {
        assertThat(SameText.difference(
                        "{ \"rear\": { \"a\": 1, \"b\": \"x, {y}\" } }",
                        "{\n \"rear\": {\n  \"a\": 1.0000000000001,\n  \"b\": \"x, {y}\"\n }\n}"))
                .isEmpty();
        assertThat(SameText.difference("{ \"b\": \"x, y\" }", "{ \"b\": \"x,  y\" }"))
                .isPresent();
        assertThat(SameText.difference("{ \"b\": [ 1, 2 ] }", "{ \"b\": [ 2, 1 ] }"))
                .isPresent();
    }

    @Test
    void wordsMayNot() {
        assertThat(SameText.difference("\"depth\": \"36\\\"\"", "\"depth\": \"42\\\"\""))
                .isPresent();
        assertThat(SameText.difference("\"a\": 1.0000000001", "\"b\": 1.0000000002"))
                .isPresent();
        assertThat(SameText.difference("one\ntwo", "one")).contains("2 lines here, 1 in the browser");
    }
}
