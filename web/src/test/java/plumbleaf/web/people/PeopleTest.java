package plumbleaf.web.people;

import plumbleaf.web.Trial;

class PeopleTest extends PeopleRules {
    @Override
    String emptyStore() {
        return Trial.store();
    }
}
