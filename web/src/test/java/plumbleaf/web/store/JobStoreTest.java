package plumbleaf.web.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.web.Trial;

class JobStoreTest extends JobStoreRules {
    @Override
    String emptyStore() {
        return Trial.store();
    }

    @Test
    void everyCommitIsSynced() {
        assertThat(sql().sql("pragma journal_mode").query(String.class).single())
                .isEqualTo("wal");
        assertThat(sql().sql("pragma synchronous").query(Integer.class).single())
                .isEqualTo(2);
        assertThat(sql().sql("pragma foreign_keys").query(Integer.class).single())
                .isEqualTo(1);
    }
}
