package plumbleaf.web.proof;

import org.junit.jupiter.api.Tag;
import plumbleaf.web.TrialPostgres;

@Tag("slow")
class KilledWhileSavingPostgresTest extends KilledWhileSavingRules {
    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }
}
