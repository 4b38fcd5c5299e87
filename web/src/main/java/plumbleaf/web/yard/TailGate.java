package plumbleaf.web.yard;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.stock.Delivered;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.Yard;
import plumbleaf.web.store.Database;

/** Where what was ordered comes in: what is counted goes into the yard, kept for its job; what is short stays to come. */
@Component
public class TailGate {
    private final Database database;
    private final HouseYard yard;
    private final Receipts receipts;

    TailGate(Database database, HouseYard yard, Receipts receipts) {
        this.database = database;
        this.yard = yard;
        this.receipts = receipts;
    }

    /** Units of one line that came now. */
    public record Count(TakeoffLine line, int came) {}

    /** Units that came so far, by the key of the line; a line nobody has counted is left out. */
    public Map<String, Long> soFar(String job) {
        return receipts.of(job);
    }

    /** All that was counted of one delivery, or nothing of it. */
    public void take(String job, Taker taker, List<Count> counts, String who) {
        if (counts.isEmpty()) return;
        database.doTogether(() -> {
            Map<String, Long> before = receipts.of(job);
            for (Count count : counts) {
                long sum = before.getOrDefault(key(count.line()), 0L) + count.came();
                receipts.count(job, count.line().sold().supplier(), mark(count.line()), sum, who);
            }
            yard.change(
                    now -> {
                        Yard after = now;
                        for (Count count : counts)
                            after = after.received(taker, Delivered.of(count.line(), count.came()));
                        return after;
                    },
                    why("came for ", taker, counts),
                    who);
        });
    }

    /** Takes one line's count back, and what came of it out of the yard; false where some of it is no longer waiting there. */
    public boolean undo(String job, Taker taker, TakeoffLine line, String who) {
        return database.together(() -> {
            long counted = receipts.of(job).getOrDefault(key(line), 0L);
            Yard now = yard.yard();
            int here = now.kept(taker, Delivered.of(line, 0));
            if (now.came(taker, Delivered.of(line, 0)) > here) return false;
            int out = (int) Math.min(counted, here);
            receipts.forget(job, line.sold().supplier(), mark(line));
            if (out > 0)
                yard.change(
                        before -> before.notReceived(taker, Delivered.of(line, out)),
                        why("not come after all for ", taker, List.of(new Count(line, out))),
                        who);
            return true;
        });
    }

    private static String why(String how, Taker taker, List<Count> counts) {
        Count first = counts.get(0);
        return how + taker.title() + ": "
                + (counts.size() == 1
                        ? first.came() + " " + first.line().sold().unit().key() + " "
                                + first.line().sold().name()
                        : counts.size() + " lines of the order");
    }

    public static String key(TakeoffLine line) {
        return Receipts.key(line.sold().supplier(), mark(line));
    }

    /** An item may be ordered in two lengths. */
    private static String mark(TakeoffLine line) {
        return line.item() + " x " + line.sold().contents();
    }
}
