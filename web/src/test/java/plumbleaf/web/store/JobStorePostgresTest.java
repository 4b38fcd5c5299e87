package plumbleaf.web.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.web.TrialPostgres;

@Tag("slow")
class JobStorePostgresTest extends JobStoreRules {
    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }

    @Test
    void everyCommitIsSynced() {
        assertThat(sql().sql("show fsync").query(String.class).single()).isEqualTo("on");
        assertThat(sql().sql("show synchronous_commit").query(String.class).single())
                .isEqualTo("on");
    }
}
