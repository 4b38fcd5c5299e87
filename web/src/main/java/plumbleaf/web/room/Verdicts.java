package plumbleaf.web.room;

import plumbleaf.engine.design.Verdict;

/** A design's verdict as a mark and in words. */
public final class Verdicts {
    private Verdicts() {}

    public static String severity(Verdict verdict) {
        return switch (verdict) {
            case PASSES -> "pass";
            case OPEN -> "cannot-say";
            case FAILS -> "must-fix";
        };
    }

    public static String words(Verdict verdict) {
        return switch (verdict) {
            case PASSES -> "passes";
            case OPEN -> "open questions";
            case FAILS -> "must fix";
        };
    }
}
