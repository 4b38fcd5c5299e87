package plumbleaf.web.proof;

import plumbleaf.web.TrialPostgres;

class KilledWhileSavingPostgresTest extends KilledWhileSavingRules {
    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }
}
