package plumbleaf.web.proof;

import plumbleaf.web.Trial;

class KilledWhileSavingTest extends KilledWhileSavingRules {
    @Override
    String emptyStore() {
        return Trial.store();
    }
}
