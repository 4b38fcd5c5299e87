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
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.takeoff.NetUnit;
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
    void whatCameIsKeptForItsJobUntilItIsTakenOrFree() {
        Delivered posts = new Delivered("POST", true, Length.feet(21), 6, 1, NetUnit.FEET, "2027-04-19");
        Delivered bags = new Delivered("concrete", false, Length.ZERO, 20, 0.6, NetUnit.CUBIC_FEET, "");
        Yard before = read(TEXT);
        Yard yard = read(YardFile.write(before.received(KILN, posts).received(KILN, bags)));
        assertThat(yard.onHand()).isEqualTo(before.onHand());
        assertThat(yard.asSeenBy(KILN).onHand()).isEqualTo(before.onHand());
        assertThat(yard.knows(KILN)).isFalse();
        assertThat(yard.keptFor(KILN)).extracting(YardRow::mark).containsExactly("Y1", "Y2");
        assertThat(yard.keptFor(KILN).get(0).neededBy()).isEqualTo("2027-04-19");
        assertThat(yard.received(KILN, posts).kept(KILN, posts)).isEqualTo(12);
        assertThat(yard.notReceived(KILN, posts).notReceived(KILN, bags)).isEqualTo(before);

        Yard taken = read(YardFile.write(yard.after(KILN, takeoff())));
        assertThat(taken.keptFor(KILN)).isEmpty();
        assertThat(taken.with(KILN, "Y1")).isEqualTo(6);
        assertThat(taken.came(KILN, posts)).isEqualTo(6);
        assertThat(taken.givenBack(KILN)).isEqualTo(yard);
        assertThatThrownBy(() -> taken.notReceived(KILN, posts)).hasMessage("Of 6 of POST only 0 still lie here");

        Yard back = read(YardFile.write(taken.cameBack(KILN, "Y1", 2).cameBack(KILN, "shelf", 1)));
        assertThat(back.with(KILN, "Y1")).isEqualTo(4);
        assertThat(back.came(KILN, posts)).isEqualTo(6);
        assertThat(back.asSeenBy(MILL).onHand().barsOf("POST").get(0).lengthNm())
                .isEqualTo(252 * INCH);
        assertThat(back.asSeenBy(KILN).onHand().barsOf("POST")).isEmpty();
        assertThat(back.onHand().goods().get(0).count()).isEqualTo(8);
        assertThat(back.asSeenBy(KILN).onHand()).isEqualTo(before.onHand());
        assertThatThrownBy(() -> back.cameBack(KILN, "Y1", 5)).hasMessage("The job has 4 of Y1, not 5");
        assertThat(back.cameBack(KILN, "Y1", 4).came(KILN, posts)).isEqualTo(6);
    }

    @Test
    void anEmptyYardHasTheColumnsSomebodyFillsInByHandAndNoMore() {
        assertThat(YardFile.write(Yard.empty())).endsWith("\n" + HEADINGS);
        assertThat(YardFile.write(read(TEXT))).contains("\n" + HEADINGS).doesNotContain("job_mark");
    }

    @Test
    void whatIsKeptNamesItsJob() {
        assertThat(YardFile.read("yard.csv", HEADINGS + "a,T,bar,6',1,,,kept,\n")
                        .errors()
                        .get(0)
                        .text())
                .isEqualTo("yard.csv:2: job: it is kept, but not for which job; name the job, or write here");
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
