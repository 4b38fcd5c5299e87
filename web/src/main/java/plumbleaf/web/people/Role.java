package plumbleaf.web.people;

/** What someone is here for, and so what they may see and do. */
public enum Role {
    /** Everything, people and keys to the house included. */
    OWNER("owner", "Owner", "everything, with people, the log and what is removed for good", true, true),
    /** Measures, designs, prices, sells. */
    ESTIMATOR("estimator", "Estimator", "measures, designs, prices and sells", true, true),
    /** Cuts and welds: reads jobs, adds photos, never sees money. */
    SHOP(
            "shop",
            "Shop",
            "reads jobs, papers and lists; adds photos, counts what comes; no cost, no price",
            false,
            false),
    /** Digs, sets, hangs: reads jobs, adds photos, never sees money. */
    CREW(
            "crew",
            "Crew",
            "reads jobs, papers and lists; adds photos, writes hours down; no cost, no price",
            false,
            false),
    /** Orders, schedules, bills. */
    OFFICE("office", "Office", "orders, schedules and bills", true, true);

    private final String key;
    private final String word;
    private final String does;
    private final boolean seesMoney;
    private final boolean edits;

    Role(String key, String word, String does, boolean seesMoney, boolean edits) {
        this.key = key;
        this.word = word;
        this.does = does;
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

    /** What they are here for, in a few words. */
    public String does() {
        return does;
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
