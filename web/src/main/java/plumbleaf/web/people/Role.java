package plumbleaf.web.people;

/** What someone is here for. So far only an owner can be made; the others have their place in the store and in the rules. */
public enum Role {
    OWNER("owner"),
    ESTIMATOR("estimator"),
    SHOP("shop"),
    CREW("crew"),
    OFFICE("office");

    private final String key;

    Role(String key) {
        this.key = key;
    }

    /** As the store holds it. */
    public String key() {
        return key;
    }

    static Role of(String key) {
        for (Role role : values()) if (role.key.equals(key)) return role;
        throw new IllegalArgumentException("No such role: " + key);
    }
}
