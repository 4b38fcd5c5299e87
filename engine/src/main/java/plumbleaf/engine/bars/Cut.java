package plumbleaf.engine.bars;

/**
 * One piece where it lies in its bar.
 *
 * @param flip turned against the piece before it, end for end (and over, where the ends are opposed), so that one slanted cut makes both their ends
 * @param lapNm how far its long point lies behind that of the piece before, a kerf's width apart along the slant; zero where they share no slanted cut
 */
public record Cut(String piece, String group, long longPointNm, boolean flip, long lapNm) {
    public Cut(String piece, String group, long longPointNm) {
        this(piece, group, longPointNm, false, 0);
    }
}
