package plumbleaf.cutting;

import java.util.List;

/** A whole plan from fractions: take every pattern as often as its whole part says, else once the one nearest to its next whole number; then solve for the rest. */
final class Dive {
    private Dive() {}

    /** True when all pieces are placed; the patterns are added to {@code bars}. */
    static boolean down(Cutting cutting, Relaxation relaxation, Effort effort, List<Pattern> bars) {
        int[] demand = cutting.demand.clone();
        int[] supply = cutting.supply.clone();
        while (left(demand)) {
            Relaxation.Solved solved = relaxation.solve(demand, supply, Long.MAX_VALUE);
            if (effort.spent() || !solved.complete()) return false;
            boolean any = false;
            for (Relaxation.Share share : solved.shares()) {
                long whole = (long) Math.floor(share.times() + 1e-6);
                for (long time = 0; time < whole; time++) any |= take(share.pattern(), demand, supply, bars);
            }
            if (any) continue;
            double most = 0;
            Pattern best = solved.shares().get(0).pattern();
            for (Relaxation.Share share : solved.shares()) {
                if (share.times() > most + 1e-9) {
                    most = share.times();
                    best = share.pattern();
                }
            }
            if (!take(best, demand, supply, bars)) return false;
        }
        return true;
    }

    private static boolean take(Pattern pattern, int[] demand, int[] supply, List<Pattern> bars) {
        Pattern trimmed = pattern.trimmedTo(demand);
        if (trimmed.isEmpty() || supply[pattern.kind()] <= 0) return false;
        trimmed.takeFrom(demand);
        if (supply[pattern.kind()] != Cutting.UNLIMITED) supply[pattern.kind()]--;
        bars.add(trimmed);
        return true;
    }

    private static boolean left(int[] demand) {
        for (int each : demand) {
            if (each > 0) return true;
        }
        return false;
    }
}
