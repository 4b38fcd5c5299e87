package plumbleaf.web.archive;

import plumbleaf.web.Trial;

class BackupTest extends BackupRules {
    @Override
    String emptyStore() {
        return Trial.store();
    }
}
