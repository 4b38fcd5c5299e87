package plumbleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CutListVerbTest {
    @TempDir
    private Path folder = Path.of("");

    /** A stile comes from the offcut; what is left is 492 in. long, more than two bars of 20 ft hold, and two of 24 ft cost more. By hand: 563 in. of pieces in 601. */
    @Test
    void piecesComeFromBarsAndOffcutsAtLeastCost() throws IOException {
        String list = list("""
                what,length,count,price,mark
                bar,20 ft,,58.40,
                bar,24 ft,2,61,
                offcut,6' 1",1,,
                piece,71 in,4,,stile
                piece,46-1/2 in,6,,rail
                """);
        Terminal run = Terminal.run("cutlist", list);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).isEqualTo(list + """
                : 3 bars, $119.40, proven least
                  kerf 1/8", end trim 1/2", 3 saw set-ups, the fewest for these bars
                  93.7% in pieces, 4.7% kept, 1.6% kerf, trim and scrap
                  1 x 24' 0", 5-1/4" scrap
                    2 x      5' 11"      71"  stile
                    3 x  3' 10-1/2"  46-1/2"  rail
                  1 x 20' 0", 28-3/8" left to keep
                    1 x      5' 11"      71"  stile
                    3 x  3' 10-1/2"  46-1/2"  rail
                  1 x 6' 1" offcut, 1-7/8" scrap
                    5' 11"  71"  stile
                """);
    }

    /** The public encyclopedia's paper rolls: 13 widths on 5,600 mm, 73 rolls (published-instances.csv of the module reference). */
    @Test
    void aPublishedListIsProven() throws IOException {
        String list = list("""
                what,length,count,price
                bar,5600 mm,,1
                piece,1380 mm,22,
                piece,1520 mm,25,
                piece,1560 mm,12,
                piece,1710 mm,14,
                piece,1820 mm,18,
                piece,1880 mm,18,
                piece,1930 mm,20,
                piece,2000 mm,10,
                piece,2050 mm,12,
                piece,2100 mm,14,
                piece,2140 mm,16,
                piece,2150 mm,18,
                piece,2200 mm,20,
                """);
        Terminal run = Terminal.run("cutlist", list, "--kerf", "0 mm", "--trim", "0 mm", "--metric");
        assertThat(run.out()).startsWith(list + ": 73 bars, $73.00, proven least\n");
        assertThat(run.code()).isZero();
    }

    @Test
    void slantedPiecesShareACutWhereTheTableSaysHowDeepTheyAre() throws IOException {
        String rows = """
                bar,100 in,,50,,,,
                piece,50 in,2,,45,45,opposed,%s
                """;
        String heads = "what,length,count,price,first_deg,second_deg,ends,depth\n";
        String[] saw = {"--kerf", "1/8 in", "--trim", "0 in"};
        Terminal apart = Terminal.run("cutlist", list(heads + String.format(rows, "")), saw[0], saw[1], saw[2], saw[3]);
        Terminal lapped =
                Terminal.run("cutlist", list(heads + String.format(rows, "2 in")), saw[0], saw[1], saw[2], saw[3]);
        assertThat(apart.out()).contains(": 2 bars, $100.00, proven least");
        assertThat(lapped.out()).contains(": 1 bar, $50.00, proven least").contains("(turned)");
    }

    @Test
    void everythingThatIsWrongIsSaidAtOnce() throws IOException {
        String list = list("""
                what,length,count,price,first_deg,second_deg
                bar,20 ft,,,,
                piece,71,4,,,
                stick,71 in,4,,,
                piece,71 in,none,,,
                piece,71 in,2,,30,30
                """);
        Terminal run = Terminal.run("cutlist", list, "--kerf", "1/8");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.errorLines())
                .containsExactly(
                        "plumbleaf cutlist: --kerf \"1/8\": a length needs its unit; write 1/8\" or 1/8 mm",
                        list + ":2: price: a bar has its price; write what one costs in dollars, or 1 to count bars",
                        list + ":3: length \"71\": a length needs its unit; write 71\" or 5' 11\"",
                        list + ":4: what \"stick\": this is none of piece, bar, offcut; write piece or bar or offcut",
                        list + ":5: count \"none\": this is not a number; write a plain number, like 2.375",
                        list
                                + ":6: second_deg \"30\": two slanted ends lie one way or the other; write parallel or opposed in the column ends");
    }

    @Test
    void aListThatCannotBeCutLeavesTheOthersPlanned() throws IOException {
        String heads = "what,length,count,price,mark\n";
        String good = list(heads + "bar,20 ft,,58.40,\npiece,71 in,1,,stile\n");
        String tooLong = list(heads + "bar,20 ft,,58.40,\npiece,21 ft,3,,rail\n");
        String tooFew = list(heads + "bar,20 ft,1,58.40,\npiece,11 ft,2,,rail\n");
        Terminal run = Terminal.run("cutlist", tooLong, good, tooFew);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).startsWith(good + ": 1 bar, $58.40, proven least\n");
        assertThat(run.errorLines())
                .containsExactly(
                        tooLong + ": no bar is long enough for rail; add a longer bar, or splice them",
                        tooFew
                                + ": all its bars together do not hold the pieces; allow more bars, or leave a count empty to buy as needed");
    }

    private String list(String text) throws IOException {
        return Files.writeString(Files.createTempFile(folder, "list", ".csv"), text)
                .toString();
    }
}
