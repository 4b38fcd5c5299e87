package plumbleaf.engine.action;

import java.util.List;

/**
 * A combination of allowable-stress design, with what share of dead, live and strength-level wind it takes. Snow, rain and roof load do not act on fences.
 * Source: ASCE 7-16 2.4.1, combinations 1, 2, 5, 6a and 7; ASCE 7-22 2.4.1 likewise. Check: CombinationCheck.
 */
public enum Combination {
    D("D", 1, 0, 0),
    D_L("D+L", 1, 1, 0),
    D_W("D+0.6W", 1, 0, 0.6),
    D_L_W("D+0.75L+0.45W", 1, 0.75, 0.75 * 0.6),
    LESS_D_W("0.6D+0.6W", 0.6, 0, 0.6),
    /** Only where the job asks for ice, whose share is 0.7. Source: ASCE 7-16 2.4.3, from memory. */
    D_L_ICE("D+L+0.7Di", 1, 1, 0),
    /** Only where the job asks for ice: its wind is that of the gust that may blow on ice, not the design wind. Source: ASCE 7-16 2.4.3, from memory. */
    D_ICE_W("D+0.7Di+0.7Wi", 1, 0, 0.7);

    private static final double ICE = 0.7;

    private static final List<Combination> PLAIN = List.of(D, D_L, D_W, D_L_W, LESS_D_W);

    private static final List<Combination> ALL = List.of(values());

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

    /** Those that count for a part, with ice on it or without. */
    public static List<Combination> with(boolean ice) {
        return ice ? ALL : PLAIN;
    }

    /** Share of the weight of ice. */
    public double ice() {
        return this == D_L_ICE || this == D_ICE_W ? ICE : 0;
    }

    /** Whether its wind is that on ice. */
    public boolean hasWindOnIce() {
        return this == D_ICE_W;
    }

    /** As files hold it and people read it. */
    public String key() {
        return key;
    }

    public double dead() {
        return dead;
    }

    public double live() {
        return live;
    }

    /** Share of strength-level wind. */
    public double wind() {
        return wind;
    }

    /** Whether it comes and goes: wind or a person, not what hangs or pulls for good. */
    public boolean isShortTerm() {
        return live > 0 || wind > 0;
    }

    public boolean hasWind() {
        return wind > 0;
    }

    public BaseAction of(BaseAction deadLoad, BaseAction liveLoad, BaseAction windLoad) {
        return deadLoad.times(dead).plus(liveLoad.times(live)).plus(windLoad.times(wind));
    }

    /** One number of each kind, combined. */
    public double of(double deadLoad, double liveLoad, double windLoad) {
        return dead * deadLoad + live * liveLoad + wind * windLoad;
    }
}
