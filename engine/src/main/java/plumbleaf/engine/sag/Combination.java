package plumbleaf.engine.sag;

/**
 * The allowable-stress load combinations that a gate is checked in.
 * Source: ASCE 7-16 section 2.4.1, those in which dead, live and wind load occur. Check: none beyond the clause.
 */
public enum Combination {
    D("D", 1, 0, 0),
    D_L("D+L", 1, 1, 0),
    D_W("D+0.6W", 1, 0, 0.6),
    D_L_W("D+0.75L+0.45W", 1, 0.75, 0.45),
    LIGHT_D_W("0.6D+0.6W", 0.6, 0, 0.6);

    private final String key;
    private final double dead;
    private final double live;
    private final double wind;

    Combination(String key, double dead, double live, double wind) {
        this.key = key;
        this.dead = dead;
        this.live = live;
        this.wind = wind;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    public double dead() {
        return dead;
    }

    public double live() {
        return live;
    }

    public double wind() {
        return wind;
    }
}
