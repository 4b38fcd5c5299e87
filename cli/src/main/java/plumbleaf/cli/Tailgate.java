package plumbleaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.stock.CameTable;
import plumbleaf.jobfile.stock.Delivered;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.Yard;

/**
 * What came of a job's order, counted into a yard.
 *
 * @param yard after it
 * @param shorts lines still to come, in words
 */
record Tailgate(Yard yard, List<String> shorts) {
    Tailgate {
        shorts = List.copyOf(shorts);
    }

    /** @param came the table of one delivery; empty where all that was missing came */
    static Tailgate of(YardDoor.Counted counted, Path jobFile, String came) {
        Designed designed = Designed.from(jobFile, counted);
        Takeoff takeoff = designed.design().quote().takeoff();
        Taker job = counted.taker(jobFile, designed.design().job().title());
        Yard yard = counted.yard();
        for (CameTable.Came one : came(came, takeoff, job, yard))
            yard = yard.received(job, Delivered.of(one.line(), one.units()));
        List<String> shorts = new ArrayList<>();
        for (TakeoffLine line : CameTable.ordered(takeoff)) {
            int missing = CameTable.missing(line, job, yard);
            if (missing > 0)
                shorts.add(missing + " of " + line.units() + " "
                        + line.sold().unit().key() + " " + line.sold().name() + ", "
                        + line.sold().supplier());
        }
        return new Tailgate(yard, shorts);
    }

    private static List<CameTable.Came> came(String table, Takeoff takeoff, Taker job, Yard yard) {
        if (table.isEmpty()) return CameTable.all(takeoff, job, yard);
        CameTable.Answer answer =
                CameTable.read(table, new String(JobDoor.bytes(Path.of(table)), StandardCharsets.UTF_8), takeoff);
        if (!answer.errors().isEmpty()) throw new BadInput(answer.errors());
        return answer.came();
    }
}
