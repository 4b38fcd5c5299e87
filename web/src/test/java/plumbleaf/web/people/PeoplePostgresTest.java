package plumbleaf.web.people;

import plumbleaf.web.TrialPostgres;

class PeoplePostgresTest extends PeopleRules {
    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }
}
