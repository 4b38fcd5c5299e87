package plumbleaf.web.archive;

import plumbleaf.web.TrialPostgres;

class BackupPostgresTest extends BackupRules {
    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }
}
