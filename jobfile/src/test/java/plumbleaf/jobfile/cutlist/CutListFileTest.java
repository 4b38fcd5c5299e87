package plumbleaf.jobfile.cutlist;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.jobfile.input.InputError;

class CutListFileTest {
    private static final long MM = 1_000_000;

    @Test
    void barsAreBoughtOffcutsLieThere() {
        CutListFile.Answer read = CutListFile.read("yard.csv", """
                what,length,count,price
                bar,6000 mm,,41.5
                bar,7200 mm,3,48
                offcut,1500 mm,2,
                offcut,900 mm,,
                piece,700 mm,1,
                """);
        assertThat(read.errors()).isEmpty();
        assertThat(read.list().bars())
                .containsExactly(
                        new StockBar("row 1 of the list", 6000 * MM, Money.cents(4150), Supply.asMany(), false),
                        new StockBar("row 2 of the list", 7200 * MM, Money.dollars(48), Supply.atMost(3), false),
                        new StockBar("row 3 of the list", 1500 * MM, Money.ZERO, Supply.atMost(2), true),
                        new StockBar("row 4 of the list", 900 * MM, Money.ZERO, Supply.atMost(1), true));
    }

    @Test
    void piecesOfARowHaveNamesOfTheirOwnAndItsMark() {
        CutListFile.Answer read = CutListFile.read("yard.csv", """
                what,length,count,price,mark,first_deg,second_deg,ends,depth
                bar,6000 mm,,41.5,,,,,
                piece,700 mm,2,,brace,45,30,opposed,50 mm
                piece,800 mm,1,,,,,,
                """);
        assertThat(read.errors()).isEmpty();
        Angle first = Angle.degrees(45);
        Angle second = Angle.degrees(30);
        assertThat(read.list().pieces())
                .containsExactly(
                        new Piece("brace#1", "brace", 700 * MM, first, second, Piece.Ends.OPPOSED, 50 * MM),
                        new Piece("brace#2", "brace", 700 * MM, first, second, Piece.Ends.OPPOSED, 50 * MM),
                        Piece.square("row 3#1", "row 3", 800 * MM));
    }

    @Test
    void twoRowsOfOneMarkNameTheirPiecesApart() {
        CutListFile.Answer read = CutListFile.read("yard.csv", """
                what,length,count,price,mark
                bar,6000 mm,,1,
                piece,700 mm,2,,rail
                piece,800 mm,1,,rail
                """);
        assertThat(read.list().pieces()).extracting(Piece::id).doesNotHaveDuplicates();
    }

    @Test
    void aListWithoutPiecesOrBarsIsNone() {
        assertThat(CutListFile.read("yard.csv", "what,length,count\n").errors())
                .extracting(InputError::text)
                .containsExactly(
                        "yard.csv: there is no piece in it; add a row for each kind",
                        "yard.csv: there is no bar in it; add a row bar with its length and price");
    }

    @Test
    void aSlantLongerThanItsPieceIsNone() {
        CutListFile.Answer read = CutListFile.read("yard.csv", """
                what,length,count,price,first_deg,depth
                bar,6000 mm,,1,,
                piece,40 mm,1,,45,50 mm
                piece,80 mm,100001,,80,50 mm
                """);
        assertThat(read.errors())
                .extracting(InputError::text)
                .containsExactly(
                        "yard.csv:3: depth \"50 mm\": a slant of this depth is longer than the piece; check depth, angle and length",
                        "yard.csv:4: count \"100001\": this is not between 1 and 100000; check the number and its unit",
                        "yard.csv:4: first_deg \"80\": this is not between 0 and 75; check the number and its unit");
    }

    @Test
    void morePiecesThanAnybodySawsAreCountedAndNotHeld() {
        String rows = "piece,700 mm,100000,\n".repeat(2_000);
        CutListFile.Answer read = CutListFile.read("yard.csv", "what,length,count,price\nbar,6000 mm,,1\n" + rows);
        assertThat(read.errors())
                .extracting(InputError::text)
                .containsExactly("yard.csv: there are 200000000 pieces in it; split it: 100000 is the most");
        assertThat(read.list().pieces()).hasSizeLessThanOrEqualTo(100_000);
    }
}
