package plumbleaf.web.archive;

import org.junit.jupiter.api.Tag;
import plumbleaf.web.TrialPostgres;

@Tag("slow")
class BackupPostgresTest extends BackupRules {
    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }
}
