package plumbleaf.jobfile.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.takeoff.StockTake;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.jobfile.input.InputError;

class YardTest {
    private static final String HEADINGS = "mark,item,kind,length,count,contents,of,state,job\n";
    private static final String TEXT = HEADINGS
            + "rack,TUBE-2x2,bar,20',3,,,here,\n"
            + "A7,TUBE-2x2,offcut,\"6' 2-1/2\"\"\",1,,,here,\n"
            + "shelf,concrete,goods,,12,0.6,ft3,here,\n";
    private static final Taker KILN = new Taker("Kiln yard", "kiln.json");
    private static final Taker MILL = new Taker("Mill lane", "mill.json");
    private static final long INCH = 25_400_000;

    @Test
    void aYardIsReadAndWrittenAsItStands() {
        Yard yard = read(TEXT);
        assertThat(yard.onHand().barsOf("TUBE-2x2")).hasSize(2);
        assertThat(yard.onHand().barsOf("TUBE-2x2").get(1).lengthNm()).isEqualTo(149 * INCH / 2);
        assertThat(yard.onHand().barsOf("TUBE-2x2").get(1).fromOffcut()).isTrue();
        assertThat(read(YardFile.write(yard))).isEqualTo(yard);
    }

    @Test
    void everyBadRowIsNamedAtOnce() {
        List<InputError> errors = YardFile.read(
                        "yard.csv",
                        HEADINGS
                                + "a,T,bar,6,1,,,here,\n"
                                + "b,T,plank,6',1,,,here,\n"
                                + "c,T,bar,6',1.5,,,here,\n"
                                + "c,T,bar,6',1,,,here,\n"
                                + "d,T,goods,,1,0.6,quart,here,\n"
                                + "e,T,bar,6',1,,,out,\n")
                .errors();
        assertThat(errors).extracting(InputError::line).containsExactly(2, 3, 4, 5, 6, 7);
        assertThat(errors.get(1).text())
                .isEqualTo(
                        "yard.csv:3: kind \"plank\": this is none of bar, offcut, goods; write bar or offcut or goods");
    }

    @Test
    void aJobTakesItsStockLeavesItsOffcutsAndGivesAllBack() {
        Yard yard = read(TEXT);
        Yard after = yard.after(KILN, takeoff());
        assertThat(after.onHand().barsOf("TUBE-2x2"))
                .extracting(bar -> bar.id())
                .containsExactly("rack", "O1");
        assertThat(after.onHand().bars().get(0).count()).isEqualTo(2);
        assertThat(after.onHand().goods().get(0).count()).isEqualTo(7);
        assertThat(after.knows(KILN)).isTrue();
        assertThat(after.asSeenBy(KILN).onHand()).isEqualTo(yard.onHand());
        assertThat(after.asSeenBy(MILL).onHand()).isEqualTo(after.onHand());
        assertThatThrownBy(() -> after.after(KILN, takeoff())).hasMessage("The job Kiln yard has been booked already");
        Yard read = read(YardFile.write(after));
        assertThat(read).isEqualTo(after);
        assertThat(read.givenBack(KILN)).isEqualTo(yard);
    }

    @Test
    void offcutsUsedSinceStandInTheWayOfGivingBack() {
        Yard first = read(TEXT).after(KILN, takeoff());
        Takeoff next = new Takeoff(List.of(), List.of(), List.of(new StockTake("O1", "TUBE-2x2", 1)), List.of());
        Yard second = read(YardFile.write(first.after(MILL, next)));
        assertThat(second.usedSince(KILN)).containsExactly("O1");
        assertThat(second.givenBack(MILL).givenBack(KILN)).isEqualTo(read(TEXT));
    }

    @Test
    void twoJobsOfOneTitleAreTwoJobs() {
        Taker other = new Taker("Kiln yard", "kiln-2.json");
        Yard first = read(YardFile.write(read(TEXT).after(KILN, takeoff())));
        assertThat(first.knows(KILN)).isTrue();
        assertThat(first.knows(other)).isFalse();
        assertThat(first.asSeenBy(other).onHand()).isEqualTo(first.onHand());
        Takeoff next = new Takeoff(List.of(), List.of(), List.of(new StockTake("O1", "TUBE-2x2", 1)), List.of());
        Yard second = read(YardFile.write(first.after(other, next)));
        assertThat(second.usedSince(KILN)).containsExactly("O1");
        assertThat(second.givenBack(other).givenBack(KILN)).isEqualTo(read(TEXT));
    }

    @Test
    void aJobKeepsItsStockUnderANewTitle() {
        Yard after = read(YardFile.write(read(TEXT).after(KILN, takeoff())));
        assertThat(after.givenBack(new Taker("Kiln yard, east", "kiln.json"))).isEqualTo(read(TEXT));
    }

    @Test
    void aYardWrittenBeforeJobsHadMarksGoesByTheTitle() {
        Yard old = read(HEADINGS + "rack,TUBE-2x2,bar,20',2,,,here,\nrack,TUBE-2x2,bar,20',1,,,out,Kiln yard\n");
        assertThat(old.knows(KILN)).isTrue();
        assertThat(old.givenBack(KILN).onHand().bars().get(0).count()).isEqualTo(3);
    }

    @Test
    void aWordThatWouldBeAFormulaIsDisarmedAndReadBackAsItWas() {
        String text = HEADINGS + "'=rack,T,bar,6',1,,,here,\n";
        assertThat(read(text).rows().get(0).mark()).isEqualTo("=rack");
        assertThat(YardFile.write(read(text))).contains("\n'=rack,T");
    }

    /** Two marks used up or drawn down, one offcut of 30 in. left. */
    private static Takeoff takeoff() {
        CutBar bar = new CutBar(
                "rack",
                240 * INCH,
                Money.ZERO,
                false,
                0,
                List.of(new Cut("G1a.m1", "G1a", 209 * INCH)),
                30 * INCH,
                true);
        CutPlan plan = new CutPlan(
                "TUBE-2x2", new SawRules(INCH, 0, 24 * INCH), List.of(bar), Money.ZERO, Money.ZERO, true, 1);
        return new Takeoff(
                List.of(),
                List.of(plan),
                List.of(
                        new StockTake("rack", "TUBE-2x2", 1),
                        new StockTake("A7", "TUBE-2x2", 1),
                        new StockTake("shelf", "concrete", 5)),
                List.of());
    }

    private static Yard read(String text) {
        YardFile.Answer answer = YardFile.read("yard.csv", text);
        assertThat(answer.errors()).isEmpty();
        return answer.yard();
    }
}
