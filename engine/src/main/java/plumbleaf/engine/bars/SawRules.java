package plumbleaf.engine.bars;

/**
 * How the saw eats a bar. A trimmed bar loses trim and one kerf first; n pieces then need n - 1 kerfs, an offcut one more.
 *
 * @param kerfNm width of a cut
 * @param endTrimNm taken off the mill end before the first piece; zero for none, and then no kerf is lost to it
 * @param leastUsableOffcutNm shorter rests are scrap
 */
public record SawRules(long kerfNm, long endTrimNm, long leastUsableOffcutNm) {
    public SawRules {
        if (kerfNm < 0 || endTrimNm < 0 || leastUsableOffcutNm < 0)
            throw new IllegalArgumentException("Kerf, trim and least offcut must be zero or more");
    }

    /** What is left of a bar once its end is trimmed; zero or less when nothing is. */
    public long usableNm(StockBar bar) {
        return endTrimNm == 0 || bar.fromOffcut() ? bar.lengthNm() : bar.lengthNm() - endTrimNm - kerfNm;
    }

    /** What is left after pieces of this total length are cut, last kerf taken off; zero when the bar is used up; negative when they do not fit. */
    public long restNm(StockBar bar, long piecesNm, int pieces) {
        long rest = usableNm(bar) - piecesNm - kerfNm * Math.max(0, pieces - 1);
        return rest <= 0 ? rest : Math.max(0, rest - kerfNm);
    }
}
