package plumbleaf.web.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How much one address may ask, and what of its asking is written down. */
class RequestRateTest {
    private static final long SECOND = 1_000_000_000L;

    @Test
    void anAddressHasABurstAndThenSoManyASecond() {
        RequestRate rate = new RequestRate(5, 2);
        long now = 7 * SECOND;
        for (int i = 0; i < 5; i++) assertThat(rate.take("192.0.2.7", now)).isTrue();
        assertThat(rate.take("192.0.2.7", now)).isFalse();
        assertThat(rate.take("192.0.2.8", now)).isTrue();
        assertThat(rate.take("192.0.2.7", now + SECOND)).isTrue();
        assertThat(rate.take("192.0.2.7", now + SECOND)).isTrue();
        assertThat(rate.take("192.0.2.7", now + SECOND)).isFalse();
    }

    @Test
    void noSecretAndNoSecondLineIsLogged() {
        assertThat(RequestLog.shown("/c/abcDEF123/papers/proposal.pdf")).isEqualTo("/c/.../papers/proposal.pdf");
        assertThat(RequestLog.shown("/welcome/abcDEF123")).isEqualTo("/welcome/...");
        assertThat(RequestLog.shown("/jobs/x\n{\"status\":200}")).isEqualTo("/jobs/x?{\"status\":200}");
        assertThat(RequestLog.shown("/" + "a".repeat(999))).hasSize(200);
        assertThat(new Secret("abcDEF123").toString()).doesNotContain("abc");
    }
}
