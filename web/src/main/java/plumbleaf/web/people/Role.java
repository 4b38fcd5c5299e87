package plumbleaf.web.people;

/** What someone is here for, and so what they may see and do. */
public enum Role {
    /** Everything, people and keys to the house included. */
    OWNER("owner", "Owner", true, true),
    /** Measures, designs, prices, sells. */
    ESTIMATOR("estimator", "Estimator", true, true),
    /** Cuts and welds: reads jobs, adds photos, never sees money. */
    SHOP("shop", "Shop", false, false),
    /** Digs, sets, hangs: reads jobs, adds photos, never sees money. */
    CREW("crew", "Crew", false, false),
    /** Orders, schedules, bills. */
    OFFICE("office", "Office", true, true);

    private final String key;
    private final String word;
    private final boolean seesMoney;
    private final boolean edits;

    Role(String key, String word, boolean seesMoney, boolean edits) {
        this.key = key;
        this.word = word;
        this.seesMoney = seesMoney;
        this.edits = edits;
    }

    /** As the store holds it. */
    public String key() {
        return key;
    }

    /** As people read it. */
    public String word() {
        return word;
    }

    /** Whether any cost or price may reach them, on whatever page, paper or answer. */
    public boolean seesMoney() {
        return seesMoney;
    }

    /** Whether they change jobs. */
    public boolean edits() {
        return edits;
    }

    public static Role of(String key) {
        for (Role role : values()) if (role.key.equals(key)) return role;
        throw new IllegalArgumentException("No such role: " + key);
    }
}
