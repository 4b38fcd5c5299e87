package plumbleaf.web.proof;

import org.junit.jupiter.api.Tag;
import plumbleaf.web.Trial;

@Tag("slow")
class KilledWhileSavingTest extends KilledWhileSavingRules {
    @Override
    String emptyStore() {
        return Trial.store();
    }
}
