package plumbleaf.web.archive;

import plumbleaf.web.Trial;

class UpgradeTest extends UpgradeRules {
    @Override
    String emptyStore() {
        return Trial.store();
    }
}
