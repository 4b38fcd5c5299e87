package plumbleaf.web.room;

import plumbleaf.engine.design.Verdict;

/** A design's verdict as a mark and in words. */
final class Verdicts {
    private Verdicts() {}

    static String severity(Verdict verdict) {
        return switch (verdict) {
            case PASSES -> "pass";
            case OPEN -> "cannot-say";
            case FAILS -> "must-fix";
        };
    }

    static String words(Verdict verdict) {
        return switch (verdict) {
            case PASSES -> "passes";
            case OPEN -> "open questions";
            case FAILS -> "must fix";
        };
    }
}
