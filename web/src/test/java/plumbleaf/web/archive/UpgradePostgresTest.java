package plumbleaf.web.archive;

import org.junit.jupiter.api.Tag;
import plumbleaf.web.TrialPostgres;

@Tag("slow")
class UpgradePostgresTest extends UpgradeRules {
    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }
}
