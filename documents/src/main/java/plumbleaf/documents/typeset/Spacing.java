package plumbleaf.documents.typeset;

/**
 * White between the lines of a column, in inches on paper. The lettering never changes.
 *
 * @param gap           after each block
 * @param row           under the words of a row
 * @param aboveHeading  over a heading
 * @param betweenItems  of a list
 * @param mostAboveLine room to write over a line to sign on
 */
record Spacing(double gap, double row, double aboveHeading, double betweenItems, double mostAboveLine) {
    static final Spacing OPEN = new Spacing(0.10, 0.075, 0.20, 0.055, 1);

    /** Where that saves a page: for a paper that would end with a few lines on a sheet of their own. */
    static final Spacing CLOSE = new Spacing(0.06, 0.045, 0.12, 0.03, 0.34);
}
