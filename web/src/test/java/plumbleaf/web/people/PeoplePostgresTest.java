package plumbleaf.web.people;

import org.junit.jupiter.api.Tag;
import plumbleaf.web.TrialPostgres;

@Tag("slow")
class PeoplePostgresTest extends PeopleRules {
    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }
}
