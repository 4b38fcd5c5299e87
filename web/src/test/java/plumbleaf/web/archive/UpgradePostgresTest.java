package plumbleaf.web.archive;

import plumbleaf.web.TrialPostgres;

class UpgradePostgresTest extends UpgradeRules {
    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }
}
