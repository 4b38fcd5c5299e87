package plumbleaf.web.archive;

import org.junit.jupiter.api.Tag;
import plumbleaf.web.Trial;

@Tag("slow")
class UpgradeTest extends UpgradeRules {
    @Override
    String emptyStore() {
        return Trial.store();
    }
}
